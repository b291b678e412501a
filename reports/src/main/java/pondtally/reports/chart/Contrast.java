package pondtally.reports.chart;

import java.util.List;
import java.util.Optional;
import pondtally.reports.table.Row;
import pondtally.reports.text.Estimate;

/**
 * Two groups that differ by more than chance explains: their 95% limits do not overlap, and where
 * the tables hold a test of the pair its adjusted p-value is below 0.05.
 */
record Contrast(Group higher, Group lower) {

  private static final double LEVEL = 0.05;

  /**
   * A group with limits.
   *
   * @param group as the tables have it
   * @param label as readers see it
   */
  record Group(String group, String label, Estimate estimate) {

    private boolean isNamed() {
      return !group.isEmpty() && !group.equals("unknown");
    }
  }

  /** The pair with the widest gap between its limits; empty where no pair is apart. */
  static Optional<Contrast> clearest(List<Group> groups, List<Row> tests, String grouping) {
    Contrast best = null;
    for (Group higher : groups) {
      for (Group lower : groups) {
        Contrast pair = new Contrast(higher, lower);
        boolean isWider = best == null || pair.gap() > best.gap();
        if (pair.gap() > 0 && isWider && pair.isConfirmed(tests, grouping)) {
          best = pair;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private double gap() {
    return higher.estimate.lower().orElse(Double.NEGATIVE_INFINITY)
        - lower.estimate.upper().orElse(Double.POSITIVE_INFINITY);
  }

  private boolean isConfirmed(List<Row> tests, String grouping) {
    return higher.isNamed()
        && lower.isNamed()
        && tests.stream()
            .filter(test -> test.text("grouping").equals(grouping) && isOfPair(test))
            .allMatch(test -> test.number("p_adjusted").orElse(0) < LEVEL);
  }

  private boolean isOfPair(Row test) {
    String a = test.text("group_a");
    String b = test.text("group_b");
    return (a.equals(higher.group) && b.equals(lower.group))
        || (a.equals(lower.group) && b.equals(higher.group));
  }
}
