package pondtally.reports.edition;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What must be withheld besides the small groups, so that no subtraction gives a small one away: a
 * greedy rule. It stops only when no slice gives a withheld figure away, or everything is withheld,
 * so that what it leaves is safe whatever it chose on the way.
 */
final class Complement {

  /** An upper limit must lie a fifth above the figure of a small group. */
  static final double MARGIN = 0.2;

  private Complement() {}

  /**
   * Adds to {@code withheld} until nothing is given away.
   *
   * @param small what is withheld for its own sake
   * @param sizes everything that may be withheld, with the number of its sites
   */
  static void grow(
      List<Slice> slices, Set<String> withheld, Set<String> small, Map<String, Integer> sizes) {
    while (faults(slices, withheld, small) > 0 && withheld.size() < sizes.size()) {
      TreeSet<String> open = new TreeSet<>(sizes.keySet());
      open.removeAll(withheld);
      String best =
          open.stream()
              .min(
                  Comparator.comparingLong(
                          (String name) -> faultsWith(slices, withheld, small, name))
                      .thenComparing(sizes::get)
                      .thenComparing(name -> name))
              .orElseThrow();
      withheld.add(best);
    }
  }

  private static long faultsWith(
      List<Slice> slices, Set<String> withheld, Set<String> small, String more) {
    Set<String> all = new TreeSet<>(withheld);
    all.add(more);
    return faults(slices, all, small);
  }

  private static long faults(List<Slice> slices, Set<String> withheld, Set<String> small) {
    return slices.stream().filter(slice -> slice.givesAway(withheld, small, MARGIN)).count();
  }
}
