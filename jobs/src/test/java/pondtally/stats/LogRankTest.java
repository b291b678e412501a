package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LogRankTest {
  @Test
  void handFractions() {
    // A fails at 1 and 3, B at 2 and 4. Expected in A: 2/4 + 1/3 + 1/2 + 0 = 4/3; variance
    // 1/4 + 2/9 + 1/4 + 0 = 13/18; χ² = (2/3)² / (13/18) = 8/13.
    RiskTable a = CountedLives.ofOneKind().add(0, 1, 1).add(0, 3, 1).anyEvent();
    RiskTable b = CountedLives.ofOneKind().add(0, 2, 1).add(0, 4, 1).anyEvent();
    LogRank test = LogRank.of(List.of(a, b), LogRankWeight.LOG_RANK);
    assertEquals(2, test.observed(0));
    assertEquals(4 / 3.0, test.expected(0), 1e-12);
    assertEquals(2 / 3.0, test.score(0), 1e-12);
    assertEquals(13 / 18.0, test.covariance(0, 0), 1e-12);
    assertEquals(-13 / 18.0, test.covariance(0, 1), 1e-12);
    assertEquals(8 / 13.0, test.chiSquare().getAsDouble(), 1e-12);
    assertEquals(1, test.degreesOfFreedom());
    // Gehan's weights 4, 3, 2, 1: U = 4·(1/2) − 3·(1/3) + 2·(1/2) = 2; V = 16/4 + 9·2/9 + 4/4 = 7.
    LogRank gehan = LogRank.of(List.of(a, b), LogRankWeight.GEHAN_BRESLOW);
    assertEquals(2, gehan.score(0), 1e-12);
    assertEquals(4 / 7.0, gehan.chiSquare().getAsDouble(), 1e-12);
  }

  @Test
  void delayedEntryByHand() {
    // B enters at 2: at 1 only A is at risk, so that time says nothing; at 3 it is one of each.
    RiskTable a = CountedLives.ofOneKind().add(0, 1, 1).add(0, 3, 1).anyEvent();
    RiskTable b = CountedLives.ofOneKind().add(2, 5, 0).anyEvent();
    LogRank test = LogRank.of(List.of(a, b), LogRankWeight.LOG_RANK);
    assertEquals(1.5, test.expected(0), 1e-12);
    assertEquals(0.25, test.covariance(0, 0), 1e-12);
    assertEquals(1, test.chiSquare().getAsDouble(), 1e-12);
  }

  @Test
  void whatCannotBeTestedHasNoStatistic() {
    RiskTable failing = CountedLives.ofOneKind().add(0, 1, 1, 5).anyEvent();
    RiskTable working = CountedLives.ofOneKind().add(0, 9, 0, 5).anyEvent();
    RiskTable later = CountedLives.ofOneKind().add(5, 6, 1, 5).anyEvent();
    assertNothing(LogRank.of(List.of(), LogRankWeight.LOG_RANK));
    assertNothing(LogRank.stratified(List.of(), LogRankWeight.LOG_RANK));
    assertNothing(LogRank.of(List.of(failing), LogRankWeight.LOG_RANK));
    assertNothing(LogRank.of(List.of(working, working), LogRankWeight.LOG_RANK));
    assertNothing(LogRank.of(List.of(failing, later), LogRankWeight.LOG_RANK));
    assertNothing(LogRank.of(List.of(failing, RiskTable.empty()), LogRankWeight.LOG_RANK));
  }

  private static void assertNothing(LogRank test) {
    assertEquals(OptionalDouble.empty(), test.chiSquare());
    assertEquals(OptionalDouble.empty(), test.pValue());
    assertEquals(0, test.degreesOfFreedom());
    assertEquals(LogRank.Trend.NONE, test.trend(new double[test.groups()]));
  }

  @Test
  void emptyGroupLeavesTheOthersAsTheyAre() {
    List<RiskTable> two =
        List.of(
            PublishedLives.gehan("6-MP").anyEvent(), PublishedLives.gehan("control").anyEvent());
    LogRank alone = LogRank.of(two, LogRankWeight.LOG_RANK);
    LogRank beside =
        LogRank.of(List.of(two.get(0), RiskTable.empty(), two.get(1)), LogRankWeight.LOG_RANK);
    assertEquals(1, beside.degreesOfFreedom());
    assertEquals(alone.chiSquare().getAsDouble(), beside.chiSquare().getAsDouble(), 1e-12);
    assertEquals(0, beside.covariance(1, 1));
  }

  @Test
  void twoPairsNeverTogetherGiveTwoDegreesOfFreedom() {
    Random random = new Random(3);
    CountedLives[] g = new CountedLives[4];
    for (int j = 0; j < 4; j++) {
      g[j] = CountedLives.ofOneKind();
      for (int i = 0; i < 30; i++) {
        double entry = j < 2 ? 0 : 1000;
        g[j].add(entry, entry + 1 + random.nextInt(900), random.nextInt(2));
      }
    }
    LogRank all = test(g[0], g[1], g[2], g[3]);
    assertEquals(2, all.degreesOfFreedom());
    double apart =
        test(g[0], g[1]).chiSquare().getAsDouble() + test(g[2], g[3]).chiSquare().getAsDouble();
    assertEquals(apart, all.chiSquare().getAsDouble(), 1e-9);
  }

  @Test
  void orderOfGroupsAndScaleOfTimeDoNotMatter() {
    CountedLives[] g = new CountedLives[3];
    CountedLives[] scaled = new CountedLives[3];
    Random random = new Random(9);
    for (int j = 0; j < 3; j++) {
      g[j] = CountedLives.ofOneKind();
      scaled[j] = CountedLives.ofOneKind();
      for (int i = 0; i < 60; i++) {
        double entry = random.nextInt(30);
        double exit = entry + 1 + random.nextInt(90 + 30 * j);
        int outcome = random.nextInt(2);
        g[j].add(entry, exit, outcome);
        scaled[j].add(entry * 4, exit * 4, outcome);
      }
    }
    LogRank test = test(g[0], g[1], g[2]);
    assertEquals(2, test.degreesOfFreedom());
    assertEquals(
        test.chiSquare().getAsDouble(), test(g[2], g[0], g[1]).chiSquare().getAsDouble(), 1e-9);
    assertEquals(test.chiSquare(), test(scaled[0], scaled[1], scaled[2]).chiSquare());
    assertEquals(0, test.score(0) + test.score(1) + test.score(2), 1e-9);
    LogRank.Trend up = test.trend(1, 2, 3);
    assertEquals(up.z().getAsDouble(), test.trend(5, 7, 9).z().getAsDouble(), 1e-9);
    assertEquals(-up.z().getAsDouble(), test.trend(3, 2, 1).z().getAsDouble(), 1e-9);
    assertEquals(LogRank.Trend.NONE, test.trend(2, 2, 2));
  }

  @Test
  void pairsAreAdjustedTogether() {
    List<RiskTable> stages =
        List.of("1", "2", "3", "4").stream().map(s -> PublishedLives.larynx(s).anyEvent()).toList();
    List<RiskTable> groups =
        List.of(stages.get(0), stages.get(1), stages.get(2), stages.get(3), RiskTable.empty());
    List<LogRank.Pair> pairs = LogRank.pairwise(List.of(groups), LogRankWeight.LOG_RANK);
    assertEquals(10, pairs.size());
    double smallest = 1;
    for (LogRank.Pair pair : pairs) {
      assertEquals(pair.second() < 4, pair.adjustedP().isPresent());
      if (pair.adjustedP().isPresent()) {
        double p = pair.test().pValue().getAsDouble();
        smallest = Math.min(smallest, p);
        assertTrue(pair.adjustedP().getAsDouble() >= p);
      }
    }
    double adjusted =
        pairs.stream().flatMapToDouble(x -> x.adjustedP().stream()).min().getAsDouble();
    assertEquals(6 * smallest, adjusted, 1e-15);
  }

  @Test
  void wrongArgumentsAreRefused() {
    RiskTable one = CountedLives.ofOneKind().add(0, 1, 1).anyEvent();
    List<List<RiskTable>> uneven = List.of(List.of(one, one), List.of(one));
    assertThrows(
        IllegalArgumentException.class, () -> LogRank.stratified(uneven, LogRankWeight.LOG_RANK));
    LogRank test = LogRank.of(List.of(one, one), LogRankWeight.LOG_RANK);
    assertThrows(IllegalArgumentException.class, () -> test.trend(1));
    assertThrows(IllegalArgumentException.class, () -> LogRankWeight.gRho(-1, 0));
  }

  private static LogRank test(CountedLives... groups) {
    return LogRank.of(
        List.of(groups).stream().map(CountedLives::anyEvent).toList(), LogRankWeight.LOG_RANK);
  }
}
