package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.Action;
import pondtally.record.Condition;

class SensitivityAnalysisTest {

  private static final AnalysisSettings SETTINGS = MoneyProgram.settings();

  private static BenefitTally tally(int failures) {
    BenefitTally tally = new BenefitTally(SETTINGS);
    for (int i = 0; i < failures; i++) {
      String device = "D" + i;
      tally.add(
          new MoneyProgram()
              .site("S" + i, 900.0)
              .device(device, "S" + i, "2020-01-01", 1000.0)
              .visit(device, "2021-0" + (i + 1) + "-01", Condition.WORKING, Action.NONE, 60.0)
              .visit(device, "2022-0" + (i + 1) + "-01", Condition.FAILED, Action.REPAIRED, 90.0)
              .view());
    }
    return tally;
  }

  private static List<SensitivityAnalysis.Row> rows(int failures) {
    BenefitTally tally = tally(failures);
    return SensitivityAnalysis.rows(tally, BenefitFits.of(tally), SETTINGS);
  }

  private static SensitivityAnalysis.Row row(String assumption) {
    return rows(5).stream()
        .filter(r -> r.assumption().startsWith(assumption))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theBaseOfEveryRowIsTheProjectedRatio() {
    BenefitTally tally = tally(5);
    double ratio =
        BenefitAnalysis.projected(tally, BenefitFits.of(tally), GroupKey.ALL, SETTINGS)
            .row(SETTINGS.discountRate())
            .ratio();
    assertEquals(6, rows(5).size());
    for (SensitivityAnalysis.Row row : rows(5)) {
      assertEquals(ratio, row.ratioBase(), 1e-12, row.assumption());
    }
  }

  @Test
  void theRatioIsProportionalToDamage() {
    SensitivityAnalysis.Row row = row("yearly damage");
    assertEquals(0.75 * row.ratioBase(), row.ratioLow(), 1e-12);
    assertEquals(1.25 * row.ratioBase(), row.ratioHigh(), 1e-12);
    assertEquals(900, row.base(), 1e-9);
  }

  @Test
  void longerLivesPayMore() {
    SensitivityAnalysis.Row row = row("device life");
    assertTrue(row.ratioLow() < row.ratioBase() && row.ratioBase() < row.ratioHigh());
  }

  @Test
  void aLaborRateMovesNothingWhereNoHoursAreOnRecord() {
    SensitivityAnalysis.Row row = row("labor rate");
    assertEquals(row.ratioBase(), row.ratioLow(), 1e-12);
  }

  @Test
  void nothingIsProjectedFromTwoFailures() {
    assertEquals(List.of(), rows(2));
  }
}
