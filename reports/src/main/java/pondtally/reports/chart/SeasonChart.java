package pondtally.reports.chart;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jfree.chart.axis.ValueAxis;
import pondtally.reports.chart.RowWords.Room;
import pondtally.reports.table.Row;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.Messages;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;
import pondtally.reports.view.Line;
import pondtally.reports.view.SeasonYear;

/** Failures expected in the next years, with prediction limits. */
final class SeasonChart {

  private static final String NAME = "season-forecast";
  private static final String NEUTRAL =
      Messages.of("chart.SeasonChart.failures-expected-in-the-next-years");

  private static final List<String> HEADS =
      List.of(
          Messages.of("chart.SeasonChart.failures-limits"),
          Messages.of("common.Visits"),
          Messages.of("common.Hours"),
          Messages.of("common.Cost"));

  private SeasonChart() {}

  static List<Figure> figures(ChartSource source) {
    List<Row> years = source.rows("season_forecast", "all");
    if (years.isEmpty()) {
      return List.of();
    }
    List<IntervalRow> rows = years.stream().map(SeasonChart::row).toList();
    if (rows.stream().noneMatch(row -> row.value().isPresent())) {
      return List.of(
          Figure.nothingToShow(
              NAME,
              NEUTRAL,
              source,
              Messages.of("chart.SeasonChart.no-forecast-is-drawn-too-few")));
    }
    Scale scale = Scale.counts(0, IntervalPlot.most(rows), 6);
    Room room = IntervalPlot.room(HEADS, rows);
    ValueAxis axis =
        IntervalPlot.axis(Messages.of("chart.SeasonChart.failures-in-the-year"), scale, room);
    Panel panel = new IntervalPlot(axis, OptionalDouble.empty(), HEADS, room).panel("", rows);
    String title = title(years);
    String figures =
        rows.stream()
            .limit(12)
            .map(row -> row.name() + " " + row.cells().get(0))
            .collect(Collectors.joining("; "));
    return List.of(
        new Figure(
            NAME,
            title,
            List.of(source.cut()),
            IntervalPlot.key(
                rows,
                Messages.of("chart.SeasonChart.expected-failures-with-95-prediction-limits"),
                Messages.of("common.limits-not-known")),
            List.of(panel),
            1,
            List.of(Messages.of("chart.SeasonChart.from-the-failures-fitted-by-pipe")),
            title + ". " + figures + "."));
  }

  private static IntervalRow row(Row row) {
    Optional<Estimate> failures = estimate(row);
    return new IntervalRow(
        SeasonYear.name(Line.of(row)),
        List.of(
            failures
                .map(found -> found.whole().replace(Messages.of("common.likely"), ""))
                .orElse(Missing.NOT_KNOWN),
            whole(row, "visits"),
            whole(row, "hours"),
            Estimate.of(row.number("cost_usd"), row.number("cost_lower"), row.number("cost_upper"))
                .map(Estimate::dollarsAlone)
                .orElse(Missing.NOT_KNOWN)),
        row.number("expected_failures"),
        row.number("lower"),
        row.number("upper"),
        failures.isPresent() && !failures.get().hasLimits(),
        Missing.NOT_KNOWN);
  }

  private static String whole(Row row, String column) {
    return Missing.orNotKnown(row.number(column), number -> NumberText.decimal(number, 0));
  }

  private static Optional<Estimate> estimate(Row row) {
    return Estimate.of(row.number("expected_failures"), row.number("lower"), row.number("upper"));
  }

  private static String title(List<Row> years) {
    return years.stream()
        .findFirst()
        .flatMap(
            row ->
                estimate(row)
                    .map(
                        found ->
                            SeasonYear.name(Line.of(row))
                                + ": "
                                + found.whole("expected failures")))
        .orElse(NEUTRAL);
  }
}
