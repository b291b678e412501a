package pondtally.reports.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.TableXYDataset;
import org.jfree.data.xy.XYDataset;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Charts over time and the funnel. */
class PlotChartsTest {

  private static final double YEAR = 365.25;

  @TempDir Path folder;

  private static TestTables tables() throws Exception {
    return new TestTables()
        .fact("as_of", "2026-03-31")
        .fact("period_to", "2025-12-31")
        .fact("groups_below", "5");
  }

  private ChartSource source(TestTables tables) throws Exception {
    return new ChartSource(tables.open(folder.resolve("tables")));
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  @Test
  void incidenceIsStackedFromTheMostFrequentCauseUp() throws Exception {
    TestTables tables = tables();
    incidence(tables, "ice", 1, 20, 0.05);
    incidence(tables, "fence-dammed", 2, 15, 0.2);
    incidence(tables, "retired", 2.5, 10, 0.1);
    incidence(tables, "ice", 4, 3, 0.4);
    incidence(tables, "retired", 5, 6, 0.25);
    Figure figure = IncidenceChart.figures(source(tables)).get(0);
    YIntervalSeriesCollection bands =
        (YIntervalSeriesCollection) figure.panels().get(0).plot().getDataset(0);
    assertEquals(List.of("ice", "fence dammed", "retired without failure"), keys(bands));
    int last = bands.getItemCount(0) - 1;
    assertEquals(5, bands.getXValue(0, last), 1e-9);
    assertEquals(0, bands.getStartYValue(0, last));
    assertEquals(0.4, bands.getEndYValue(0, last), 1e-9);
    assertEquals(0.4, bands.getStartYValue(1, last), 1e-9);
    assertEquals(0.6, bands.getEndYValue(1, last), 1e-9);
    assertEquals(0.7, bands.getEndYValue(2, last), 1e-9);
    assertEquals(
        "After 5 years, about 85 of 100 devices had failed or been retired", plain(figure.title()));
  }

  private static void incidence(
      TestTables tables, String cause, double years, int atRisk, double incidence) {
    tables.row(
        "cumulative_incidence",
        "grouping",
        "all",
        "group",
        "all",
        "cause",
        cause,
        "time_days",
        years * YEAR,
        "at_risk",
        atRisk,
        "incidence",
        incidence,
        "lower",
        incidence / 2,
        "upper",
        incidence * 1.5);
  }

  private static List<String> keys(XYDataset data) {
    return IntStream.range(0, data.getSeriesCount())
        .mapToObj(i -> data.getSeriesKey(i).toString())
        .map(PlotChartsTest::plain)
        .toList();
  }

  @Test
  void funnelPointsAndLimitsAreMultiplesOfTheExpected() throws Exception {
    TestTables tables = tables();
    watershed(tables, "99010201", 50, 30, 200, 10, 1.25, 12.5, true);
    watershed(tables, "99010202", 40, 4, 100, 5, 0.5, 20, false);
    watershed(tables, "99010203", 2, 1, 20, 1, 0, 45, false);
    tables.row(
        "failure_rates",
        "grouping",
        "watershed",
        "group",
        "99010204",
        "year",
        "all",
        "withheld_reason",
        "fewer than 5 sites");
    Figure figure = FunnelChart.figures(source(tables)).get(0);
    XYPlot plot = figure.panels().get(0).plot();
    XYDataset limits = plot.getDataset(0);
    assertEquals(List.of("lower 99.8% limit", "upper 99.8% limit"), keys(limits).subList(0, 2));
    assertEquals(10, limits.getXValue(1, 2));
    assertEquals(2.5, limits.getYValue(1, 2), 1e-9, "12.5 over the expected 5 per 100");
    assertEquals(0.25, limits.getYValue(0, 2), 1e-9);
    XYDataset points = plot.getDataset(1);
    assertEquals(List.of("INSIDE", "SMALL", "OUTSIDE"), keys(points));
    assertEquals(0.8, points.getYValue(0, 0), 1e-9, "4 found, 5 expected");
    assertEquals(1, points.getXValue(1, 0), "2 devices are fewer than 5");
    assertEquals(3, points.getYValue(2, 0), 1e-9, "30 found, 10 expected");
    assertEquals(
        "1 of 3 watersheds lies outside the range of chance: 99010201 (more failures)",
        plain(figure.title()));
    assertTrue(figure.foot().get(2).startsWith("Not drawn"));
  }

  private static void watershed(
      TestTables tables,
      String group,
      int devices,
      int failures,
      double years,
      double expected,
      double lower,
      double upper,
      boolean outside) {
    tables.row(
        "failure_rates",
        "grouping",
        "watershed",
        "group",
        group,
        "year",
        "all",
        "devices",
        devices,
        "failures",
        failures,
        "device_years",
        years,
        "per_100_device_years",
        100 * failures / years,
        "expected",
        expected,
        "funnel_lower",
        lower,
        "funnel_upper",
        upper,
        "outside_funnel",
        outside);
  }

  @Test
  void acreYearsAreSplitByWhatLiesBetweenMeasurements() throws Exception {
    TestTables tables = tables();
    wetland(tables, "99010201", "2024", 12.0, 2.0);
    wetland(tables, "99010201", "2025", 14.5, 14.5);
    wetland(tables, "99010202", "2025", null, null);
    wetland(tables, "99010201", "all", 99.0, 9.0);
    tables.row("wetland", "grouping", "all", "group", "all", "year", "2025", "acre_years", 14.5);
    Figure figure = AcreYearsChart.figures(source(tables)).get(0);
    assertEquals(2, figure.panels().size());
    TableXYDataset bars = (TableXYDataset) figure.panels().get(0).plot().getDataset(0);
    assertEquals(2, bars.getItemCount(), "the row for all years is no bar");
    assertEquals(10, bars.getYValue(0, 0));
    assertEquals(2, bars.getYValue(1, 0));
    assertEquals(0, bars.getYValue(0, 1));
    assertEquals(14.5, bars.getYValue(1, 1));
    assertEquals("3 of 4 sites measured", plain(figure.panels().get(0).rangeTitle()));
    assertEquals(List.of(new Note("area not known")), figure.panels().get(1).beside());
    assertEquals("Working devices kept 14.5 acre-years of wetland in 2025", plain(figure.title()));
  }

  private static void wetland(
      TestTables tables, String group, String year, Double acreYears, Double beyond) {
    tables.row(
        "wetland",
        "grouping",
        "watershed",
        "group",
        group,
        "year",
        year,
        "sites",
        4,
        "sites_measured",
        3,
        "acre_years",
        acreYears,
        "acre_years_extrapolated",
        beyond);
  }

  @Test
  void removalsComputedAndClaimedStandSideBySide() throws Exception {
    TestTables tables = tables();
    removal(tables, 2024, "", -1.5, null);
    removal(tables, 2025, "", 8.0, null);
    removal(tables, 2025, "permit", null, 5.0);
    removal(tables, 2025, "estimate", null, 20.0);
    Figure figure = RemovalsChart.figures(source(tables)).get(0);
    XYDataset data = figure.panels().get(0).plot().getDataset(0);
    assertEquals(List.of("computed", "permit", "estimate"), keys(data));
    assertEquals(-1.5, data.getYValue(0, 0), "below zero stays below zero");
    assertEquals(8, data.getYValue(0, 1));
    assertEquals(5, data.getYValue(1, 0));
    assertEquals(20, data.getYValue(2, 0));
    assertEquals(
        "About 8 removals avoided in 2025, as computed from records", plain(figure.title()));
  }

  private static void removal(
      TestTables tables, int year, String evidence, Double computed, Double claimed) {
    tables.row(
        "removals_avoided",
        "grouping",
        "all",
        "group",
        "all",
        "year",
        year,
        "evidence",
        evidence,
        "sites",
        6,
        "sites_left_out",
        2,
        "avoided_computed",
        computed,
        "avoided_claimed",
        claimed);
  }

  @Test
  void repeatFailuresStartAtZeroAndEndWithFiveUnderObservation() throws Exception {
    TestTables tables = tables();
    mean(tables, 1, 20, 0.1);
    mean(tables, 3.5, 12, 0.4);
    mean(tables, 6, 4, 0.9);
    Figure figure = RepeatFailuresChart.figures(source(tables)).get(0);
    YIntervalSeriesCollection data =
        (YIntervalSeriesCollection) figure.panels().get(0).plot().getDataset(0);
    assertEquals(0, data.getYValue(0, 0));
    int last = data.getItemCount(0) - 1;
    assertEquals(3.5, data.getXValue(0, last), 1e-9);
    assertEquals(0.4, data.getYValue(0, last));
    assertEquals(0.2, data.getStartYValue(0, last));
    assertEquals(
        "A device failed 0.10 times on average in its first 3 years (likely 0.05 to 0.20)",
        plain(figure.title()));
  }

  private static void mean(TestTables tables, double years, int atRisk, double mean) {
    tables.row(
        "repeat_failures",
        "grouping",
        "all",
        "group",
        "all",
        "time_days",
        years * YEAR,
        "at_risk",
        atRisk,
        "mean_failures",
        mean,
        "lower",
        mean / 2,
        "upper",
        mean * 2);
  }
}
