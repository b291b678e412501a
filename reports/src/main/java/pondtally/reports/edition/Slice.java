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
 * @param values figure of each group; an empty cell counts as 0
 * @param known groups whose cell is not empty
 */
record Slice(String grouping, Map<String, Double> values, Set<String> known) {

  Slice {
    values = new TreeMap<>(values);
    known = Set.copyOf(known);
  }

  /**
   * Whether the remainder gives a withheld figure away: one group alone is withheld, nothing is left
   * for several that hold a nought each, or a small group makes up nearly all that is left.
   *
   * @param small groups that must be protected for their own sake
   * @param margin share of the figure by which the upper limit must lie above it
   */
  boolean givesAway(Set<String> withheld, Set<String> small, double margin) {
    Set<String> here = new java.util.TreeSet<>(withheld);
    here.retainAll(values.keySet());
    if (here.stream().noneMatch(known::contains)) {
      return false;
    }
    if (here.size() == 1) {
      return true;
    }
    double rest = 0;
    double total = 0;
    for (Map.Entry<String, Double> value : values.entrySet()) {
      total += value.getValue();
      rest += here.contains(value.getKey()) ? value.getValue() : 0;
    }
    if (rest <= 0) {
      return total > 0;
    }
    for (String group : here) {
      double value = values.get(group);
      if (small.contains(group) && rest < (1 + margin) * value) {
        return true;
      }
    }
    return false;
  }
}
