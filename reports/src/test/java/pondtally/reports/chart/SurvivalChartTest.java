package pondtally.reports.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.chart.Panel.Beside;
import pondtally.reports.table.TablePackage;

class SurvivalChartTest {

  private static final double YEAR = 365.25;

  @TempDir Path folder;

  /** Ten lives: failures after 1 and 2 years, one censored between, the rest after 3 years. */
  private static TestTables tenLives() throws Exception {
    TestTables tables = new TestTables().fact("as_of", "2026-03-31").fact("groups_below", "5");
    curve(tables, "all", "all");
    summary(tables, "all", "all", 0.7875, 0.5, 0.93);
    return tables;
  }

  private static void curve(TestTables tables, String grouping, String group) {
    step(tables, grouping, group, YEAR, 10, 1, 0, 0.9);
    step(tables, grouping, group, 1.5 * YEAR, 9, 0, 1, 0.9);
    step(tables, grouping, group, 2 * YEAR, 8, 1, 0, 0.7875);
    step(tables, grouping, group, 3 * YEAR, 7, 0, 4, 0.7875);
    step(tables, grouping, group, 3.5 * YEAR, 3, 1, 2, 0.525);
  }

  private static void step(
      TestTables tables,
      String grouping,
      String group,
      double days,
      int atRisk,
      int events,
      int censored,
      double survival) {
    tables.row(
        "survival_curves",
        "grouping",
        grouping,
        "group",
        group,
        "method",
        "product-limit",
        "time_days",
        days,
        "at_risk",
        atRisk,
        "events",
        events,
        "censored",
        censored,
        "survival",
        survival,
        "lower",
        survival - 0.2,
        "upper",
        survival + 0.05);
  }

  private static void summary(
      TestTables tables, String grouping, String group, double s, double lower, double upper) {
    tables.row(
        "survival_summary",
        "grouping",
        grouping,
        "group",
        group,
        "method",
        "product-limit",
        "devices",
        10,
        "lives",
        10,
        "failures",
        3,
        "survival_3y",
        s,
        "survival_3y_lower",
        lower,
        "survival_3y_upper",
        upper,
        "supported_days",
        3 * YEAR);
  }

  private List<Figure> figures(TestTables tables) throws Exception {
    TablePackage opened = tables.open(folder.resolve("tables"));
    return SurvivalChart.figures(new ChartSource(opened));
  }

  private static YIntervalSeriesCollection bands(XYPlot plot) {
    for (int i = 0; i < plot.getDatasetCount(); i++) {
      if (plot.getDataset(i) instanceof YIntervalSeriesCollection bands) {
        return bands;
      }
    }
    throw new AssertionError("no curve with limits");
  }

  @Test
  void drawsTheTableUpToTheLastAgeWithFiveUnderObservation() throws Exception {
    Figure figure = figures(tenLives()).get(0);
    XYPlot plot = figure.panels().get(0).plot();
    YIntervalSeriesCollection bands = bands(plot);
    assertEquals(1, bands.getSeriesCount());
    int last = bands.getItemCount(0) - 1;
    assertEquals(0, bands.getXValue(0, 0));
    assertEquals(1, bands.getYValue(0, 0));
    assertEquals(1, bands.getXValue(0, 1), 1e-9);
    assertEquals(0.9, bands.getYValue(0, 1));
    assertEquals(0.7, bands.getStartYValue(0, 1), 1e-9);
    assertEquals(0.95, bands.getEndYValue(0, 1), 1e-9);
    assertEquals(3, bands.getXValue(0, last), 1e-9);
    assertEquals(0.7875, bands.getYValue(0, last), "the failure with 3 at risk is cut off");
    assertTrue(
        figure
            .foot()
            .contains("Curves end where fewer than 5 remain at risk; the numbers below go on."));
  }

  @Test
  void axesSayWhatTheyMeasureAndTheShareGoesFromNothingToAll() throws Exception {
    Panel panel = figures(tenLives()).get(0).panels().get(0);
    assertEquals("Years since installation", panel.plot().getDomainAxis().getLabel());
    assertEquals("Share that had not failed", panel.rangeTitle());
    assertEquals(0, panel.plot().getRangeAxis().getLowerBound(), 0.06);
    assertEquals(1, panel.plot().getRangeAxis().getUpperBound(), 0.06);
  }

  @Test
  void theTitleStatesTheFigureWithItsLimits() throws Exception {
    Figure figure = figures(tenLives()).get(0);
    assertEquals(
        "About 79 of 100 devices had not failed after 3 years (likely 50 to 93)",
        figure.title().replace('\u00a0', ' '));
    assertEquals(
        "10 service lives, 3 first failures. Data to March 31, 2026.",
        figure.subtitles().get(0).replace('\u00a0', ' '));
  }

