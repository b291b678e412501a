package pondtally.reports.chart;

import java.awt.Color;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import pondtally.reports.chart.Figure.KeyEntry;
import pondtally.reports.chart.Figure.Sample;
import pondtally.reports.chart.RowWords.Room;
import pondtally.reports.table.Row;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** How the benefit-cost ratio moves with each assumption, the one that moves it most on top. */
final class SensitivityChart {

  private static final String NAME = "benefit-cost-sensitivity";
  private static final String NEUTRAL = Messages.of("common.How-the-benefit-cost-ratio-moves");
  private static final Look LOW = new Look(Look.VERMILLION, Look.line(3), Look.circle(3.2));
  private static final Look HIGH = new Look(Look.BLUE, Look.line(3), Look.square(2.9));
  private static final int MOST_ROWS = 30;
  private static final List<String> HEADS =
      List.of(
          Messages.of("chart.SensitivityChart.low"),
          Messages.of("common.Used"),
          Messages.of("chart.SensitivityChart.high"));

  private SensitivityChart() {}

  static List<Figure> figures(ChartSource source) {
    List<Row> rows = source.rows("sensitivity");
    if (rows.isEmpty()) {
      return List.of();
    }
    List<Row> known =
        rows.stream()
            .filter(row -> row.number("ratio_low").isPresent())
            .filter(row -> row.number("ratio_high").isPresent())
            .filter(row -> row.number("ratio_base").isPresent())
            .sorted(Comparator.comparingDouble(SensitivityChart::span).reversed())
            .limit(MOST_ROWS)
            .toList();
    if (known.isEmpty()) {
      return List.of(
          Figure.nothingToShow(
              NAME,
              NEUTRAL,
              source,
              Messages.of("chart.SensitivityChart.nothing-is-drawn-the-benefit-cost")));
    }
    return List.of(figure(source, known));
  }

  private static double span(Row row) {
    return Math.abs(row.number("ratio_high").getAsDouble() - row.number("ratio_low").getAsDouble());
  }

  private static Figure figure(ChartSource source, List<Row> rows) {
    String title = title(rows);
    return new Figure(
        NAME,
        title,
        List.of(source.cut()),
        List.of(
            new KeyEntry(
                LOW, Sample.LINE_AND_MARK, Messages.of("chart.SensitivityChart.at-the-low-value")),
            new KeyEntry(
                HIGH,
                Sample.LINE_AND_MARK,
                Messages.of("chart.SensitivityChart.at-the-high-value"))),
        List.of(panel(rows)),
        1,
        List.of(Messages.of("chart.SensitivityChart.one-assumption-is-moved-at-a")),
        title + ". " + description(rows));
  }

  private static Panel panel(List<Row> rows) {
    List<String> names = rows.stream().map(row -> GroupText.words(row.text("assumption"))).toList();
    double most = rows.stream().flatMapToDouble(SensitivityChart::ratios).max().orElse(1);
    List<List<String>> values =
        rows.stream()
            .map(row -> List.of(value(row, "low"), value(row, "base"), value(row, "high")))
            .toList();
    Room room = Room.of(names, HEADS, values);
    Scale scale = Scale.upTo(0, Math.max(1.1, most), 6, "0.##");
    XYPlot plot =
        RowPlot.plot(
            IntervalPlot.axis(
                Messages.of("chart.SensitivityChart.benefit-cost-ratio"), scale, room),
            names);
    Plots.referenceLine(plot, 1);
    plot.addDomainMarker(
        new ValueMarker(
            rows.get(0).number("ratio_base").getAsDouble(), Look.INK, Look.line(0.9f, 9, 3)));
    addEnds(plot, rows, "ratio_low", LOW);
    addEnds(plot, rows, "ratio_high", HIGH);
    List<String> noWords = rows.stream().map(row -> "").toList();
    return RowPlot.panel("", plot, new RowWords(names, HEADS, values, noWords, room));
  }

  private static DoubleStream ratios(Row row) {
    return DoubleStream.of(
        row.number("ratio_low").getAsDouble(), row.number("ratio_high").getAsDouble());
  }

  /** A bar from the ratio used to the ratio at one end, with a mark at that end. */
  private static void addEnds(XYPlot plot, List<Row> rows, String column, Look look) {
    XYSeriesCollection bars = new XYSeriesCollection();
    XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
    XYSeries ends = new XYSeries(column, false, true);
    for (int i = 0; i < rows.size(); i++) {
      double end = rows.get(i).number(column).getAsDouble();
      XYSeries bar = new XYSeries(i, false, true);
      bar.add(rows.get(i).number("ratio_base").getAsDouble(), i);
      bar.add(end, i);
      ends.add(end, i);
      lines.setSeriesPaint(i, look.color());
      lines.setSeriesStroke(i, look.line());
      bars.addSeries(bar);
    }
    Plots.layer(plot, bars, lines);
    XYLineAndShapeRenderer marks = new XYLineAndShapeRenderer(false, true);
    marks.setSeriesShape(0, look.mark());
    marks.setSeriesPaint(0, look.color());
    marks.setUseOutlinePaint(true);
    marks.setDefaultOutlinePaint(Color.WHITE);
    Plots.layer(plot, new XYSeriesCollection(ends), marks);
  }

  private static String value(Row row, String column) {
    return row.number(column).isEmpty() ? "\u2013" : rounded(row.number(column).getAsDouble());
  }

  /** A computed life or damage has more digits than anyone can use; a rate needs its decimals. */
  private static String rounded(double value) {
    double size = Math.abs(value);
    return Scale.format(size >= 100 ? "#,##0" : size >= 1 ? "#,##0.##" : "0.####").format(value);
  }

  private static String title(List<Row> rows) {
    double base = rows.get(0).number("ratio_base").getAsDouble();
    double least = rows.stream().flatMapToDouble(SensitivityChart::ratios).min().orElse(base);
    double most = rows.stream().flatMapToDouble(SensitivityChart::ratios).max().orElse(base);
    String side =
        least > 1
            ? Messages.of("chart.SensitivityChart.above-1-whichever-assumption-is-moved")
            : most < 1
                ? Messages.of("chart.SensitivityChart.below-1-whichever-assumption-is-moved")
                : Messages.of("chart.SensitivityChart.on-which-side-of-1-depends");
    return Messages.of(
        "chart.SensitivityChart.benefit-cost-ratio-from-to",
        Map.of(
            "ratio",
            NumberText.ratio(base),
            "ratio2",
            NumberText.ratio(least),
            "ratio3",
            NumberText.ratio(most),
            "side",
            side));
  }

  private static String description(List<Row> rows) {
    return rows.stream()
            .limit(12)
            .map(
                row ->
                    Messages.of(
                        "chart.SensitivityChart.at-the-low-value-at-the",
                        Map.of(
                            "assumption",
                            GroupText.words(row.text("assumption")),
                            "ratio",
                            NumberText.ratio(row.number("ratio_low").getAsDouble()),
                            "ratio2",
                            NumberText.ratio(row.number("ratio_high").getAsDouble()))))
            .collect(Collectors.joining("; "))
        + ".";
  }
}
