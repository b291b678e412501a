package pondtally.analysis;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.ToLongFunction;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.history.BuildGroup;

/**
 * Which groups are compared with each other: those of a known value with at least {@code
 * groups_below} devices. Groupings with more than {@link #MOST_PAIRED} such groups are compared as
 * a whole, but not pair by pair: thousands of pairs answer no question, and adjusted for their
 * number hardly any could differ.
 */
final class Comparisons {

  /** More groups than this are not compared pair by pair. */
  static final int MOST_PAIRED = 50;

  private static final List<String> NO_VALUE =
      List.of(GroupKey.UNKNOWN, Groups.COARSER, BuildGroup.NOT_JUDGED.code());

  private Comparisons() {}

  /**
   * Two groups of one grouping.
   *
   * @param a the first by name
   * @param b the other
   */
  record Pair(GroupKey a, GroupKey b) {}

  /** The groups of a grouping that may be compared, in order. */
  static List<GroupKey> groups(
      Collection<GroupKey> keys, Grouping grouping, ToLongFunction<GroupKey> devices, int below) {
    return keys.stream()
        .filter(key -> key.grouping() == grouping)
        .filter(key -> devices.applyAsLong(key) >= below)
        .filter(key -> !NO_VALUE.contains(key.group()))
        .toList();
  }

  /** Groups of a life tally that may be compared. */
  static List<GroupKey> groups(LifeTally tally, Grouping grouping, int below) {
    return groups(tally.lives().keySet(), grouping, tally::devices, below);
  }

  /** Every pair of groups, in order; none where there are too many groups. */
  static List<Pair> pairs(List<GroupKey> groups) {
    List<Pair> pairs = new ArrayList<>();
    for (int a = 0; a < groups.size() && groups.size() <= MOST_PAIRED; a++) {
      for (int b = a + 1; b < groups.size(); b++) {
        pairs.add(new Pair(groups.get(a), groups.get(b)));
      }
    }
    return pairs;
  }
}
