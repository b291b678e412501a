package pondtally.reports.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.jfree.data.xy.XYSeriesCollection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Charts that have a mark and an interval for each row. */
class RowChartsTest {

  @TempDir Path folder;

  private static TestTables tables() throws Exception {
    return new TestTables()
        .fact("as_of", "2026-03-31")
        .fact("base_year", "2025")
        .fact("groups_below", "5");
  }

  private ChartSource source(TestTables tables) throws Exception {
    return new ChartSource(tables.open(folder.resolve("tables")));
  }

  private static void rate(
      TestTables tables, String grouping, String group, int devices, int failures, double... rate) {
    tables.row(
        "failure_rates",
        "grouping",
        grouping,
        "group",
        group,
        "year",
        "all",
        "devices",
        devices,
        "failures",
        failures,
        "device_years",
        100.0 * failures / rate[0],
        "per_100_device_years",
        rate[0],
        "lower",
        rate[1],
        "upper",
        rate[2]);
  }

  private static XYIntervalSeriesCollection intervals(XYPlot plot, int dataset) {
    return (XYIntervalSeriesCollection) plot.getDataset(dataset);
  }

  private static List<String> rows(XYPlot plot) {
    return List.of(((SymbolAxis) plot.getRangeAxis()).getSymbols());
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  @Test
  void ratesStandInOrderOfNameWithTheirExactLimits() throws Exception {
    TestTables tables = tables();
    rate(tables, "watershed", "99010203", 40, 9, 4.5, 2.1, 8.5);
    rate(tables, "watershed", "99010201", 30, 30, 30, 20.2, 42.8);
    rate(tables, "watershed", "99010202", 3, 1, 12, 0.3, 66.8);
    rate(tables, "all", "all", 73, 40, 10.1, 7.2, 13.8);
    Figure figure = RateChart.byWatershed(source(tables)).get(0);
    XYPlot plot = figure.panels().get(0).plot();
    assertEquals(List.of("99010201", "99010202", "99010203"), plain(rows(plot)));
    XYIntervalSeriesCollection full = intervals(plot, 0);
    assertEquals(2, full.getItemCount(0));
    assertEquals(30, full.getXValue(0, 0));
    assertEquals(20.2, full.getStartXValue(0, 0));
    assertEquals(42.8, full.getEndXValue(0, 0));
    assertEquals(2, full.getYValue(0, 1), "the third row");
    XYIntervalSeriesCollection hollow = intervals(plot, 1);
    assertEquals(1, hollow.getItemCount(0), "3 devices are fewer than 5");
    assertEquals(12, hollow.getXValue(0, 0));
    assertEquals("Failures per 100 device-years", plot.getDomainAxis().getLabel());
    assertEquals(
        "All watersheds together: 10.1 failures per 100 device-years (likely 7.2 to 13.8)",
        plain(figure.title()));
  }

  private static List<String> plain(List<String> texts) {
    return texts.stream().map(RowChartsTest::plain).toList();
  }

  @Test
  void anIntervalThatLeavesTheAxisEndsInAnArrow() throws Exception {
    TestTables tables = tables();
    rate(tables, "watershed", "99010201", 30, 30, 5, 3.0, 8.0);
    rate(tables, "watershed", "99010202", 3, 1, 4, 0.1, 400.0);
    Figure figure = RateChart.byWatershed(source(tables)).get(0);
    XYPlot plot = figure.panels().get(0).plot();
    XYSeriesCollection arrows = (XYSeriesCollection) plot.getDataset(2);
    assertEquals(1, arrows.getItemCount(0));
    assertEquals(1, arrows.getYValue(0, 0), "the second row");
    assertEquals(plot.getDomainAxis().getUpperBound(), arrows.getXValue(0, 0));
    RowWords words = (RowWords) figure.panels().get(0).beside().get(0);
    assertEquals("4 (0 to 400)", plain(words.columns().get(1).get(0)), "the figures stand beside");
  }

  @Test
  void aWithheldGroupSaysSoInsteadOfAMark() throws Exception {
    TestTables tables = tables();
    rate(tables, "watershed", "99010201", 30, 30, 5, 3.0, 8.0);
    tables.row(
        "failure_rates",
        "grouping",
        "watershed",
        "group",
        "99010202",
        "year",
        "all",
        "withheld_reason",
        "fewer than 5 sites");
    Panel panel = RateChart.byWatershed(source(tables)).get(0).panels().get(0);
    RowWords words = (RowWords) panel.beside().get(0);
    assertEquals("withheld: fewer than 5 sites", words.instead().get(1));
    assertEquals(List.of("", "withheld", "withheld", "withheld"), words.columns().get(1));
    assertEquals(1, intervals(panel.plot(), 0).getItemCount(0));
  }

  @Test
  void pipesAreSetApartOnlyByTheirLimitsAndNeverWhenFew() throws Exception {
    TestTables tables = tables();
    rate(tables, "pipe", "dual 12 in", 90, 13, 4.8, 2.6, 8.3);
    rate(tables, "pipe", "single 10 in", 78, 53, 38, 29, 50);
    rate(tables, "pipe", "smooth 8 in", 4, 40, 90, 80, 99);
    assertEquals(
        "Single-wall 10 in failed more often than dual-wall 12 in: 38 (likely 29 to 50) against 4.8"
            + " (likely 2.6 to 8.3) failures per 100 device-years",
        plain(RateChart.byPipe(source(tables)).get(0).title()));
  }

  @Test
  void noFailureIsSaidAsSuch() throws Exception {
    TestTables tables = tables();
    tables.row(
        "failure_rates",
        "grouping",
        "pipe",
        "group",
        "dual 12 in",
        "year",
        "all",
        "devices",
        40,
        "failures",
        0,
        "device_years",
        150.0,
        "per_100_device_years",
        0.0,
        "lower",
        0.0,
        "upper",
        2.46);
    assertEquals(
        "Dual-wall 12 in: no failure in 150 device-years, likely fewer than 2.5 failures per 100"
            + " device-years",
        plain(RateChart.byPipe(source(tables)).get(0).title()));
  }

  @Test
  void fortyWatershedsAreCutIntoPartsWithTheSameMargins() throws Exception {
    Figure[] parts = RateChart.byWatershed(source(InventedProgram.large())).toArray(Figure[]::new);
    assertEquals(2, parts.length);
    assertEquals("failure-rates-by-watershed-2", parts[1].name());
    assertEquals(parts[0].panels().get(0).frame().left(), parts[1].panels().get(0).frame().left());
    assertEquals(
        40,
        rows(parts[0].panels().get(0).plot()).size()
            + rows(parts[1].panels().get(0).plot()).size());
  }

  @Test
  void causesStandByFrequencyTheUnknownLast() throws Exception {
    TestTables tables = tables();
    cause(tables, "unknown", 20, 0.5, 0.35, 0.65);
    cause(tables, "ice", 5, 0.125, 0.05, 0.26);
    cause(tables, "fence-dammed", 15, 0.375, 0.24, 0.53);
    cause(tables, "vandalism", 0, 0, 0, 0.09);
    Figure figure = CausesChart.figures(source(tables)).get(0);
    XYPlot plot = figure.panels().get(0).plot();
    assertEquals(List.of("fence dammed", "ice", "not recorded"), rows(plot));
    assertEquals(0.375, intervals(plot, 0).getXValue(0, 0));
    assertEquals(0.53, intervals(plot, 0).getEndXValue(0, 0));
    assertEquals("What failures were put down to", figure.title(), "limits overlap");
  }

  private static void cause(TestTables tables, String cause, int failures, double... share) {
    tables.row(
        "failure_causes",
        "grouping",
        "all",
        "group",
        "all",
        "cause",
        cause,
        "failures",
        failures,
        "share",
        share[0],
        "lower",
        share[1],
        "upper",
        share[2]);
  }

  @Test
  void costsWithoutLimitsAreHollowAndNothingIsRanked() throws Exception {
    TestTables tables = tables();
    cost(tables, "watershed", "99010202", 5000.0, null, null, 7);
    cost(tables, "watershed", "99010201", 9000.0, 7000.0, 12000.0, 21);
    cost(tables, "watershed", "99010203", null, null, null, 0);
    cost(tables, "all", "all", 4312.0, 3105.0, 6240.0, 28);
    Figure figure = CostChart.figures(source(tables)).get(0);
    XYPlot plot = figure.panels().get(0).plot();
    assertEquals(List.of("99010201", "99010202", "99010203"), rows(plot));
    assertEquals(9000, intervals(plot, 0).getXValue(0, 0));
    assertEquals(5000, intervals(plot, 1).getXValue(0, 0));
    assertEquals("2025 dollars per property", plot.getDomainAxis().getLabel());
    RowWords words = (RowWords) figure.panels().get(0).beside().get(0);
    assertEquals("no protected property", words.instead().get(2));
    assertEquals(
        "A protected property cost $4,300 (likely $3,100 to $6,200), in 2025 dollars",
        plain(figure.title()));
  }

  private static void cost(
      TestTables tables,
      String grouping,
      String group,
      Double value,
      Double lower,
      Double upper,
      double properties) {
    tables.row(
        "cost_effectiveness",
        "grouping",
        grouping,
        "group",
        group,
        "year",
        "all",
        "measure",
        "per-property",
        "basis",
        "cash-and-in-kind",
        "denominator",
        properties,
        "value_usd",
        value,
        "lower",
        lower,
        "upper",
        upper);
    tables.row(
        "cost_effectiveness",
        "grouping",
        grouping,
        "group",
        group,
        "year",
        "all",
        "measure",
        "per-property",
        "basis",
        "cash",
        "denominator",
        properties,
        "value_usd",
        1.0);
  }

  @Test
  void hazardRatiosStandOnADoublingScaleWithOneAsTheMiddle() throws Exception {
    Figure figure = HazardRatioChart.figures(source(InventedProgram.usual())).get(0);
    assertEquals(2, figure.panels().size(), "one panel a model");
    XYPlot plot = figure.panels().get(0).plot();
    assertEquals(2, ((LogAxis) plot.getDomainAxis()).getBase());
    assertEquals(2.9, intervals(plot, 0).getXValue(0, 0));
    assertEquals(1.6, intervals(plot, 0).getStartXValue(0, 0));
    RowWords words = (RowWords) figure.panels().get(0).beside().get(0);
    assertEquals("no failure at this level", words.instead().get(2));
    assertEquals(
        "Single-wall 10 in against dual-wall 12 in: hazard ratio 2.9 (likely 1.6 to 5.2)",
        plain(figure.title()));
  }

  /** Numbers of an axis from a sixteenth to sixteen would touch. */
  @Test
  void aWideDoublingScaleNumbersEverySecondStep() throws Exception {
    assertEquals(1, tick(0.4, 5.2));
    assertEquals(2, tick(0.05, 12));
  }

  private double tick(double lower, double upper) throws Exception {
    TestTables tables = tables();
    tables.row(
        "hazard_ratios",
        "model",
        "pipe",
        "term",
        "pipe",
        "level",
        "single 10 in",
        "reference",
        "dual 12 in",
        "devices",
        12,
        "failures",
        9,
        "hazard_ratio",
        1.5,
        "lower",
        lower,
        "upper",
        upper,
        "p_value",
        0.5);
    Figure figure =
        HazardRatioChart.figures(new ChartSource(tables.open(folder.resolve("t" + upper)))).get(0);
    return ((LogAxis) figure.panels().get(0).plot().getDomainAxis()).getTickUnit().getSize();
  }

  /** Words that stand for a mark keep off the figures beside the plot. */
  @Test
  void aLongReasonGoesOnInASecondLineAndEndsBeforeTheFigures() {
    String reason = "not estimable: no failure among the 30 devices at this level, so no estimate";
    String name = "installed in the year 2025 against installed in the year 2022";
    List<List<String>> cells = List.of(List.of("", "0", "30"));
    List<String> heads = List.of("Ratio (limits)", "Failures", "Lives");
    RowWords.Room room = RowWords.Room.of(List.of(name), heads, cells);
    RowWords words = new RowWords(List.of(name), heads, cells, List.of(reason), room);
    List<String> lines = words.insteadLines(0);
    assertEquals(reason, String.join(" ", lines));
    assertEquals(2, lines.size(), lines.toString());
    double toFigures = room.data() + room.columns().get(0) + 8;
    for (String line : lines) {
      double width = Lettering.width(line, Lettering.regular(Lettering.SMALL));
      assertTrue(width <= toFigures, line);
    }
  }

  @Test
  void theAssumptionThatMovesMostStandsOnTop() throws Exception {
    Figure figure = SensitivityChart.figures(source(InventedProgram.usual())).get(0);
    XYPlot plot = figure.panels().get(0).plot();
    assertEquals(
        List.of("yearly damage", "horizon years", "discount rate", "working share", "labor rate"),
        rows(plot));
    XYSeriesCollection lowEnds = (XYSeriesCollection) plot.getDataset(1);
    assertEquals(1.05, lowEnds.getXValue(0, 0));
    XYSeriesCollection highEnds = (XYSeriesCollection) plot.getDataset(3);
    assertEquals(3.2, highEnds.getXValue(0, 0));
    assertTrue(figure.title().endsWith("above 1 whichever assumption is moved"));
  }

  @Test
  void theForecastHasARowAYear() throws Exception {
    Figure figure = SeasonChart.figures(source(InventedProgram.usual())).get(0);
    XYPlot plot = figure.panels().get(0).plot();
    assertEquals(List.of("2026", "2027", "2028"), rows(plot));
    assertEquals(12.4, intervals(plot, 0).getXValue(0, 0), 1e-9);
    assertEquals("2026: 12 expected failures (likely 7 to 19)", plain(figure.title()));
  }
}
