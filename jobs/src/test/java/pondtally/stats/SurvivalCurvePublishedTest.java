package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pondtally.stats.Published.assertCell;
import static pondtally.stats.Published.count;
import static pondtally.stats.Published.number;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Survival curves of published data sets against R's survival 3.5-3 and against printed tables. */
class SurvivalCurvePublishedTest {
  @Test
  void gehanRemissionOfFreireich1963() {
    assertCurves("km_gehan.csv", 28, g -> PublishedLives.gehan(afterEquals(g)));
    assertSummary("km_summary_gehan.csv", 2, g -> PublishedLives.gehan(afterEquals(g)));
  }

  @Test
  void amlMaintenanceOfMiller1981() {
    assertCurves("km_aml.csv", 20, g -> PublishedLives.aml(afterEquals(g)));
    assertSummary("km_summary_aml.csv", 2, g -> PublishedLives.aml(afterEquals(g)));
  }

  @Test
  void veteranLungCancerOfKalbfleischAndPrentice1980() {
    assertCurves("km_veteran_celltype.csv", 125, g -> PublishedLives.veteran(afterEquals(g)));
    assertSummary(
        "km_summary_veteran_celltype.csv", 4, g -> PublishedLives.veteran(afterEquals(g)));
    assertCurves("km_veteran_all.csv", 101, g -> PublishedLives.veteran("all"));
    assertSummary("km_summary_veteran_all.csv", 1, g -> PublishedLives.veteran("all"));
  }

  @Test
  void channingHouseOfHyde1977WithDelayedEntry() {
    assertCurves("lefttrunc_channing.csv", 290, g -> PublishedLives.channing(afterEquals(g), 0));
    assertCurves(
        "lefttrunc_channing_cond816.csv", 285, g -> PublishedLives.channing(afterEquals(g), 816));
  }

  @Test
  void smallConstructedSets() {
    assertCurves("km_edge_cases.csv", 32, PublishedLives::edgeCase);
    assertSummary("km_edge_summary.csv", 7, PublishedLives::edgeCase);
  }

  /** Tables 4.1A and 4.2 of the 2003 edition; figures typed from memory of the book. */
  @Test
  void printedTable41AOfKleinAndMoeschberger() {
    double[] time = {6, 7, 10, 13, 16, 22, 23};
    double[] survival = {.857, .807, .753, .690, .627, .538, .448};
    double[] error = {.076, .087, .096, .107, .114, .128, .135};
    double[] hazard = {.1428, .2017, .2683, .3517, .4426, .5854, .7521};
    SurvivalCurve curve = SurvivalCurve.of(PublishedLives.gehan("6-MP").anyEvent());
    for (int i = 0; i < time.length; i++) {
      assertEquals(survival[i], curve.at(time[i]).getAsDouble(), 5e-4);
      assertEquals(error[i], curve.stdErrorAt(time[i]).getAsDouble(), 5e-4);
      // One unit of the last digit: the book adds up rounded terms (0.1428 for 3/21 = 0.142857).
      assertEquals(hazard[i], hazardAt(curve, time[i]), 1e-4);
    }
  }

  /** Kleinbaum & Klein, Survival Analysis, chapter 2; Miller 1981; typed from memory. */
  @Test
  void printedMediansOfKleinbaumAndKleinAndOfMiller() {
    assertEquals(23, medianOf(PublishedLives.gehan("6-MP")));
    assertEquals(8, medianOf(PublishedLives.gehan("control")));
    assertEquals(31, medianOf(PublishedLives.aml("Maintained")));
    assertEquals(23, medianOf(PublishedLives.aml("Nonmaintained")));
  }

  private static double medianOf(CountedLives lives) {
    return SurvivalCurve.of(lives.anyEvent()).quantile(0.5).getAsDouble();
  }

  private static double hazardAt(SurvivalCurve curve, double t) {
    return curve.cumulativeHazard(curve.table().rowAtOrBefore(t));
  }

  private static String afterEquals(String group) {
    return group.substring(group.indexOf('=') + 1);
  }

  private static SurvivalCurve textbook(CountedLives lives, CurveInterval interval) {
    return SurvivalCurve.of(lives.anyEvent(), interval, CurveEdge.TEXTBOOK, 0.95);
  }

