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

/** Failures in a hundred device-years with exact limits, by pipe type and by watershed. */
final class RateChart {

  private static final String UNIT = Messages.of("chart.RateChart.failures-per-100-device-years");
  private static final List<String> HEADS =
      List.of(
          Messages.of("chart.RateChart.rate-limits"),
          Messages.of("common.Failures"),
          Messages.of("common.Devices"),
          Messages.of("common.Device-years"));

  private final ChartSource source;
  private final String grouping;
  private final List<Row> groups;
  private final Optional<Row> program;

  private RateChart(ChartSource source, String grouping) {
    this.source = source;
    this.grouping = grouping;
    this.groups =
        source.wholeRecord("failure_rates", grouping).stream()
            .sorted((a, b) -> a.text("group").compareTo(b.text("group")))
            .toList();
    this.program = source.wholeRecord("failure_rates", "all").stream().findFirst();
  }

  static List<Figure> byPipe(ChartSource source) {
    return new RateChart(source, "pipe").figures("failure-rates-by-pipe");
  }

  static List<Figure> byWatershed(ChartSource source) {
    return new RateChart(source, "watershed").figures("failure-rates-by-watershed");
  }

  private List<Figure> figures(String name) {
    if (groups.isEmpty()) {
      return List.of();
    }
    if (groups.stream().allMatch(row -> estimate(row).isEmpty())) {
      return List.of(
          Figure.nothingToShow(
              name,
              neutralTitle(),
              source,
              Messages.of("chart.RateChart.no-rate-is-drawn-every-group")));
    }
    List<IntervalRow> rows = groups.stream().map(this::row).toList();
    List<List<IntervalRow>> parts =
        RowPlot.parts(rows, IntervalPlot.room(HEADS, rows).rowsOnPage());
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      figures.add(figure(name, rows, parts.get(i)).part(i + 1, parts.size()));
    }
    return figures;
  }

  private Figure figure(String name, List<IntervalRow> all, List<IntervalRow> shown) {
    Scale scale = Scale.upTo(0, IntervalPlot.most(all), 5, "#,##0.###");
    OptionalDouble reference =
        program.map(row -> row.number("per_100_device_years")).orElse(OptionalDouble.empty());
    Room room = IntervalPlot.room(HEADS, all);
    ValueAxis axis =
        IntervalPlot.axis(Messages.of("common.Failures-per-100-device-years"), scale, room);
    Panel panel = new IntervalPlot(axis, reference, HEADS, room).panel("", shown);
    return new Figure(
        name,
        title(),
        List.of(counts() + " " + source.cut()),
        IntervalPlot.key(all, Messages.of("chart.RateChart.rate-with-95-limits"), smallKey()),
        List.of(panel),
        1,
        foot(all, scale),
        description());
  }

  private String smallKey() {
    return Messages.of(
        "chart.RateChart.fewer-than-devices-not-to-be",
        Map.of("groupsBelow", String.valueOf(source.groupsBelow())));
  }

  private IntervalRow row(Row row) {
    Optional<Estimate> rate = estimate(row);
    boolean withheld = rate.isEmpty() && !row.text("withheld_reason").isEmpty();
    return new IntervalRow(
        GroupText.label(grouping, row.text("group")),
        List.of(
            rate.map(found -> found.rate().replace(Messages.of("common.likely"), "")).orElse(""),
            count(row, "failures", withheld),
            count(row, "devices", withheld),
            years(row, withheld)),
        row.number("per_100_device_years"),
        row.number("lower"),
        row.number("upper"),
        isSmall(row),
        withheld ? Missing.WITHHELD + ": " + row.text("withheld_reason") : Missing.NOT_KNOWN);
  }

  private static String count(Row row, String column, boolean withheld) {
    return withheld && row.number(column).isEmpty()
        ? Missing.WITHHELD
        : Missing.orNotKnown(row.number(column), count -> NumberText.count((long) count));
  }

  private static String years(Row row, boolean withheld) {
    return withheld && row.number("device_years").isEmpty()
        ? Missing.WITHHELD
        : Missing.orNotKnown(row.number("device_years"), NumberText::rate);
  }

  private boolean isSmall(Row row) {
    return row.number("devices").orElse(0) < source.groupsBelow();
  }

  private static Optional<Estimate> estimate(Row row) {
    return Estimate.of(
        row.number("per_100_device_years"), row.number("lower"), row.number("upper"));
  }

  private String neutralTitle() {
    return Messages.of(
        "chart.RateChart.failures-per-100-device-years-by",
        Map.of("grouping", GroupText.grouping(grouping)));
  }

  private String title() {
    if (groups.size() == 1) {
      return capital(label(groups.get(0))) + ": " + said(groups.get(0)).orElse(Missing.NOT_KNOWN);
    }
    return contrast()
        .map(RateChart::apart)
        .orElseGet(
            () -> program.flatMap(RateChart::said).map(this::together).orElse(neutralTitle()));
  }

  private String together(String rate) {
    return Messages.of(
        "chart.RateChart.all-s-together",
        Map.of("grouping", GroupText.grouping(grouping), "rate", rate));
  }

  private static Optional<String> said(Row row) {
    if (row.number("failures").orElse(1) == 0) {
      return Optional.of(noFailure(row));
    }
    return estimate(row).map(rate -> rate.rate(UNIT));
  }

  private static String noFailure(Row row) {
    String years = NumberText.measured(row.number("device_years").orElse(0), 0, "device-years");
    return Messages.of(
        "chart.RateChart.no-failure-in-likely-fewer-than",
        Map.of(
            "years", years, "part", NumberText.rate(row.number("upper").orElse(0)) + " " + UNIT));
  }

  /** Watersheds are set apart by the funnel alone, never by their own limits. */
  private Optional<Contrast> contrast() {
    if (grouping.equals("watershed")) {
      return Optional.empty();
    }
    List<Contrast.Group> candidates =
        groups.stream()
            .filter(row -> !isSmall(row))
            .flatMap(
                row ->
                    estimate(row)
                        .map(e -> new Contrast.Group(row.text("group"), label(row), e))
                        .stream())
            .toList();
    return Contrast.clearest(candidates, source.rows("rate_ratios"), grouping);
  }

  private static String apart(Contrast pair) {
    return Messages.of(
        "chart.RateChart.failed-more-often-than-against-failures",
        Map.of(
            "higher",
            capital(pair.higher().label()),
            "lower",
            pair.lower().label(),
            "rate",
            pair.higher().estimate().rate(),
            "rate2",
            pair.lower().estimate().rate()));
  }

  private String label(Row row) {
    return GroupText.label(grouping, row.text("group"));
  }

  private String counts() {
    return source.wholeRecord("failure_rates", "all").stream()
        .findFirst()
        .map(
            row ->
                Messages.of(
                    "chart.RateChart.in",
                    Map.of(
                        "failures",
                        count(row, "failures"),
                        "devices",
                        count(row, "devices"),
                        "deviceYears",
                        Missing.orNotKnown(
                            row.number("device_years"),
                            years -> NumberText.measured(years, 0, "device-years")))))
        .orElse("");
  }

  private static String count(Row row, String column) {
    return Missing.orNotKnown(row.number(column), count -> NumberText.count((long) count, column));
  }

  private List<String> foot(List<IntervalRow> rows, Scale scale) {
    List<String> foot = new ArrayList<>();
    foot.add(
        Messages.of(
            "chart.RateChart.all-failures-repeated-ones-included-over",
            Map.of("failureDefinition", source.failureDefinition())));
    foot.add(
        Messages.of(
            "chart.RateChart.in-order-of-name-not-of",
            Map.of(
                "part",
                program.isPresent()
                    ? Messages.of("chart.RateChart.dashed-line-all-devices")
                    : "")));
    if (rows.stream().anyMatch(row -> row.upper().orElse(0) > scale.upper())) {
      foot.add(Messages.of("common.An-arrow-the-limit-lies-beyond"));
    }
    return foot;
  }

  private String description() {
    String figures =
        groups.stream()
            .filter(row -> estimate(row).isPresent())
            .limit(12)
            .map(row -> label(row) + " " + estimate(row).orElseThrow().rate())
            .collect(Collectors.joining("; "));
    return Messages.of(
        "chart.RateChart.a-mark-and-its-95-limits", Map.of("title", title(), "figures", figures));
  }

  private static String capital(String label) {
    return Character.toUpperCase(label.charAt(0)) + label.substring(1);
  }
}
