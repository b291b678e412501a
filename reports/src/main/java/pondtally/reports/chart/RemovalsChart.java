package pondtally.reports.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import pondtally.reports.chart.Figure.KeyEntry;
import pondtally.reports.chart.Figure.Sample;
import pondtally.reports.chart.Panel.Frame;
import pondtally.reports.table.Row;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** Removals avoided by year: what is computed beside what is claimed, by evidence; never added. */
final class RemovalsChart {

  private static final String NAME = "removals-avoided";
  private static final String NEUTRAL =
      Messages.of("chart.RemovalsChart.removals-avoided-computed-and-claimed-by");
  private static final List<String> EVIDENCE = List.of("permit", "invoice", "log", "estimate");

  private RemovalsChart() {}

  static List<Figure> figures(ChartSource source) {
    List<Row> rows = source.rows("removals_avoided", "all");
    if (rows.isEmpty()) {
      return List.of();
    }
    List<Line> lines = lines(rows);
    if (lines.stream().allMatch(line -> line.series.isEmpty())) {
      return List.of(
          Figure.nothingToShow(
              NAME,
              NEUTRAL,
              source,
              Messages.of("chart.RemovalsChart.nothing-is-drawn-no-site-reported")));
    }
    return List.of(
        figure(source, rows, lines.stream().filter(line -> !line.series.isEmpty()).toList()));
  }

  private record Line(String label, Look look, XYSeries series) {}

  private static List<Line> lines(List<Row> rows) {
    List<Line> lines = new ArrayList<>();
    lines.add(
        new Line(
            Messages.of("chart.RemovalsChart.computed-from-records"),
            Look.series(0),
            series("computed", rows, "", "avoided_computed")));
    for (int i = 0; i < EVIDENCE.size(); i++) {
      String evidence = EVIDENCE.get(i);
      lines.add(
          new Line(
              Messages.of("chart.RemovalsChart.claimed-by", Map.of("evidence", evidence)),
              Look.series(i + 1),
              series(evidence, rows, evidence, "avoided_claimed")));
    }
    return lines;
  }

  private static XYSeries series(String key, List<Row> rows, String evidence, String column) {
    XYSeries series = new XYSeries(key);
    rows.stream()
        .filter(row -> row.text("evidence").equals(evidence))
        .forEach(
            row ->
                row.number(column)
                    .ifPresent(value -> series.add((double) row.count("year"), value)));
    return series;
  }

  private static Figure figure(ChartSource source, List<Row> rows, List<Line> lines) {
    String title = title(source, rows);
    return new Figure(
        NAME,
        title,
        List.of(sites(source, rows) + source.cut()),
        lines.stream()
            .map(line -> new KeyEntry(line.look, Sample.LINE_AND_MARK, line.label))
            .toList(),
        List.of(panel(rows, lines)),
        1,
        List.of(
            Messages.of("chart.RemovalsChart.computed-removals-before-times-the-verified"),
            Messages.of("common.Time-after-a-device-s-last"),
            Messages.of("chart.RemovalsChart.computed-and-claimed-count-the-same")),
        title + ". " + description(lines));
  }

  private static Panel panel(List<Row> rows, List<Line> lines) {
    int first = rows.stream().mapToInt(row -> (int) row.count("year")).min().orElseThrow();
    int last = rows.stream().mapToInt(row -> (int) row.count("year")).max().orElseThrow();
    Scale years =
        new Scale(first - 0.5, last + 0.5, Math.max(1, (last - first + 9) / 10), Scale.format("0"));
    Scale counts = Scale.counts(values(lines).min().orElse(0), values(lines).max().orElse(1), 5);
    XYPlot plot =
        Plots.plot(
            Plots.axis(Messages.of("chart.RemovalsChart.calendar-year"), years),
            Plots.bare(Plots.axis("", counts.padded(4, 170))));
    plot.setRangeZeroBaselineVisible(true);
    plot.setRangeZeroBaselinePaint(Look.GRAY);
    plot.setRangeZeroBaselineStroke(Look.THIN);
    XYSeriesCollection data = new XYSeriesCollection();
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
    renderer.setUseOutlinePaint(true);
    renderer.setDefaultOutlinePaint(Color.WHITE);
    for (int i = 0; i < lines.size(); i++) {
      data.addSeries(lines.get(i).series);
      renderer.setSeriesPaint(i, lines.get(i).look.color());
      renderer.setSeriesStroke(i, lines.get(i).look.line());
      renderer.setSeriesShape(i, lines.get(i).look.mark());
    }
    Plots.layer(plot, data, renderer);
    Frame frame = new Frame(34, 12, Plots.NUMBERS_AND_TITLE, 170);
    return new Panel(
        "",
        Messages.of("chart.RemovalsChart.removals-avoided-in-the-year"),
        Plots.chart(plot, frame),
        frame,
        List.of());
  }

  private static DoubleStream values(List<Line> lines) {
    return lines.stream()
        .flatMapToDouble(
            line ->
                DoubleStream.iterate(0, i -> i < line.series.getItemCount(), i -> i + 1)
                    .map(i -> line.series.getY((int) i).doubleValue()));
  }

  private static String sites(ChartSource source, List<Row> rows) {
    return computed(source, rows).stream()
        .map(
            row ->
                Messages.of(
                    "chart.RemovalsChart.counted-in-left-out",
                    Map.of(
                        "sites",
                        NumberText.count((long) row.number("sites").orElse(0), "sites"),
                        "year",
                        row.text("year"),
                        "count",
                        NumberText.count((long) row.number("sites_left_out").orElse(0)))))
        .collect(Collectors.joining());
  }

  /** The computed figure of the period's year, where there is one. */
  private static Optional<Row> computed(ChartSource source, List<Row> rows) {
    return source.inPeriod(
        rows.stream()
            .filter(row -> row.text("evidence").isEmpty())
            .filter(row -> row.number("avoided_computed").isPresent())
            .toList());
  }

  private static String title(ChartSource source, List<Row> rows) {
    return computed(source, rows)
        .map(
            row ->
                Messages.of(
                    "chart.RemovalsChart.about-avoided-in-as-computed-from",
                    Map.of(
                        "removals",
                        NumberText.measured(
                            row.number("avoided_computed").getAsDouble(), 0, "removals"),
                        "year",
                        row.text("year"))))
        .orElse(NEUTRAL);
  }

  private static String description(List<Line> lines) {
    return lines.stream()
            .map(
                line -> {
                  int last = line.series.getItemCount() - 1;
                  return Messages.of(
                      "chart.RemovalsChart.in",
                      Map.of(
                          "label",
                          line.label,
                          "rate",
                          NumberText.rate(line.series.getY(last).doubleValue()),
                          "intValue",
                          String.valueOf(line.series.getX(last).intValue())));
                })
            .collect(Collectors.joining("; "))
        + ".";
  }
}
