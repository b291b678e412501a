package pondtally.reports.chart;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jfree.chart.axis.ValueAxis;
import pondtally.reports.chart.RowWords.Room;
import pondtally.reports.table.Row;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;
import pondtally.reports.view.Line;
import pondtally.reports.view.SeasonYear;

/** Failures expected in the next years, with prediction limits. */
final class SeasonChart {

  private static final String NAME = "season-forecast";
  private static final String NEUTRAL = "Failures expected in the next years";

  private static final List<String> HEADS = List.of("Failures (limits)", "Visits", "Hours", "Cost");

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
              NAME, NEUTRAL, source, "No forecast is drawn: too few failures to fit a model."));
    }
    Scale scale = Scale.counts(0, IntervalPlot.most(rows), 6);
    Room room = IntervalPlot.room(HEADS, rows);
    ValueAxis axis = IntervalPlot.axis("Failures in the year", scale, room);
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
                rows, "expected failures with 95% prediction limits", "limits not known"),
            List.of(panel),
            1,
            List.of(
                "From the failures fitted by pipe type and the age of each device, if each is visited as planned. Nineteen"
                    + " years in twenty should fall within the limits if the coming years are like those on record."),
            title + ". " + figures + "."));
  }

  private static IntervalRow row(Row row) {
    Optional<Estimate> failures = estimate(row);
    return new IntervalRow(
        SeasonYear.name(Line.of(row)),
        List.of(
            failures
                .map(found -> found.measured("failures").replace("likely\u00a0", ""))
                .map(said -> said.replaceFirst("\u00a0failures?", ""))
                .orElse(Missing.NOT_KNOWN),
            whole(row, "visits"),
            whole(row, "hours"),
            Missing.orNotKnown(row.number("cost_usd"), NumberText::dollars)),
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
                                + found.measured("expected failures")))
        .orElse(NEUTRAL);
  }
}
