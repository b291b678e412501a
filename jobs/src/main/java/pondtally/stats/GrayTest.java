package pondtally.stats;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Gray's test that the cumulative incidence of an event is the same in all groups, in the presence
 * of competing ends (Gray 1988, ρ = 0), with strata by adding scores and variances.
 *
 * <p>Group i's score is Σ over event ages of d_i − d R_i/ΣR with R_i = Y_i (1 − F_i(t−))/S_i(t−):
 * lives lost to the competing end stay in the risk set in the measure that the event could still
 * have reached them. Assumes that observation ends without regard to the device's condition; no
 * late entry. Limits: the chi-square is poor under about five events a group.
 *
 * @param test the test of all groups; degrees of freedom one less than groups that were ever at
 *     risk at an event
 * @param reason why there is no test; empty if there is one
 * @param groups what went into it, by name
 */
public record GrayTest(Optional<HazardTest> test, Optional<String> reason, List<Group> groups) {
  /**
   * One group.
   *
   * @param lives lives in it
   * @param events of them, with the event
   * @param competing of them, with a competing end
   * @param expectedEvents events it would have had with the incidence of all groups together
   */
  public record Group(
      String name, long lives, long events, long competing, double expectedEvents) {}

  /** Carries out the test. */
  public static GrayTest of(GrayCounts counts) {
    SortedMap<String, SortedMap<Double, Map<String, long[]>>> strata = counts.sorted();
    TreeSet<String> names = new TreeSet<>();
    strata.values().forEach(ages -> ages.values().forEach(groups -> names.addAll(groups.keySet())));
    List<String> order = List.copyOf(names);
    GrayStratum sum = new GrayStratum(order.size());
    strata.values().forEach(ages -> sum.add(GrayStratum.of(ages, order)));
    List<Group> groups = sum.groups(order);
    int[] atRisk =
        IntStream.range(0, order.size()).filter(i -> groups.get(i).expectedEvents() > 0).toArray();
    if (groups.stream().noneMatch(g -> g.events() > 0)) {
      return new GrayTest(Optional.empty(), Optional.of("no event in any group"), groups);
    }
    if (atRisk.length < 2) {
      return new GrayTest(
          Optional.empty(), Optional.of("fewer than two groups at risk at an event"), groups);
    }
    int[] chosen = Arrays.copyOf(atRisk, atRisk.length - 1);
    double[][] inverse = HazardInverse.of(HazardInverse.part(sum.variance(), chosen));
    double statistic = HazardInverse.form(inverse, HazardInverse.part(sum.score(), chosen));
    return new GrayTest(
        Optional.of(HazardTest.of(statistic, chosen.length)), Optional.empty(), groups);
  }
}
