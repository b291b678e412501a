package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.Action;
import pondtally.record.Condition;

class SeasonForecastTest {

  private static List<SeasonForecast.Row> rows(MoneyProgram... clusters) {
    AnalysisSettings settings = MoneyProgram.settings();
    BenefitTally tally = new BenefitTally(settings);
    List<WorklistDevice> devices = new ArrayList<>();
    for (MoneyProgram cluster : clusters) {
      tally.add(cluster.view());
      devices.addAll(WorklistDevice.of(cluster.view(), settings));
    }
    return SeasonForecast.rows(devices, tally, settings);
  }

  private static SeasonForecast.Row all(List<SeasonForecast.Row> rows, int year) {
    return rows.stream()
        .filter(row -> row.group().equals("all") && row.year() == year)
        .findFirst()
        .orElseThrow();
  }

  private static MoneyProgram mended(int n, String lastSeen, Condition condition) {
    String device = "D" + n;
    return new MoneyProgram()
        .site("S" + n, 800.0)
        .device(device, "S" + n, "2018-0" + n + "-01", 1000.0)
        .visit(device, "2019-0" + n + "-10", Condition.WORKING, Action.NONE, 40.0)
        .visit(device, "2021-0" + n + "-10", Condition.FAILED, Action.REPAIRED, 100.0)
        .visit(device, "2023-0" + n + "-10", Condition.FAILED, Action.REPAIRED, 140.0)
        .visit(device, lastSeen, condition, Action.NONE, 40.0);
  }

  private static List<SeasonForecast.Row> program() {
    return rows(
        mended(1, "2024-10-01", Condition.WORKING),
        mended(2, "2024-10-01", Condition.WORKING),
        mended(3, "2024-10-01", Condition.WORKING),
        mended(4, "2024-12-01", Condition.FAILED));
  }

  @Test
  void visitsFollowThePlan() {
    // Seen on 1 October and due 180 days later, on 30 March 2025 (day 89 after the cut) and every
    // 180 days: days 89, 269; 449, 629; … The failed one at once and then days 181, 361; 541, 721.
    assertEquals(3 * 2 + 3, all(program(), 1).visits());
    assertEquals(3 * 2 + 2, all(program(), 2).visits());
  }

  @Test
  void aDeviceThatStandsFailedIsMendedButIsNoFailureOfNextYear() {
    SeasonForecast.Row first = all(program(), 1);
    assertEquals(4, first.devices());
    assertEquals(1, first.devicesFailed());
    assertEquals(first.expectedFailures() + 1, first.repairs() + first.replacements(), 1e-9);
    SeasonForecast.Row second = all(program(), 2);
    assertEquals(second.expectedFailures(), second.repairs() + second.replacements(), 1e-9);
  }

  @Test
  void limitsLieAroundWhatIsExpectedAndDollarsFollow() {
    for (SeasonForecast.Row row : program()) {
      assertTrue(row.lower() <= row.expectedFailures(), row.toString());
      assertTrue(row.expectedFailures() <= row.upper(), row.toString());
      assertTrue(row.costLower() < row.costUsd() && row.costUsd() < row.costUpper());
    }
    // Plain visits cost $40; repairs $120 on average; nothing was ever replaced.
    SeasonForecast.Row first = all(program(), 1);
    double usd = 40 * (first.visits() - first.repairs()) + 120 * first.repairs();
    assertEquals(usd, first.costUsd(), 1e-9);
    assertEquals(0, first.replacements());
  }

  /** With constant hazard the chance of each visit interval is 1 − exp(−days/scale). */
  @Test
  void eachVisitFindsWhatFailedSinceTheOneBefore() {
    double[] shape = new double[SeasonFits.DRAWS];
    double[] logScale = new double[SeasonFits.DRAWS];
    Arrays.fill(shape, 1);
    Arrays.fill(logScale, Math.log(1000));
    SeasonFit fit = new SeasonFit("all", shape, logScale);
    SeasonCourse course = new SeasonCourse(fit, 0.4, 180, 5 * 365.25);
    SeasonCell cell = new SeasonCell(700, 800, 80, false);
    double[] found = course.found(cell, course.logAges(cell, 4), 0);
    // Known good 100 days before the cut, next visit after 80: 180 days, like each later interval.
    for (double chance : found) {
      assertEquals(1 - Math.exp(-0.18), chance, 1e-12);
    }
    SeasonCell failed = new SeasonCell(0, 800, 1, true);
    double[] after = course.found(failed, course.logAges(failed, 3), 0);
    assertEquals(0, after[0]);
    assertEquals(1 - Math.exp(-0.18), after[1], 1e-12);
    assertEquals(1 - Math.exp(-0.18), after[2], 1e-12);
  }

  @Test
  void sameSeedSameFigures() {
    assertEquals(program(), program());
  }

  @Test
  void watershedsAndPipeTypesAddUpToTheProgram() {
    List<SeasonForecast.Row> rows = program();
    for (String grouping : List.of("pipe", "watershed")) {
      double sum =
          rows.stream()
              .filter(row -> row.grouping().equals(grouping) && row.year() == 3)
              .mapToDouble(SeasonForecast.Row::expectedFailures)
              .sum();
      assertEquals(all(rows, 3).expectedFailures(), sum, 1e-9);
    }
  }

  @Test
  void withoutEnoughFailuresThereIsNoForecastButVisitsAreKnown() {
    SeasonForecast.Row row =
        all(
            rows(
                new MoneyProgram()
                    .site("S1", 500.0)
                    .device("D1", "S1", "2020-01-01", null)
                    .visit("D1", "2024-12-01", Condition.WORKING, Action.NONE, null)),
            1);
    assertNull(row.expectedFailures());
    assertNull(row.lower());
    assertNull(row.costUsd());
    assertNotNull(row.visits());
    assertEquals(2, row.visits());
  }
}