  @Test
  void atEveryShownAgeTheNumbersAddUp() throws Exception {
    Beside beside = figures(tenLives()).get(0).panels().get(0).beside().get(0);
    Counts counts = ((CountsTable) beside).counts();
    assertEquals(List.of(0.0, 0.5, 1.0, 1.5, 2.0, 2.5, 3.0), halfYears(counts.years()));
    assertEquals(List.of(10L, 10L, 10L, 9L, 8L, 7L, 7L), counts.atRisk());
    assertEquals(List.of(0L, 0L, 0L, 1L, 1L, 2L, 2L), counts.failed());
    assertEquals(List.of(0L, 0L, 0L, 0L, 1L, 1L, 1L), counts.censored());
    assertFalse(counts.hasLateEntry());
  }

  private static List<Double> halfYears(List<Double> years) {
    return years.stream().map(year -> Math.round(2 * year) / 2.0).toList();
  }

  @Test
  void livesFollowedOnlyLaterAreCountedAsNotYetFollowed() throws Exception {
    TestTables tables = new TestTables().fact("as_of", "2026-03-31");
    step(tables, "all", "all", YEAR, 6, 1, 0, 0.83);
    step(tables, "all", "all", 2 * YEAR, 9, 0, 9, 0.83);
    Panel panel = figures(tables).get(0).panels().get(0);
    Counts counts = ((CountsTable) panel.beside().get(0)).counts();
    assertTrue(counts.hasLateEntry());
    for (int i = 0; i < counts.years().size(); i++) {
      assertEquals(
          10,
          counts.atRisk().get(i)
              + counts.failed().get(i)
              + counts.censored().get(i)
              + counts.notYet().get(i));
    }
    assertEquals(4, counts.notYet().get(0));
  }

  @Test
  void fourGroupsShareAPlotAndFiveGetOneEach() throws Exception {
    for (int groups : List.of(4, 5)) {
      TestTables tables = new TestTables().fact("as_of", "2026-03-31").fact("groups_below", "5");
      for (int i = 0; i < groups; i++) {
        curve(tables, "pipe", "dual " + (6 + i) + " in");
      }
      List<Panel> panels = figures(tables).get(0).panels();
      assertEquals(groups == 4 ? 1 : 5, panels.size());
      assertEquals(groups == 4 ? 4 : 1, bands(panels.get(0).plot()).getSeriesCount());
    }
  }

  @Test
  void aDifferenceIsNamedOnlyWhereLimitsAreApart() throws Exception {
    TestTables apart = new TestTables().fact("as_of", "2026-03-31").fact("groups_below", "5");
    TestTables overlapping = new TestTables().fact("as_of", "2026-03-31");
    for (TestTables tables : List.of(apart, overlapping)) {
      curve(tables, "pipe", "dual 12 in");
      curve(tables, "pipe", "single 10 in");
      summary(tables, "pipe", "dual 12 in", 0.84, 0.72, 0.92);
    }
    summary(apart, "pipe", "single 10 in", 0.5, 0.4, 0.61);
    summary(overlapping, "pipe", "single 10 in", 0.7, 0.5, 0.8);
    assertEquals(
        "Not failed after 3 years: dual-wall 12 in about 84 of 100 (likely 72 to 92), "
            + "single-wall 10 in about 50 of 100 (likely 40 to 61)",
        figures(apart).get(0).title().replace('\u00a0', ' '));
    assertEquals(
        "Share of devices that had not failed, by age and pipe type: no clear difference",
        figures(overlapping).get(0).title());
  }

  @Test
  void aTestOfThePairThatFindsNothingKeepsTheTitleNeutral() throws Exception {
    TestTables tables = new TestTables().fact("as_of", "2026-03-31");
    curve(tables, "pipe", "dual 12 in");
    curve(tables, "pipe", "single 10 in");
    summary(tables, "pipe", "dual 12 in", 0.84, 0.72, 0.92);
    summary(tables, "pipe", "single 10 in", 0.5, 0.4, 0.61);
    tables.row(
        "group_tests",
        "test",
        "log-rank",
        "grouping",
        "pipe",
        "group_a",
        "dual 12 in",
        "group_b",
        "single 10 in",
        "p_value",
        0.02,
        "p_adjusted",
        0.2);
    assertTrue(figures(tables).get(0).title().endsWith("no clear difference"));
  }

  @Test
  void aGroupThatNeverHadFiveHasNumbersButNoCurve() throws Exception {
    TestTables tables = new TestTables().fact("as_of", "2026-03-31");
    curve(tables, "pipe", "dual 12 in");
    step(tables, "pipe", "smooth 8 in", YEAR, 3, 1, 2, 0.67);
    Panel panel = figures(tables).get(0).panels().get(0);
    assertEquals(2, panel.beside().size());
    YIntervalSeriesCollection bands = bands(panel.plot());
    assertEquals(1, bands.getItemCount(1), "the starting point alone draws nothing");
  }
}
