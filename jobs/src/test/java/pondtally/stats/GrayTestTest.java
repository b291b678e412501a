package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class GrayTestTest {
  private static final List<GrayCounts.End> ENDS = List.of(GrayCounts.End.values());

  private static GrayCounts simulated(long seed, int lives) {
    SplittableRandom random = new SplittableRandom(seed);
    GrayCounts counts = GrayCounts.empty();
    for (int i = 0; i < lives; i++) {
      GrayCounts.End end = ENDS.get(random.nextInt(3));
      counts.add(
          "w" + random.nextInt(2),
          List.of("A", "B", "C").get(random.nextInt(3)),
          1 + random.nextInt(40),
          end,
          1);
    }
    return counts;
  }

  /**
   * A fails at 1 and B at 2, of two: at age 1 each expects 1/2, at age 2 B expects its own; the
   * scores cancel.
   */
  @Test
  void twoLivesByHand() {
    GrayTest test =
        GrayTest.of(
            GrayCounts.empty()
                .add("", "A", 1, GrayCounts.End.EVENT, 1)
                .add("", "B", 2, GrayCounts.End.EVENT, 1));
    assertEquals(new GrayTest.Group("A", 1, 1, 0, 0.5), test.groups().get(0));
    assertEquals(new GrayTest.Group("B", 1, 1, 0, 1.5), test.groups().get(1));
  }

  /**
   * A life lost to the competing end counts on: at age 2 group A has R = 1 · 1/(1/2) = 2 against
   * B's 2, so each expects 1/2.
   */
  @Test
  void aCompetingEndStaysInTheRiskSet() {
    GrayTest test =
        GrayTest.of(
            GrayCounts.empty()
                .add("", "A", 1, GrayCounts.End.COMPETING, 1)
                .add("", "A", 3, GrayCounts.End.CENSORED, 1)
                .add("", "B", 2, GrayCounts.End.EVENT, 1)
                .add("", "B", 3, GrayCounts.End.CENSORED, 1));
    assertEquals(0.5, test.groups().get(0).expectedEvents(), 1e-15);
    assertEquals(0.5, test.groups().get(1).expectedEvents(), 1e-15);
  }

  @Test
  void namesAndOrderOfGroupsDoNotMatter() {
    HazardTest test = GrayTest.of(simulated(1, 200)).test().orElseThrow();
    GrayCounts renamed = GrayCounts.empty();
    simulated(1, 200)
        .sorted()
        .forEach(
            (stratum, ages) ->
                ages.forEach(
                    (days, groups) ->
                        groups.forEach(
                            (group, ends) -> {
                              for (int e = 2; e >= 0; e--) {
                                renamed.add(
                                    "x" + stratum,
                                    group.equals("C") ? "0" : group,
                                    7 * days,
                                    ENDS.get(e),
                                    ends[e]);
                              }
                            })));
    assertEquals(test.statistic(), GrayTest.of(renamed).test().orElseThrow().statistic(), 1e-10);
    assertEquals(2, test.degreesOfFreedom());
  }

  @Test
  void partsMergeToTheSameBits() {
    assertEquals(
        GrayTest.of(simulated(2, 100).merge(simulated(3, 50))),
        GrayTest.of(simulated(3, 50).merge(simulated(2, 100))));
  }

  @Test
  void groupsThatAreAlikeGiveNothing() {
    GrayCounts counts = GrayCounts.empty();
    for (String group : List.of("A", "B")) {
      counts
          .add("", group, 3, GrayCounts.End.EVENT, 4)
          .add("", group, 5, GrayCounts.End.COMPETING, 2)
          .add("", group, 9, GrayCounts.End.CENSORED, 3);
    }
    assertEquals(0, GrayTest.of(counts).test().orElseThrow().statistic(), 1e-20);
  }

  @Test
  void noTestSaysWhy() {
    GrayCounts none =
        GrayCounts.empty()
            .add("", "A", 1, GrayCounts.End.COMPETING, 1)
            .add("", "B", 2, GrayCounts.End.CENSORED, 1);
    assertEquals(Optional.of("no event in any group"), GrayTest.of(none).reason());
    GrayCounts one =
        GrayCounts.empty()
            .add("", "A", 1, GrayCounts.End.CENSORED, 5)
            .add("", "B", 2, GrayCounts.End.EVENT, 1);
    assertEquals(
        Optional.of("fewer than two groups at risk at an event"), GrayTest.of(one).reason());
    assertEquals(Optional.of("no event in any group"), GrayTest.of(GrayCounts.empty()).reason());
    assertThrows(
        IllegalArgumentException.class, () -> one.add("", "A", 0, GrayCounts.End.EVENT, 1));
    assertThrows(
        IllegalArgumentException.class, () -> one.add("", "A", 4, GrayCounts.End.EVENT, -1));
  }
}
