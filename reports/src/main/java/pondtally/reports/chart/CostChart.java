package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jfree.chart.axis.ValueAxis;
import pondtally.reports.chart.RowWords.Room;
import pondtally.reports.table.Row;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;

/** Cost of a protected property by watershed, cash and in kind, with limits. */
final class CostChart {

  private static final String NAME = "cost-per-property";
  private static final List<String> HEADS =
      List.of(Messages.of("chart.CostChart.cost-limits"), Messages.of("common.Properties"));
  private static final String NEUTRAL =
      Messages.of("chart.CostChart.cost-of-a-protected-property-by");

  private final ChartSource source;
  private final List<Row> groups;
  private final Optional<Row> program;

  private CostChart(ChartSource source) {
    this.source = source;
    this.groups =
        rows("watershed").stream()
            .sorted((a, b) -> a.text("group").compareTo(b.text("group")))
            .toList();
    this.program = rows("all").stream().findFirst();
  }

  static List<Figure> figures(ChartSource source) {
    return new CostChart(source).figures();
  }

  private List<Row> rows(String grouping) {
    return source.wholeRecord("cost_effectiveness", grouping).stream()
        .filter(row -> row.text("measure").equals("per-property"))
        .filter(row -> row.text("basis").equals("cash-and-in-kind"))
        .toList();
  }

  private List<Figure> figures() {
    if (groups.isEmpty()) {
      return List.of();
    }
    if (groups.stream().allMatch(row -> row.number("value_usd").isEmpty())) {
      return List.of(
          Figure.nothingToShow(
              NAME, NEUTRAL, source, Messages.of("chart.CostChart.no-cost-is-drawn-no-watershed")));
    }
    List<IntervalRow> rows = groups.stream().map(CostChart::row).toList();
    List<List<IntervalRow>> parts =
        RowPlot.parts(rows, IntervalPlot.room(HEADS, rows).rowsOnPage());
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      figures.add(figure(rows, parts.get(i)).part(i + 1, parts.size()));
    }
    return figures;
  }

  private Figure figure(List<IntervalRow> all, List<IntervalRow> shown) {
    Scale scale = Scale.upTo(IntervalPlot.least(all), IntervalPlot.most(all), 4, "$#,##0");
    OptionalDouble reference =
        program.map(row -> row.number("value_usd")).orElse(OptionalDouble.empty());
    Room room = IntervalPlot.room(HEADS, all);
    ValueAxis axis = IntervalPlot.axis(axisTitle(), scale, room);
    Panel panel = new IntervalPlot(axis, reference, HEADS, room).panel("", shown);
    return new Figure(
        NAME,
        title(),
        List.of(
            Messages.of(
                "chart.CostChart.cash-and-in-kind",
                Map.of("properties", properties(), "cut", source.cut()))),
        IntervalPlot.key(
            all,
            Messages.of("chart.CostChart.cost-with-95-limits"),
            Messages.of("common.limits-not-known")),
        List.of(panel),
        1,
        foot(all, scale),
        description(all));
  }

  private String properties() {
    return program
        .map(row -> row.number("denominator"))
        .filter(OptionalDouble::isPresent)
        .map(n -> ", " + NumberText.count((long) n.getAsDouble(), "protected properties"))
        .orElse("");
  }

  private String axisTitle() {
    String year = source.fact("base_year");
    return year.isEmpty()
        ? Messages.of("chart.CostChart.dollars-per-property")
        : Messages.of("chart.CostChart.dollars-per-property-2", Map.of("year", year));
  }

  private static IntervalRow row(Row row) {
    Optional<Estimate> cost = estimate(row);
    return new IntervalRow(
        GroupText.label("watershed", row.text("group")),
        List.of(
            cost.map(found -> found.dollars().replace(Messages.of("common.likely"), ""))
                .orElse(Missing.NOT_KNOWN),
            Missing.orNotKnown(row.number("denominator"), n -> NumberText.count((long) n))),
        row.number("value_usd"),
        row.number("lower"),
        row.number("upper"),
        cost.isPresent() && !cost.get().hasLimits(),
        row.number("denominator").orElse(1) == 0
            ? Messages.of("chart.CostChart.no-protected-property")
            : Missing.NOT_KNOWN);
  }

  private static Optional<Estimate> estimate(Row row) {
    return Estimate.of(row.number("value_usd"), row.number("lower"), row.number("upper"));
  }

  private String title() {
    String year = source.fact("base_year");
    String in =
        year.isEmpty() ? "" : Messages.of("chart.CostChart.in-dollars", Map.of("year", year));
    return program
        .flatMap(CostChart::estimate)
        .map(
            cost ->
                Messages.of(
                    "chart.CostChart.a-protected-property-cost",
                    Map.of("dollars", cost.dollars(), "in", in)))
        .orElse(NEUTRAL);
  }

  private List<String> foot(List<IntervalRow> rows, Scale scale) {
    List<String> foot = new ArrayList<>();
    foot.add(
        Messages.of(
            "chart.CostChart.recorded-cost-from-the-first-install", Map.of("leftOut", leftOut())));
    foot.add(
        Messages.of(
            "chart.CostChart.in-order-of-code-not-of",
            Map.of(
                "part",
                program.isPresent()
                    ? Messages.of("chart.CostChart.dashed-line-whole-program")
                    : "")));
    if (rows.stream().anyMatch(row -> row.upper().orElse(0) > scale.upper())) {
      foot.add(Messages.of("common.An-arrow-the-limit-lies-beyond"));
    }
    return foot;
  }

  private String leftOut() {
    double left = program.map(row -> row.number("clusters_left_out").orElse(0)).orElse(0.0);
    return left == 0
        ? ""
        : Messages.of(
            "chart.CostChart.left-out-for-want-of-recorded",
            Map.of("siteClusters", NumberText.count((long) left, "site clusters")));
  }

  private String description(List<IntervalRow> rows) {
    String figures =
        rows.stream()
            .filter(row -> row.value().isPresent())
            .limit(12)
            .map(row -> row.name() + " " + row.cells().get(0))
            .collect(Collectors.joining("; "));
    return Messages.of(
        "chart.CostChart.a-mark-and-its-95-limits", Map.of("title", title(), "figures", figures));
  }
}
