package pondtally.reports.chart;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pondtally.reports.table.Row;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
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
        ? "Share of devices that had not failed, by age"
        : "Share of devices that had not failed, by age and "
            + GroupText.grouping(grouping)
            + ": no clear difference";
  }

  /** A finding where the limits allow one, else the neutral title. */
  String title() {
    long failures = sum("failures");
    if (isKnown("failures") && failures == 0) {
      long lives = sum("lives");
      return "No failure among " + NumberText.count(lives, "lives") + " that were followed";
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
                "After "
                    + NumberText.years(years)
                    + ": "
                    + groups(years).stream()
                        .limit(12)
                        .map(group -> group.label() + " " + group.estimate().ofHundred())
                        .collect(Collectors.joining("; "))
                    + ".")
        .orElse("");
  }

  /** What the estimate from the visits alone says at the shown horizon, beside the curves. */
  List<String> undated() {
    return horizon()
        .filter(years -> !groups(undated, years).isEmpty())
        .map(
            years ->
                "Estimated from the visits alone, without giving failures a day (Turnbull 1976),"
                    + " not failed after "
                    + NumberText.years(years)
                    + ": "
                    + groups(undated, years).stream()
                        .limit(MOST_UNDATED)
                        .map(group -> named(group) + group.estimate().ofHundred())
                        .collect(Collectors.joining("; "))
                    + ".")
        .stream()
        .toList();
  }

  private String named(Contrast.Group group) {
    return grouping.equals("all") ? "" : group.label() + " ";
  }

  private String single(Contrast.Group group, int years) {
    String said = group.estimate().ofHundred();
    int limits = said.indexOf(" (");
    String who = grouping.equals("all") ? " devices" : " " + group.label() + " devices";
    return Character.toUpperCase(said.charAt(0))
        + said.substring(1, limits)
        + who
        + " had not failed after "
        + NumberText.years(years)
        + said.substring(limits);
  }

  private static String apart(Contrast pair, int years) {
    return "Not failed after %s: %s %s, %s %s"
        .formatted(
            NumberText.years(years),
            pair.higher().label(),
            pair.higher().estimate().ofHundred(),
            pair.lower().label(),
            pair.lower().estimate().ofHundred());
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
