package pondtally.reports.chart;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pondtally.reports.table.Row;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** What the survival summary supports saying, in one sentence. */
final class SurvivalFinding {

  private static final int[] HORIZONS = {5, 3, 1};
  private static final int MOST_UNDATED = 6;

  private final ChartSource source;
  private final String grouping;
  private final List<Row> rows;
  private final List<Row> undated;

  SurvivalFinding(ChartSource source, String grouping) {
    this.source = source;
    this.grouping = grouping;
    this.rows =
        source.rows("survival_summary", grouping).stream()
            .filter(row -> row.text("method").equals("product-limit"))
            .toList();
    this.undated =
        source.rows("survival_summary", grouping).stream()
            .filter(row -> row.text("method").equals("interval"))
            .toList();
  }

  /** What is shown; of several groups also that their limits do not set them apart. */
  String neutralTitle() {
    return grouping.equals("all")
        ? Messages.of("chart.SurvivalFinding.share-of-devices-that-had-not")
        : Messages.of(
            "chart.SurvivalFinding.share-of-devices-that-had-not-2",
            Map.of("grouping", GroupText.grouping(grouping)));
  }

  /** A finding where the limits allow one, else the neutral title. */
  String title() {
    long failures = sum("failures");
    if (isKnown("failures") && failures == 0) {
      long lives = sum("lives");
      return Messages.of(
          "chart.SurvivalFinding.no-failure-among-that-were-followed",
          Map.of("lives", NumberText.count(lives, "lives")));
    }
    if (rows.size() == 1) {
      return horizon().map(years -> single(groups(years).get(0), years)).orElse(neutralTitle());
    }
    return contrastTitle().orElse(neutralTitle());
  }

  /** The latest age at which two groups are clearly apart, and how far. */
  private Optional<String> contrastTitle() {
    return IntStream.of(HORIZONS)
        .boxed()
        .flatMap(years -> contrast(years).map(pair -> apart(pair, years)).stream())
        .findFirst();
  }

  private Optional<Contrast> contrast(int years) {
    return Contrast.clearest(groups(years), source.rows("group_tests"), grouping);
  }

  /** The figures at the shown horizon, group by group, for the alternative text. */
  String figures() {
    return horizon()
        .map(
            years ->
                Messages.of(
                    "chart.SurvivalFinding.after",
                    Map.of(
                        "years",
                        NumberText.years(years),
                        "joining",
                        groups(years).stream()
                            .limit(12)
                            .map(group -> group.label() + " " + group.estimate().ofHundred())
                            .collect(Collectors.joining("; ")))))
        .orElse("");
  }

  /** What the estimate from the visits alone says at the shown horizon, beside the curves. */
  List<String> undated() {
    return horizon()
        .filter(years -> !groups(undated, years).isEmpty())
        .map(
            years ->
                Messages.of(
                    "chart.SurvivalFinding.estimated-from-the-visits-alone-without",
                    Map.of(
                        "years",
                        NumberText.years(years),
                        "joining",
                        groups(undated, years).stream()
                            .limit(MOST_UNDATED)
                            .map(group -> named(group) + group.estimate().ofHundred())
                            .collect(Collectors.joining("; ")))))
        .stream()
        .toList();
  }

  private String named(Contrast.Group group) {
    return grouping.equals("all") ? "" : group.label() + " ";
  }

  private String single(Contrast.Group group, int years) {
    String figure = NumberText.aboutOfHundred(group.estimate().value());
    String who =
        grouping.equals("all")
            ? Messages.of("chart.SurvivalFinding.devices")
            : Messages.of("chart.SurvivalFinding.devices-2", Map.of("group", group.label()));
    return Messages.of(
        "chart.SurvivalFinding.had-not-failed-after",
        Map.of(
            "figure",
            Character.toUpperCase(figure.charAt(0)) + figure.substring(1),
            "who",
            who,
            "years",
            NumberText.years(years),
            "limits",
            group.estimate().limitsOfShare()));
  }

  private static String apart(Contrast pair, int years) {
    return Messages.of(
        "chart.SurvivalFinding.not-failed-after",
        Map.of(
            "years",
            NumberText.years(years),
            "higher",
            pair.higher().label(),
            "ofHundred",
            pair.higher().estimate().ofHundred(),
            "lower",
            pair.lower().label(),
            "ofHundred2",
            pair.lower().estimate().ofHundred()));
  }

  /** The latest age that most groups have figures for. */
  private Optional<Integer> horizon() {
    int most = IntStream.of(HORIZONS).map(years -> groups(years).size()).max().orElse(0);
    return IntStream.of(HORIZONS)
        .filter(years -> most > 0 && groups(years).size() == most)
        .boxed()
        .findFirst();
  }

  private List<Contrast.Group> groups(int years) {
    return groups(rows, years);
  }

  private List<Contrast.Group> groups(List<Row> of, int years) {
    String column = "survival_" + years + "y";
    return of.stream()
        .filter(row -> row.number("devices").orElse(0) >= source.groupsBelow())
        .flatMap(
            row ->
                Estimate.of(
                    row.number(column),
                    row.number(column + "_lower"),
                    row.number(column + "_upper"))
                    .filter(Estimate::hasLimits)
                    .map(e -> new Contrast.Group(row.text("group"), label(row), e))
                    .stream())
        .toList();
  }

  private boolean isKnown(String column) {
    return !rows.isEmpty() && rows.stream().allMatch(row -> row.number(column).isPresent());
  }

  private long sum(String column) {
    return (long) rows.stream().mapToDouble(row -> row.number(column).orElse(0)).sum();
  }

  private String label(Row row) {
    return GroupText.label(grouping, row.text("group"));
  }
}
