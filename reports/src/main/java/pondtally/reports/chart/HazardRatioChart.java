package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTickUnit;
import pondtally.reports.table.Row;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;

/** Hazard ratios with limits on a doubling scale, one panel a model. */
final class HazardRatioChart {

  private static final String NAME = "hazard-ratios";
  private static final String NEUTRAL =
      Messages.of("chart.HazardRatioChart.how-failure-depends-on-pipe-build");
  private static final double WIDEST = 16;

  /** Above so many the numbers of the axis would touch, and every second is left out. */
  private static final double MOST_DOUBLINGS = 6.5;

  private static final List<String> HEADS =
      List.of(
          Messages.of("chart.HazardRatioChart.ratio-limits"),
          Messages.of("common.Failures"),
          Messages.of("chart.HazardRatioChart.lives"));

  private HazardRatioChart() {}

  static List<Figure> figures(ChartSource source) {
    Map<String, List<IntervalRow>> models = new LinkedHashMap<>();
    for (Row row : source.rows("hazard_ratios")) {
      models.computeIfAbsent(row.text("model"), model -> new ArrayList<>()).add(row(row, source));
    }
    List<IntervalRow> all = models.values().stream().flatMap(List::stream).toList();
    if (all.isEmpty()) {
      return List.of();
    }
    if (all.stream().noneMatch(row -> row.value().isPresent())) {
      String reason =
          source.rows("hazard_ratios").stream()
              .map(row -> row.text("reason"))
              .filter(text -> !text.isEmpty())
              .findFirst()
              .orElse(Messages.of("chart.HazardRatioChart.no-model-could-be-fitted"));
      return List.of(
          Figure.nothingToShow(
              NAME,
              NEUTRAL,
              source,
              Messages.of("chart.HazardRatioChart.no-ratio-is-drawn", Map.of("reason", reason))));
    }
    return figures(source, models, all);
  }

  private static List<Figure> figures(
      ChartSource source, Map<String, List<IntervalRow>> models, List<IntervalRow> all) {
    List<Panel> panels = new ArrayList<>();
    models.forEach(
        (model, rows) -> {
          List<List<IntervalRow>> parts =
              RowPlot.parts(rows, IntervalPlot.room(HEADS, all).rowsOnPage());
          parts.forEach(part -> panels.add(panel(model, part, all)));
        });
    List<Figure> figures = new ArrayList<>();
    List<List<Panel>> pages = pages(panels);
    for (int i = 0; i < pages.size(); i++) {
      figures.add(figure(source, all, pages.get(i)).part(i + 1, pages.size()));
    }
    return figures;
  }

  /** Panels that fit on one page together. */
  private static List<List<Panel>> pages(List<Panel> panels) {
    List<List<Panel>> pages = new ArrayList<>();
    double used = Double.MAX_VALUE;
    for (Panel panel : panels) {
      double height = panel.height(FigureDrawing.WIDTH);
      if (used + height > 520) {
        pages.add(new ArrayList<>());
        used = 0;
      }
      pages.get(pages.size() - 1).add(panel);
      used += height;
    }
    return pages;
  }

  private static Figure figure(ChartSource source, List<IntervalRow> all, List<Panel> panels) {
    String title = title(source);
    String figures =
        all.stream()
            .filter(row -> row.value().isPresent())
            .limit(12)
            .map(row -> row.name() + " " + row.cells().get(0))
            .collect(Collectors.joining("; "));
    return new Figure(
        NAME,
        title,
        List.of(source.cut()),
        IntervalPlot.key(
            all,
            Messages.of("chart.HazardRatioChart.hazard-ratio-with-95-limits"),
            Messages.of(
                "chart.HazardRatioChart.fewer-than-lives-not-to-be",
                Map.of("groupsBelow", String.valueOf(source.groupsBelow())))),
        panels,
        1,
        List.of(
            Messages.of("chart.HazardRatioChart.proportional-hazards-cox-1972-ties-after"),
            Messages.of("chart.HazardRatioChart.crews-sites-and-years-differ-between")),
        Messages.of(
            "chart.HazardRatioChart.a-mark-and-its-95-limits",
            Map.of("title", title, "figures", figures)));
  }