  private static void assertCurves(String file, int rows, Function<String, CountedLives> lives) {
    Map<String, List<CSVRecord>> groups = new HashMap<>();
    for (CSVRecord row : Published.rows("curves/" + file)) {
      groups.computeIfAbsent(row.get("group"), g -> new ArrayList<>()).add(row);
    }
    assertEquals(rows, groups.values().stream().mapToInt(List::size).sum());
    groups.forEach((group, expected) -> assertCurve(expected, lives.apply(group)));
  }

  private static void assertCurve(List<CSVRecord> expected, CountedLives lives) {
    SurvivalCurve curve = textbook(lives, CurveInterval.LOG_LOG);
    assertEquals(expected.size(), curve.rows());
    for (int i = 0; i < curve.rows(); i++) {
      CSVRecord row = expected.get(i);
      assertEquals(number(row, "time"), curve.time(i));
      assertEquals(count(row, "n_risk"), curve.atRisk(i));
      assertEquals(count(row, "n_event"), curve.events(i));
      assertEquals(count(row, "n_censor"), curve.censored(i));
      assertCell(row, "survival", curve.survival(i));
      assertCell(row, "se_greenwood", curve.stdError(i));
      assertCell(row, "cumhaz_nelson_aalen", curve.cumulativeHazard(i));
      assertCell(row, "var_cumhaz_aalen", curve.hazardVarianceAalen(i));
      assertCell(row, "var_cumhaz_klein", curve.hazardVarianceKlein(i));
      assertLimits(row, "loglog", curve.limits(i));
      assertLimits(row, "plain", textbook(lives, CurveInterval.PLAIN).limits(i));
      assertLimits(row, "log", textbook(lives, CurveInterval.LOG).limits(i));
    }
  }

  private static void assertLimits(CSVRecord row, String name, Limits limits) {
    assertCell(row, "lower_" + name, limits.lower());
    assertCell(row, "upper_" + name, limits.upper());
  }

  private static void assertSummary(String file, int rows, Function<String, CountedLives> lives) {
    List<CSVRecord> expected = Published.rows("curves/" + file);
    assertEquals(rows, expected.size());
    for (CSVRecord row : expected) {
      CountedLives group = lives.apply(row.get("group"));
      assertEquals(count(row, "n"), group.lives());
      assertEquals(count(row, "events"), group.events());
      SurvivalCurve curve = textbook(group, CurveInterval.LOG_LOG);
      assertCell(row, "median_smallest_t", curve.quantile(0.5));
      assertLimits(row, "loglog", "median", curve.quantileLimits(0.5));
      assertLimits(
          row, "plain", "median", textbook(group, CurveInterval.PLAIN).quantileLimits(0.5));
      assertQuartiles(row, curve);
      assertMeans(row, curve.restrictedMean(number(row, "rmst_tau")));
    }
  }

  private static void assertLimits(CSVRecord row, String kind, String name, Limits limits) {
    assertCell(row, name + "_lower_" + kind, limits.lower());
    assertCell(row, name + "_upper_" + kind, limits.upper());
  }

  private static void assertQuartiles(CSVRecord row, SurvivalCurve curve) {
    // Where S stays at exactly 3/4 or 1/4, R gives the middle of the stretch and we its beginning.
    boolean flat = row.get("group").equals("flat_at_half");
    if (flat) {
      assertEquals(1.5, number(row, "q25"));
      assertEquals(1, curve.quantile(0.25).getAsDouble());
      assertEquals(5.5, number(row, "q75"));
      assertEquals(5, curve.quantile(0.75).getAsDouble());
    } else {
      assertCell(row, "q25", curve.quantile(0.25));
      assertCell(row, "q75", curve.quantile(0.75));
    }
    assertLimits(row, "loglog", "q25", curve.quantileLimits(0.25));
    assertLimits(row, "loglog", "q75", curve.quantileLimits(0.75));
  }

  private static void assertMeans(CSVRecord row, RestrictedMean mean) {
    assertCell(row, "rmst", mean.mean());
    assertCell(row, "rmst_se", mean.stdError());
    assertCell(row, "rmst_formula", mean.mean());
    assertCell(row, "rmst_se_formula", mean.stdError());
  }
}
