package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.Action;
import pondtally.record.Condition;

class WorklistAnalysisTest {

  private static List<WorklistAnalysis.Row> rows(MoneyProgram... clusters) {
    AnalysisSettings settings = MoneyProgram.settings();
    BenefitTally tally = new BenefitTally(settings);
    List<WorklistDevice> devices = new ArrayList<>();
    for (MoneyProgram cluster : clusters) {
      tally.add(cluster.view());
      devices.addAll(WorklistDevice.of(cluster.view(), settings));
    }
    return WorklistAnalysis.rows(devices, BenefitFits.of(tally), settings);
  }

  private static WorklistAnalysis.Row row(List<WorklistAnalysis.Row> rows, String device) {
    return rows.stream().filter(r -> r.deviceId().equals(device)).findFirst().orElseThrow();
  }

  /** Four failures to fit, each repaired; last seen working on a day of 2024. */
  private static MoneyProgram mended(String site, Double damage, int month, String lastSeen) {
    String device = "D" + site;
    return new MoneyProgram()
        .site(site, damage)
        .device(device, site, "2020-01-01", 1000.0)
        .visit(device, "2021-0" + month + "-10", Condition.WORKING, Action.NONE, null)
        .visit(device, "2022-0" + month + "-10", Condition.FAILED, Action.REPAIRED, 100.0)
        .visit(device, lastSeen, Condition.WORKING, Action.NONE, null);
  }

  private static List<WorklistAnalysis.Row> program() {
    return rows(
        mended("S1", 800.0, 1, "2024-12-30"),
        mended("S2", 800.0, 3, "2024-01-01"),
        mended("S3", null, 5, "2024-01-01"),
        mended("S4", 100.0, 7, "2024-06-01")
            .device("DX", "S4", "2023-01-01", 900.0)
            .visit("DX", "2023-09-01", Condition.FAILED, Action.NONE, null)
            .device("DN", "S4", "2024-12-30", 900.0)
            .device("DE", "S4", "2020-01-01", 900.0)
            .visit("DE", "2021-01-01", Condition.WORKING, Action.REMOVED, null));
  }

  /** DS1 was seen a day before the cut; DX stands failed and DS4 may have, at the same site. */
  @Test
  void neverVisitedFirstThenByExpectedLossThenUnknownDamage() {
    assertEquals(
        List.of("DN", "DS2", "DX", "DS4", "DS1", "DS3"),
        program().stream().map(WorklistAnalysis.Row::deviceId).toList());
  }

  @Test
  void aFailedDeviceHasFailedForCertain() {
    WorklistAnalysis.Row row = row(program(), "DX");
    assertEquals(1, row.chanceFailed());
    assertEquals(100 * 180 / 365.25, row.expectedLossUsd(), 1e-9);
    assertNull(row.lastKnownGoodOn());
  }

  @Test
  void daysOverdueCountFromTheLastVisitOrFromEntry() {
    // 2024-01-01 to 2024-12-31 are 365 days; a visit was due after 180.
    assertEquals(185, row(program(), "DS2").daysOverdue());
    assertEquals(0, row(program(), "DN").daysOverdue());
  }

  @Test
  void theChanceIsConditionalOnHavingBeenSeenWorking() {
    // Weibull with shape 2 and scale 1,000 days, seen at 500, 300 days on:
    // 1 − exp(0.5² − 0.8²) = 1 − exp(−0.39).
    BenefitFit fit = new BenefitFit("all", 2, 1000);
    assertEquals(0.3229431255, fit.chanceFailed(500, 300), 1e-10);
    assertEquals(0, fit.chanceFailed(500, 0));
    // Half have failed by 1,000·√(ln 2) = 832.55 days.
    assertEquals(832.5546111577 / 365.25, fit.medianYears(), 1e-9);
  }

  @Test
  void withoutAFitTheChanceIsUnknownNotZero() {
    WorklistAnalysis.Row row =
        row(
            rows(
                new MoneyProgram()
                    .site("S1", 500.0)
                    .device("D1", "S1", "2020-01-01", null)
                    .visit("D1", "2021-01-01", Condition.WORKING, Action.NONE, null)),
            "D1");
    assertNull(row.chanceFailed());
    assertNull(row.expectedLossUsd());
    assertEquals("expected-loss", row.block());
  }
}
