package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ProportionalHazardsTest {
  private static final HazardDesign PIPE =
      HazardDesign.empty().withFactor("pipe", "A", List.of("B", "C"));
  private static final HazardDesign ONE = HazardDesign.empty().withNumber("x");

  /**
   * Fails x = 1 on day 1, x = 0 on day 2, x = 1 still works: L = r/(2r+1) · 1/(r+1), highest at r =
   * 1/√2.
   */
  @Test
  void threeDevicesByHand() {
    HazardPatterns patterns =
        HazardPatterns.ofColumns(1)
            .add("", new double[] {1}, 0, 1, true, 1)
            .add("", new double[] {0}, 0, 2, true, 1)
            .add("", new double[] {1}, 0, 3, false, 1);
    ProportionalHazards fit = ProportionalHazards.fit(patterns, ONE, HazardTies.EFRON);
    double r = 1 / Math.sqrt(2);
    assertEquals(r, fit.terms().get(0).estimate().orElseThrow().hazardRatio(), 1e-12);
    assertEquals(Math.log(1 / 3.0 / 2), fit.logLikelihoodNull(), 1e-14);
    assertEquals(Math.log(r / (2 * r + 1) / (r + 1)), fit.logLikelihood(), 1e-14);
    assertEquals(1 / (2 * r + 1), fit.baselines().get("").at(1.5), 1e-12);
  }

  /**
   * Two fail on one day, x = 1 and x = 0, and x = 0 goes on: Efron L = r/((r+2)(r+2−(r+1)/2)),
   * highest at r = √6.
   */
  @Test
  void efronTieByHand() {
    HazardPatterns patterns =
        HazardPatterns.ofColumns(1)
            .add("", new double[] {1}, 0, 1, true, 1)
            .add("", new double[] {0}, 0, 1, true, 1)
            .add("", new double[] {0}, 0, 5, false, 1);
    double efron = ratio(ProportionalHazards.fit(patterns, ONE, HazardTies.EFRON), 0);
    assertEquals(Math.sqrt(6), efron, 1e-12);
    // Breslow L = r/(r+2)², highest at r = 2.
    assertEquals(2, ratio(ProportionalHazards.fit(patterns, ONE, HazardTies.BRESLOW), 0), 1e-12);
  }

  private static double ratio(ProportionalHazards fit, int term) {
    return fit.terms().get(term).estimate().orElseThrow().hazardRatio();
  }

  private static HazardPatterns simulated(long seed, int lives, boolean wholeDays) {
    SplittableRandom random = new SplittableRandom(seed);
    HazardPatterns patterns = HazardPatterns.ofColumns(2);
    for (int i = 0; i < lives; i++) {
      Object level = List.of("A", "B", "C").get(random.nextInt(3));
      double[] x = PIPE.encode(level);
      double life = -100 * Math.log(random.nextDouble()) / Math.exp(0.7 * x[0] - 0.4 * x[1]);
      double entry = random.nextInt(3) == 0 ? random.nextDouble() * 40 : 0;
      double end = entry + 1 + random.nextDouble() * 120;
      if (life > entry) {
        double exit = Math.min(life, end);
        exit = wholeDays ? Math.ceil(exit / 10) * 10 : exit;
        patterns.add(
            "w" + random.nextInt(2),
            x,
            Math.floor(entry),
            Math.max(exit, Math.floor(entry) + 1),
            life <= end,
            1);
      }
    }
    return patterns;
  }

  private static void same(ProportionalHazards a, ProportionalHazards b, double tolerance) {
    assertEquals(a.logLikelihood(), b.logLikelihood(), tolerance * 100);
    for (int j = 0; j < a.terms().size(); j++) {
      HazardTerm.Estimate ea = a.terms().get(j).estimate().orElseThrow();
      HazardTerm.Estimate eb = b.terms().get(j).estimate().orElseThrow();
      assertEquals(ea.coefficient(), eb.coefficient(), tolerance);
      assertEquals(ea.modelStandardError(), eb.modelStandardError(), tolerance);
    }
  }

  @ParameterizedTest
  @EnumSource(HazardTies.class)
  void cuttingLivesByLateEntryChangesNothing(HazardTies ties) {
    HazardPatterns whole = simulated(1, 300, true);
    HazardPatterns cut = HazardPatterns.ofColumns(2);
    whole
        .profiles()
        .forEach(
            (profile, spans) ->
                spans.forEach(
                    (span, count) -> {
                      double middle = (span.entryDays() + span.exitDays()) / 2;
                      cut.add(profile.stratum, profile.x, span.entryDays(), middle, false, count);
                      cut.add(
                          profile.stratum,
                          profile.x,
                          middle,
                          span.exitDays(),
                          span.failed(),
                          count);
                    }));
    same(
        ProportionalHazards.fit(whole, PIPE, ties),
        ProportionalHazards.fit(cut, PIPE, ties),
        1e-10);
  }

  @Test
  void anyClockThatKeepsTheOrderGivesTheSameFit() {
    HazardPatterns days = simulated(2, 300, true);
    HazardPatterns squared = HazardPatterns.ofColumns(2);
    days.profiles()
        .forEach(
            (profile, spans) ->
                spans.forEach(
                    (s, n) ->
                        squared.add(
                            profile.stratum,
                            profile.x,
                            s.entryDays() * s.entryDays(),
                            s.exitDays() * s.exitDays(),
                            s.failed(),
                            n)));
    same(
        ProportionalHazards.fit(days, PIPE, HazardTies.EFRON),
        ProportionalHazards.fit(squared, PIPE, HazardTies.EFRON),
        1e-11);
  }

  @Test
  void withoutTiesBothTreatmentsAgree() {
    HazardPatterns patterns = simulated(3, 200, false);
    same(
        ProportionalHazards.fit(patterns, PIPE, HazardTies.EFRON),
        ProportionalHazards.fit(patterns, PIPE, HazardTies.BRESLOW),
        1e-11);
  }

  @Test
  void anotherReferenceShiftsTheCoefficients() {
    HazardDesign fromB = HazardDesign.empty().withFactor("pipe", "B", List.of("A", "C"));
    HazardPatterns patterns = simulated(4, 300, true);
    HazardPatterns relabeled = HazardPatterns.ofColumns(2);
    patterns
        .profiles()
        .forEach(
            (profile, spans) -> {
              String level = profile.x[0] == 1 ? "B" : profile.x[1] == 1 ? "C" : "A";
              spans.forEach(
                  (s, n) ->
                      relabeled.add(
                          profile.stratum,
                          fromB.encode(level),
                          s.entryDays(),
                          s.exitDays(),
                          s.failed(),
                          n));
            });
    ProportionalHazards a = ProportionalHazards.fit(patterns, PIPE, HazardTies.EFRON);
    ProportionalHazards b = ProportionalHazards.fit(relabeled, fromB, HazardTies.EFRON);
    assertEquals(a.logLikelihood(), b.logLikelihood(), 1e-10);
    assertEquals(1 / ratio(a, 0), ratio(b, 0), 1e-10);
    assertEquals(ratio(a, 1) / ratio(a, 0), ratio(b, 1), 1e-10);
  }

  @Test
  void partsMergeInAnyOrderToTheSameBits() {
    HazardPatterns whole = simulated(5, 400, true);
    HazardPatterns left = HazardPatterns.ofColumns(2);
    HazardPatterns right = HazardPatterns.ofColumns(2);
    whole
        .profiles()
        .descendingMap()
        .forEach(
            (profile, spans) ->
                spans.forEach(
                    (s, n) -> {
                      for (int i = 0; i < n; i++) {
                        (i % 2 == 0 ? left : right)
                            .add(
                                profile.stratum,
                                profile.x,
                                s.entryDays(),
                                s.exitDays(),
                                s.failed(),
                                1);
                      }
                    }));
    ProportionalHazards a = ProportionalHazards.fit(whole, PIPE, HazardTies.EFRON);
    ProportionalHazards b = ProportionalHazards.fit(right.merge(left), PIPE, HazardTies.EFRON);
    assertEquals(a.terms(), b.terms());
    assertEquals(a.logLikelihood(), b.logLikelihood());
    assertEquals(whole.distinct(), right.distinct());
  }

  @Test
  void theScoreVanishesAtTheMaximumAndClusterSumsDoNotDependOnOrder() {
    HazardPatterns patterns = simulated(6, 300, true);
    HazardScores scores = ProportionalHazards.fit(patterns, PIPE, HazardTies.EFRON).scores();
    HazardClusterSums forward = HazardClusterSums.of(scores);
    HazardClusterSums first = HazardClusterSums.of(scores);
    HazardClusterSums second = HazardClusterSums.of(scores);
    List<double[]> all = new java.util.ArrayList<>();
    patterns
        .profiles()
        .forEach(
            (p, spans) ->
                spans.forEach(
                    (s, n) -> {
                      double[] u = new double[scores.size()];
                      scores.addTo(u, p.stratum, p.x, s.entryDays(), s.exitDays(), s.failed());
                      for (int i = 0; i < n; i++) {
                        all.add(u);
                      }
                    }));
    all.forEach(forward::add);
    for (int i = all.size() - 1; i >= 0; i--) {
      (i % 3 == 0 ? first : second).add(all.get(i));
    }
    HazardClusterSums backward = second.merge(first);
    assertArrayEquals(new double[] {0, 0}, forward.sum(), 1e-10);
    assertArrayEquals(forward.sum(), backward.sum());
    assertArrayEquals(forward.products()[0], backward.products()[0]);
    assertEquals(all.size(), backward.clusters());
  }

  /**
   * Two copies of each life in one cluster hold the evidence of one: the clustered error stays, the
   * model's falls by √2.
   */
  @Test
  void copiesWithinAClusterAddNoEvidence() {
    HazardPatterns once = simulated(7, 200, false);
    HazardPatterns twice = HazardPatterns.ofColumns(2).merge(once).merge(once);
    HazardTerm.Estimate a = clustered(once, 1).terms().get(0).estimate().orElseThrow();
    HazardTerm.Estimate b = clustered(twice, 2).terms().get(0).estimate().orElseThrow();
    HazardTerm.Estimate breslow =
        ProportionalHazards.fit(twice, PIPE, HazardTies.BRESLOW)
            .terms()
            .get(0)
            .estimate()
            .orElseThrow();
    assertEquals(
        a.robustStandardError().getAsDouble(), b.robustStandardError().getAsDouble(), 1e-12);
    assertEquals(a.modelStandardError() / Math.sqrt(2), breslow.modelStandardError(), 1e-12);
  }

  private static ProportionalHazards clustered(HazardPatterns patterns, int copies) {
    ProportionalHazards fit = ProportionalHazards.fit(patterns, PIPE, HazardTies.BRESLOW);
    HazardScores scores = fit.scores();
    HazardClusterSums sums = HazardClusterSums.of(scores);
    patterns
        .profiles()
        .forEach(
            (p, spans) ->
                spans.forEach(
                    (s, n) -> {
                      double[] u = new double[scores.size()];
                      for (int i = 0; i < copies; i++) {
                        scores.addTo(u, p.stratum, p.x, s.entryDays(), s.exitDays(), s.failed());
                      }
                      for (int i = 0; i < n / copies; i++) {
                        sums.add(u);
                      }
                    }));
    return fit.withClusters(sums);
  }

  @Test
  void aLevelWithoutFailuresHasAReasonAndLeavesTheOthersAlone() {
    HazardPatterns patterns = simulated(8, 300, true);
    HazardPatterns without = HazardPatterns.ofColumns(2);
    HazardPatterns some = HazardPatterns.ofColumns(2);
    patterns
        .profiles()
        .forEach(
            (p, spans) ->
                spans.forEach(
                    (s, n) -> {
                      if (p.x[1] == 0) {
                        without.add(p.stratum, p.x, s.entryDays(), s.exitDays(), s.failed(), n);
                      }
                      some.add(
                          p.stratum,
                          p.x,
                          s.entryDays(),
                          s.exitDays(),
                          s.failed() && p.x[1] == 0,
                          n);
                    }));
    ProportionalHazards a = ProportionalHazards.fit(without, PIPE, HazardTies.EFRON);
    ProportionalHazards b = ProportionalHazards.fit(some, PIPE, HazardTies.EFRON);
    assertEquals(Optional.of("no device at this level"), a.terms().get(1).reason());
    assertTrue(
        b.terms().get(1).reason().orElseThrow().startsWith("no failure among the "),
        b.terms().get(1)::toString);
    assertEquals(Optional.empty(), b.terms().get(1).estimate());
    assertEquals(a.logLikelihood(), b.logLikelihood(), 1e-9);
    assertEquals(ratio(a, 0), ratio(b, 0), 1e-9);
    assertEquals(
        a.terms().get(0).estimate().orElseThrow().modelStandardError(),
        b.terms().get(0).estimate().orElseThrow().modelStandardError(),
        1e-9);
    assertEquals(1, b.waldTest().orElseThrow().degreesOfFreedom());
    assertTrue(b.proportionality(HazardTransform.KM).tests().get(1).isEmpty());
  }

  @Test
  void aReferenceWithoutFailuresIsNamed() {
    HazardPatterns patterns = HazardPatterns.ofColumns(2);
    simulated(9, 300, true)
        .profiles()
        .forEach(
            (p, spans) ->
                spans.forEach(
                    (s, n) ->
                        patterns.add(
                            p.stratum,
                            p.x,
                            s.entryDays(),
                            s.exitDays(),
                            s.failed() && p.x[0] + p.x[1] > 0,
                            n)));
    for (HazardTerm term : ProportionalHazards.fit(patterns, PIPE, HazardTies.EFRON).terms()) {
      assertEquals(
          Optional.of(
              "no failure at the reference level A, so ratios to it have no finite estimate"),
          term.reason());
    }
  }

  @Test
  void redundantColumnsNameTheirDouble() {
    HazardDesign design =
        HazardDesign.empty()
            .withFactor("kind", "pipe", List.of("fence"))
            .withFactor("crew", "north", List.of("south"))
            .withNumber("same");
    HazardPatterns patterns = HazardPatterns.ofColumns(3);
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < 80; i++) {
      boolean fence = random.nextBoolean();
      patterns.add(
          "",
          design.encode(fence ? "fence" : "pipe", fence ? "south" : "north", 7),
          0,
          1 + random.nextInt(50),
          random.nextBoolean(),
          1);
    }
    List<HazardTerm> terms = ProportionalHazards.fit(patterns, design, HazardTies.EFRON).terms();
    assertTrue(terms.get(0).estimate().isPresent());
    assertEquals(
        Optional.of("tells nothing that is not told by kind fence"), terms.get(1).reason());
    assertEquals(
        Optional.of("at every failure all devices it could be compared with had the same value"),
        terms.get(2).reason());
  }

  @Test
  void aCovariateThatIsItsStratumCannotBeCompared() {
    HazardPatterns patterns = HazardPatterns.ofColumns(1);
    for (int i = 1; i < 20; i++) {
      patterns.add("w" + i % 2, new double[] {i % 2}, 0, i, true, 1);
    }
    HazardTerm term = ProportionalHazards.fit(patterns, ONE, HazardTies.EFRON).terms().get(0);
    assertEquals(
        Optional.of("at every failure all devices it could be compared with had the same value"),
        term.reason());
  }

  @Test
  void withoutAnyFailureOrLife() {
    HazardPatterns working = HazardPatterns.ofColumns(1).add("", new double[] {1}, 0, 9, false, 5);
    ProportionalHazards fit = ProportionalHazards.fit(working, ONE, HazardTies.EFRON);
    assertEquals(Optional.of("no device failed"), fit.terms().get(0).reason());
    assertEquals(Optional.empty(), fit.likelihoodRatioTest());
    assertEquals(Optional.empty(), fit.waldTest());
    assertTrue(fit.concordance().value().isEmpty());
    assertEquals(
        0, ProportionalHazards.fit(HazardPatterns.ofColumns(1), ONE, HazardTies.EFRON).lives());
  }

  @Test
  void aNumberThatSeparatesFailuresHasNoEstimate() {
    HazardPatterns patterns = HazardPatterns.ofColumns(1);
    for (int i = 0; i < 10; i++) {
      patterns.add("", new double[] {2020 + i}, 0, 100 - i, true, 1);
    }
    HazardTerm term = ProportionalHazards.fit(patterns, ONE, HazardTies.EFRON).terms().get(0);
    assertTrue(term.reason().orElseThrow().contains("no finite estimate"), term::toString);
  }

  /**
   * Sets of 5 to 44 lives, among them ones in which a coefficient loses its meaning only because
   * another is infinite.
   */
  @Test
  void tinySetsGiveReasonsNotRunawayNumbers() {
    HazardDesign design = PIPE.withFactor("fence", "none", List.of("round")).withNumber("x");
    int reasons = 0;
    for (long seed = 0; seed < 400; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      HazardPatterns patterns = HazardPatterns.ofColumns(4);
      for (int i = 5 + random.nextInt(10); i > 0; i--) {
        double entry = random.nextInt(3) == 0 ? random.nextInt(20) : 0;
        Object[] values = {
          List.of("A", "B", "C").get(random.nextInt(3)),
          random.nextInt(3) == 0 ? "round" : "none",
          random.nextInt(5)
        };
        patterns.add(
            "s" + random.nextInt(2),
            design.encode(values),
            entry,
            entry + 1 + random.nextInt(30),
            random.nextInt(3) > 0,
            1);
      }
      for (HazardTerm term : ProportionalHazards.fit(patterns, design, HazardTies.EFRON).terms()) {
        assertTrue(term.estimate().isPresent() != term.reason().isPresent());
        term.estimate()
            .ifPresent(
                e ->
                    assertTrue(
                        e.modelStandardError() > 0 && e.modelStandardError() <= 20,
                        term::toString));
        reasons += term.reason().isPresent() ? 1 : 0;
      }
    }
    assertTrue(reasons > 100);
  }

  @Test
  void badInputIsRefused() {
    HazardPatterns patterns = HazardPatterns.ofColumns(2);
    assertThrows(
        IllegalArgumentException.class, () -> patterns.add("", new double[1], 0, 1, true, 1));
    assertThrows(
        IllegalArgumentException.class, () -> patterns.add("", new double[2], 5, 5, true, 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> patterns.add("", new double[] {0, Double.NaN}, 0, 5, true, 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> ProportionalHazards.fit(patterns, ONE, HazardTies.EFRON));
    assertThrows(IllegalArgumentException.class, () -> PIPE.encode("D"));
    assertThrows(IllegalArgumentException.class, () -> ONE.encode("twelve"));
    assertEquals(
        List.of("pipe B", "pipe C"),
        PIPE.columns().stream().map(HazardDesign.Column::label).toList());
  }
}