  private static Panel panel(String model, List<IntervalRow> rows, List<IntervalRow> all) {
    return new IntervalPlot(axis(all), OptionalDouble.of(1), HEADS, IntervalPlot.room(HEADS, all))
        .panel(
            Messages.of("chart.HazardRatioChart.model", Map.of("model", GroupText.words(model))),
            rows);
  }

  private static LogAxis axis(List<IntervalRow> rows) {
    List<IntervalRow> full = rows.stream().filter(row -> !row.isSmall()).toList();
    double most = full.stream().mapToDouble(row -> row.upper().orElse(1)).max().orElse(2);
    double least = full.stream().mapToDouble(row -> row.lower().orElse(1)).min().orElse(0.5);
    LogAxis axis = new LogAxis(Messages.of("chart.HazardRatioChart.hazard-ratio-doubling-scale"));
    axis.setBase(2);
    axis.setRange(
        doubling(Math.max(least, 1 / WIDEST), false), doubling(Math.min(most, WIDEST), true));
    double doublings = axis.calculateLog(axis.getUpperBound() / axis.getLowerBound());
    axis.setTickUnit(new NumberTickUnit(doublings > MOST_DOUBLINGS ? 2 : 1));
    axis.setMinorTickCount(1);
    axis.setNumberFormatOverride(Scale.format("0.####"));
    axis.setMinorTickMarksVisible(false);
    Plots.quiet(axis, axis.getLabel());
    return axis;
  }

  /** The power of two at or beyond a value, a little padded. */
  private static double doubling(double value, boolean up) {
    double power = Math.log(value) / Math.log(2);
    double edge = up ? Math.max(1, Math.ceil(power)) + 0.1 : Math.min(-1, Math.floor(power)) - 0.1;
    return Math.pow(2, edge);
  }

  private static IntervalRow row(Row row, ChartSource source) {
    Optional<Estimate> ratio = estimate(row);
    return new IntervalRow(
        name(row),
        List.of(
            ratio.map(found -> found.ratio().replace(Messages.of("common.likely"), "")).orElse(""),
            count(row, "failures"),
            count(row, "devices")),
        row.number("hazard_ratio"),
        row.number("lower"),
        row.number("upper"),
        row.number("devices").orElse(0) < source.groupsBelow(),
        row.text("reason").isEmpty() ? Missing.NOT_KNOWN : row.text("reason"));
  }

  private static String name(Row row) {
    String term = row.text("term");
    String level = GroupText.label(term, row.text("level"));
    String reference = row.text("reference");
    return reference.isEmpty()
        ? level
        : Messages.of(
            "chart.HazardRatioChart.against",
            Map.of("level", level, "term", GroupText.label(term, reference)));
  }

  private static String count(Row row, String column) {
    return Missing.orNotKnown(row.number(column), count -> NumberText.count((long) count));
  }

  private static Optional<Estimate> estimate(Row row) {
    return Estimate.of(row.number("hazard_ratio"), row.number("lower"), row.number("upper"));
  }

  /** Only a ratio whose limits leave 1 behind, with enough lives, is worth a title. */
  private static String title(ChartSource source) {
    return source.rows("hazard_ratios").stream()
        .filter(row -> row.number("devices").orElse(0) >= source.groupsBelow())
        .filter(row -> row.number("lower").orElse(0) > 1 || row.number("upper").orElse(2) < 1)
        .min((a, b) -> Double.compare(a.number("p_value").orElse(1), b.number("p_value").orElse(1)))
        .flatMap(
            row ->
                estimate(row)
                    .map(
                        ratio ->
                            Messages.of(
                                "chart.HazardRatioChart.hazard-ratio",
                                Map.of(
                                    "part",
                                    Character.toUpperCase(name(row).charAt(0))
                                        + name(row).substring(1),
                                    "ratio",
                                    ratio.ratio()))))
        .orElse(
            Messages.of(
                "chart.HazardRatioChart.the-limits-of-every-ratio-include",
                Map.of("neutral", NEUTRAL)));
  }
}
