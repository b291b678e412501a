package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import pondtally.reports.chart.Figure.KeyEntry;
import pondtally.reports.chart.Figure.Sample;
import pondtally.reports.chart.Panel.Frame;
import pondtally.reports.table.Row;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** Yearly cost of one device by days between visits: visits, unnoticed damage, and both. */
final class VisitIntervalChart {

  private static final String NAME = "visit-interval";
  private static final String CURVE = "visit_interval_curve";
  private static final String NEUTRAL = Messages.of("common.Yearly-cost-of-one-device-by");
  private static final int PANELS = 6;
  private static final double LEFT = 44;
  private static final double RIGHT = 12;
  private static final double HEIGHT = 96;
  private static final int DAYS = 740;
  private static final int TICK = 180;
  private static final double HIGHEST = 4;
  private static final List<String> COLUMNS =
      List.of("cost_per_year_usd", "visits_usd", "downtime_usd");

  private VisitIntervalChart() {}

  static List<Figure> figures(ChartSource source) {
    List<Row> best = source.rows("visit_interval");
    if (best.isEmpty()) {
      return List.of();
    }
    if (source.rows(CURVE).isEmpty()) {
      return List.of(
          Figure.nothingToShow(
              NAME,
              NEUTRAL,
              source,
              Messages.of("chart.VisitIntervalChart.nothing-is-drawn-it-needs-fitted")));
    }
    List<Panel> panels = new ArrayList<>();
    for (Row row : best) {
      List<Row> points = points(source, row);
      if (!points.isEmpty()) {
        panels.add(panel(row, points, most(best)));
      }
    }
    List<Figure> figures = new ArrayList<>();
    int parts = (panels.size() + PANELS - 1) / PANELS;
    for (int i = 0; i < parts; i++) {
      List<Panel> own = panels.subList(i * PANELS, Math.min(panels.size(), (i + 1) * PANELS));
      figures.add(figure(source, best, own).part(i + 1, parts));
    }
    return figures;
  }

  /** The same axis for all: where even the cheapest group at 30 days may lie beyond it. */
  private static double most(List<Row> best) {
    return HIGHEST
        * best.stream().mapToDouble(r -> r.number("cost_per_year_usd").orElse(0)).max().orElse(1)
        / 2;
  }

  private static List<Row> points(ChartSource source, Row row) {
    Map<String, List<Row>> groups = source.groups(CURVE, row.text("grouping"));
    return groups.getOrDefault(row.text("group"), List.of());
  }

  private static Panel panel(Row best, List<Row> points, double most) {
    Scale dollars = Scale.upTo(0, most, 3, "$#,##0");
    Scale days = new Scale(0, DAYS, TICK, Scale.format("0"));
    XYPlot plot = Plots.plot(Plots.axis("", days), Plots.bare(Plots.axis("", dollars)));
    best.number("best_days").ifPresent(day -> Plots.referenceLine(plot, day));
    XYSeriesCollection lines = new XYSeriesCollection();
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setDrawSeriesLineAsPath(true);
    for (int i = 0; i < COLUMNS.size(); i++) {
      lines.addSeries(series(COLUMNS.get(i), points, dollars.upper()));
      renderer.setSeriesPaint(i, Look.series(i).color());
      renderer.setSeriesStroke(i, Look.series(i).line());
    }
    Plots.layer(plot, lines, renderer);
    Frame frame = new Frame(LEFT, RIGHT, Plots.NUMBERS, HEIGHT);
    return new Panel(heading(best), "", Plots.chart(plot, frame), frame, List.of());
  }

  private static XYSeries series(String column, List<Row> points, double most) {
    XYSeries series = new XYSeries(column);
    for (Row point : points) {
      OptionalDouble usd = point.number(column);
      if (usd.isPresent() && usd.getAsDouble() <= most) {
        series.add((double) point.count("days"), usd.getAsDouble());
      }
    }
    return series;
  }

  private static String heading(Row best) {
    String group = GroupText.label(best.text("grouping"), best.text("group"));
    return best.number("best_days").isEmpty()
        ? group
        : Messages.of(
            "chart.VisitIntervalChart.every",
            Map.of("group", group, "days", NumberText.count(best.count("best_days"), "days")));
  }

  private static Figure figure(ChartSource source, List<Row> best, List<Panel> panels) {
    String title = title(best);
    return new Figure(
        NAME,
        title,
        List.of(
            source.cut(),
            Messages.of("chart.VisitIntervalChart.upward-dollars-for-one-device-and")),
        List.of(
            new KeyEntry(
                Look.series(0),
                Sample.LINE,
                Messages.of("chart.VisitIntervalChart.visits-and-unnoticed-damage-together")),
            new KeyEntry(Look.series(1), Sample.LINE, "visits"),
            new KeyEntry(
                Look.series(2),
                Sample.LINE,
                Messages.of("chart.VisitIntervalChart.damage-while-failed-unnoticed"))),
        panels,
        2,
        List.of(Messages.of("chart.VisitIntervalChart.failures-as-fitted-by-pipe-type")),
        Messages.of(
            "chart.VisitIntervalChart.one-small-plot-for-all-devices",
            Map.of("title", title, "neutral", NEUTRAL)));
  }

  private static String title(List<Row> best) {
    return best.stream()
        .filter(row -> row.text("grouping").equals("all"))
        .filter(row -> row.number("best_days").isPresent())
        .findFirst()
        .map(
            row ->
                Messages.of(
                    "chart.VisitIntervalChart.a-visit-every-costs-least-from",
                    Map.of(
                        "days",
                        NumberText.count(row.count("best_days"), "days"),
                        "nearlyFromDays",
                        NumberText.count(row.count("nearly_from_days")),
                        "days2",
                        NumberText.count(row.count("nearly_to_days"), "days"))))
        .orElse(NEUTRAL);
  }
}
