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

  private final ChartSource source;
  private final String grouping;
  private final List<Row> rows;

  SurvivalFinding(ChartSource source, String grouping) {
    this.source = source;
    this.grouping = grouping;
    this.rows =
        source.rows("survival_summary", grouping).stream()
            .filter(row -> row.text("method").equals("product-limit"))
            .toList();
  }

  String neutralTitle() {
    return grouping.equals("all")
        ? "Share of devices that had not failed, by age"
        : "Share of devices that had not failed, by age and " + GroupText.grouping(grouping);
  }

  /** A finding where the limits allow one, else the neutral title. */
  String title() {
    Optional<Integer> horizon = horizon();
    if (horizon.isEmpty()) {
      return neutralTitle();
    }
    int years = horizon.get();
    List<Contrast.Group> groups = groups(years);
    if (groups.size() == 1) {
      return single(groups.get(0), years);
    }
    return Contrast.clearest(groups, source.rows("group_tests"), grouping)
        .map(pair -> apart(pair, years))
        .orElse(neutralTitle() + ": the limits overlap, no group clearly stands out");
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

  private Optional<Integer> horizon() {
    int needed = Math.min(2, rows.size());
    return IntStream.of(HORIZONS)
        .filter(years -> needed > 0 && groups(years).size() >= needed)
        .boxed()
        .findFirst();
  }

  private List<Contrast.Group> groups(int years) {
    String column = "survival_" + years + "y";
    return rows.stream()
        .filter(row -> row.count("devices") >= source.groupsBelow())
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

  private String label(Row row) {
    return GroupText.label(grouping, row.text("group"));
  }
}
