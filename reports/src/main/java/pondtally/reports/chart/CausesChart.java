package pondtally.reports.chart;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jfree.chart.axis.ValueAxis;
import pondtally.reports.chart.RowWords.Room;
import pondtally.reports.table.Row;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** What failures were put down to: counts and shares with limits, most frequent first. */
final class CausesChart {

  private static final String NAME = "failure-causes";
  private static final String NEUTRAL = Messages.of("common.What-failures-were-put-down-to");

  private static final List<String> HEADS =
      List.of(Messages.of("common.Failures"), Messages.of("chart.CausesChart.share-limits"));

  private CausesChart() {}

  static List<Figure> figures(ChartSource source) {
    List<Row> causes =
        source.rows("failure_causes", "all").stream()
            .sorted(
                Comparator.comparing((Row row) -> row.text("cause").equals("unknown"))
                    .thenComparing(row -> -row.number("failures").orElse(0))
                    .thenComparing(row -> row.text("cause")))
            .toList();
    if (causes.isEmpty()) {
      return List.of();
    }
    List<Row> found = causes.stream().filter(row -> row.number("failures").orElse(0) > 0).toList();
    if (found.isEmpty()) {
      return List.of(
          Figure.nothingToShow(
              NAME,
              NEUTRAL,
              source,
              Messages.of("chart.CausesChart.no-failure-is-recorded-so-there")));
    }
    return List.of(figure(source, found));
  }

  private static Figure figure(ChartSource source, List<Row> causes) {
    List<IntervalRow> rows = causes.stream().map(CausesChart::row).toList();
    Scale scale = Scale.upTo(0, Math.min(1, IntervalPlot.most(rows)), 5, "0%");
    Room room = IntervalPlot.room(HEADS, rows);
    ValueAxis axis =
        IntervalPlot.axis(Messages.of("chart.CausesChart.share-of-all-failures"), scale, room);
    Panel panel = new IntervalPlot(axis, OptionalDouble.empty(), HEADS, room).panel("", rows);
    long failures = causes.stream().mapToLong(row -> row.count("failures")).sum();
    String title = title(causes, failures);
    return new Figure(
        NAME,
        title,
        List.of(NumberText.count(failures, "failures") + ". " + source.cut()),
        IntervalPlot.key(rows, Messages.of("chart.CausesChart.share-with-95-limits"), ""),
        List.of(panel),
        1,
        List.of(
            Messages.of(
                "chart.CausesChart.the-cause-noted-at-the-first",
                Map.of("failureDefinition", source.failureDefinition()))),
        title
            + ". "
            + rows.stream()
                .map(row -> row.name() + " " + row.cells().get(0) + ", " + row.cells().get(1))
                .collect(Collectors.joining("; "))
            + ".");
  }

  private static IntervalRow row(Row row) {
    return new IntervalRow(
        GroupText.words(row.text("cause")),
        List.of(NumberText.count(row.count("failures")), share(row)),
        row.number("share"),
        row.number("lower"),
        row.number("upper"),
        false,
        "");
  }

  private static String share(Row row) {
    return Estimate.of(row.number("share"), row.number("lower"), row.number("upper"))
        .map(Estimate::percent)
        .map(said -> said.replace(Messages.of("common.likely"), ""))
        .orElse("");
  }

  /** The leading cause is named only where its limits leave the next one's behind. */
  private static String title(List<Row> causes, long failures) {
    Row first = causes.get(0);
    boolean isKnown = !first.text("cause").equals("unknown");
    boolean leads =
        causes.size() == 1
            || first.number("lower").orElse(0) > causes.get(1).number("upper").orElse(1);
    if (isKnown && leads && failures >= StepCurve.LEAST_AT_RISK) {
      return Messages.of(
          "chart.CausesChart.most-frequent-cause-of-failure-of",
          Map.of(
              "cause",
              GroupText.words(first.text("cause")),
              "failures",
              NumberText.count(first.count("failures")),
              "failures2",
              NumberText.count(failures, "failures")));
    }
    return NEUTRAL;
  }
}
