package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.Action;
import pondtally.record.Condition;

class BenefitAnalysisTest {

  private static List<BenefitRow> rows(MoneyProgram... clusters) {
    AnalysisSettings settings = MoneyProgram.settings();
    BenefitTally tally = new BenefitTally(settings);
    for (MoneyProgram cluster : clusters) {
      BenefitTally part = new BenefitTally(settings);
      part.add(cluster.view());
      tally.merge(part);
    }
    return BenefitAnalysis.rows(tally, BenefitFits.of(tally), settings);
  }

  private static BenefitRow all(List<BenefitRow> rows, String basis, double rate) {
    return rows.stream()
        .filter(r -> r.grouping().equals("all") && r.basis().equals(basis))
        .filter(r -> r.discountRate() == rate)
        .findFirst()
        .orElseThrow();
  }

  /** Works for two of its years to the day, 2020-01-01 to 2022-01-01 being 731 days. */
  private static MoneyProgram working(String site, Double damage, Double lump) {
    return new MoneyProgram()
        .site(site, damage)
        .device("D" + site, site, "2020-01-01", lump)
        .visit("D" + site, "2021-01-01", Condition.WORKING, Action.NONE, 40.0)
        .visit("D" + site, "2022-01-01", Condition.WORKING, Action.NONE, 40.0);
  }

  @Test
  void toDateIsYearlyDamageOverVerifiedTimeAgainstEverythingSpent() {
    BenefitRow row = all(rows(working("S1", 700.0, 1000.0)), "to-date", 0);
    assertEquals(1080, row.costUsd());
    assertEquals(700 * 731 / 365.25, row.benefitUsd(), 1e-9);
    assertEquals(700 * 731 / 365.25 - 1080, row.netUsd(), 1e-9);
    assertEquals(700 * 731 / 365.25 / 1080, row.ratio(), 1e-12);
    // 2020-01-01 to the end of 2024-12-31 are 1,827 days.
    assertEquals(1827 / 365.25, row.horizonYears(), 1e-12);
    assertEquals(1080 / (731 / 365.25), row.breakEvenDamageUsd(), 1e-9);
    assertNull(row.ratioLower());
    assertNull(row.chanceAboveOne());
  }

  @Test
  void aSiteWithoutDamageOrCostIsLeftOutOfBoth() {
    List<BenefitRow> rows =
        rows(
            working("S1", 700.0, 1000.0), working("S2", null, 5000.0), working("S3", 9000.0, null));
    BenefitRow row = all(rows, "to-date", 0);
    assertEquals(1080, row.costUsd());
    assertEquals(1, row.sites());
    assertEquals(2, row.sitesLeftOut());
    assertEquals(1, row.sitesWithoutDamage());
    assertEquals(1, row.sitesWithoutCost());
  }

  @Test
  void withoutAnyDamageOnRecordNothingIsWorkedOut() {
    BenefitRow row = all(rows(working("S2", null, 5000.0)), "to-date", 0);
    assertNull(row.ratio());
    assertNull(row.netUsd());
    assertEquals(1, row.sitesLeftOut());
  }

  @Test
  void damageIsTheSitesOwnElseThatOfItsPropertiesNeverBoth() {
    MoneyProgram both = working("S1", 700.0, 1000.0).property("P1", "S1", 400.0);
    assertEquals(700 * 731 / 365.25, all(rows(both), "to-date", 0).benefitUsd(), 1e-9);
    MoneyProgram properties =
        working("S1", null, 1000.0).property("P1", "S1", 400.0).property("P2", "S1", 50.0);
    assertEquals(450 * 731 / 365.25, all(rows(properties), "to-date", 0).benefitUsd(), 1e-9);
  }

  @Test
  void aSecondDeviceAddsNoBenefitWhileTheFirstWorks() {
    MoneyProgram two =
        working("S1", 700.0, 1000.0)
            .device("D2", "S1", "2020-01-01", 300.0)
            .visit("D2", "2022-01-01", Condition.WORKING, Action.NONE, null);
    BenefitRow row = all(rows(two), "to-date", 0);
    assertEquals(1380, row.costUsd());
    assertEquals(700 * 731 / 365.25, row.benefitUsd(), 1e-9);
  }

  @Test
  void withoutThreeFailuresThereIsNoProjection() {
    BenefitRow row = all(rows(working("S1", 700.0, 1000.0)), "projected", 0.03);
    assertNull(row.ratio());
    assertNull(row.fit());
    assertEquals(1, row.sites());
  }

  @Test
  void projectsFromTheGroupsOwnFailuresAndCosts() {
    MoneyProgram[] clusters = new MoneyProgram[12];
    for (int i = 0; i < clusters.length; i++) {
      String device = "DS" + i;
      clusters[i] =
          working("S" + i, 600.0 + 50 * i, 1000.0)
              .visit(
                  device, "2022-0" + (1 + i % 6) + "-20", Condition.FAILED, Action.REPAIRED, 160.0)
              .visit(device, "2023-01-01", Condition.WORKING, Action.NONE, 40.0);
    }
    List<BenefitRow> rows = rows(clusters);
    BenefitRow row = all(rows, "projected", 0.03);
    assertEquals("all", row.fit());
    assertEquals(1000, row.buildUsd(), 1e-9);
    assertEquals(40, row.visitUsd(), 1e-9);
    assertEquals(160, row.repairUsd(), 1e-9);
    assertEquals(0, row.replacedShare());
    assertEquals(875, row.damagePerYearUsd(), 1e-9);
    assertEquals(row.benefitUsd() / row.costUsd(), row.ratio(), 1e-12);
    assertNotNull(row.chanceAboveOne());
    assertEquals(row.ratio(), (row.ratioLower() + row.ratioUpper()) / 2, 0.3);
    // At the break-even damage, benefit equals cost.
    assertEquals(
        row.costUsd(), row.benefitUsd() / row.damagePerYearUsd() * row.breakEvenDamageUsd(), 1e-9);
    // Benefit comes later than building: a higher rate lowers its present value.
    assertTrue(all(rows, "projected", 0.07).benefitUsd() < row.benefitUsd());
    assertTrue(all(rows, "projected", 0).benefitUsd() > row.benefitUsd());
  }

  @Test
  void theOnePassAccelerationIsThatOfTheInfluenceValues() {
    double[] b = {5200, 300, 7000, 900, 15_000};
    double[] c = {2000, 1500, 2500, 1900, 3100};
    BenefitMoments moments = new BenefitMoments();
    double sumB = 0;
    double sumC = 0;
    for (int i = 0; i < b.length; i++) {
      moments.add(b[i], c[i]);
      sumB += b[i];
      sumC += c[i];
    }
    double ratio = sumB / sumC;
    double squares = 0;
    double cubes = 0;
    for (int i = 0; i < b.length; i++) {
      double influence = b[i] - ratio * c[i];
      squares += influence * influence;
      cubes += Math.pow(influence, 3);
    }
    assertEquals(
        cubes / (6 * Math.pow(squares, 1.5)), moments.acceleration(ratio).orElseThrow(), 1e-9);
  }
}
