package pondtally.reports.edition;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * One additive figure over all groups of a grouping: the published total is their sum, so what is
 * withheld is known to add up to the total less what is published. With figures that are never
 * negative and no other equation between them, a withheld figure v can be anything from 0 to that
 * remainder; these limits are exact (Willenborg and de Waal 2001, chapter 6, one-dimensional
 * tables).
 *
 * @param isMain whether the upper limit of a small group's figure must lie well above it; for
 *     lesser figures it is enough that they cannot be told
 * @param values figure of each group; an empty cell, and a group without a row, counts as 0
 * @param known groups whose cell is not empty
 */
record Slice(String grouping, boolean isMain, Map<String, Double> values, Set<String> known) {

  Slice {
    values = new TreeMap<>(values);
    known = Set.copyOf(known);
  }

  /**
   * Whether the remainder gives a withheld figure away: one group alone is withheld, nothing is
   * left for several that hold a nought each, or a small group makes up nearly all that is left.
   *
   * @param small groups that must be protected for their own sake
   * @param margin share of the figure by which the upper limit must lie above it
   */
  boolean givesAway(Set<String> withheld, Set<String> small, double margin) {
    if (withheld.stream().noneMatch(known::contains)) {
      return false;
    }
    if (withheld.size() == 1) {
      return true;
    }
    double rest = withheld.stream().mapToDouble(this::value).sum();
    if (rest <= 0) {
      return values.values().stream().anyMatch(value -> value > 0);
    }
    return isMain
        && withheld.stream()
            .filter(small::contains)
            .anyMatch(group -> rest < (1 + margin) * value(group));
  }

  private double value(String group) {
    return values.getOrDefault(group, 0.0);
  }
}
