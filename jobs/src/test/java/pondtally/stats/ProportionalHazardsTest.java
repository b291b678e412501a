package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ProportionalHazardsTest {
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
    HazardPatterns whole = SimulatedHazards.of(1, 300, true);
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
        ProportionalHazards.fit(whole, SimulatedHazards.PIPE, ties),
        ProportionalHazards.fit(cut, SimulatedHazards.PIPE, ties),
        1e-10);
  }

  @Test
  void anyClockThatKeepsTheOrderGivesTheSameFit() {
    HazardPatterns days = SimulatedHazards.of(2, 300, true);
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
        ProportionalHazards.fit(days, SimulatedHazards.PIPE, HazardTies.EFRON),
        ProportionalHazards.fit(squared, SimulatedHazards.PIPE, HazardTies.EFRON),
        1e-11);
  }

  @Test
  void withoutTiesBothTreatmentsAgree() {
    HazardPatterns patterns = SimulatedHazards.of(3, 200, false);
    same(
        ProportionalHazards.fit(patterns, SimulatedHazards.PIPE, HazardTies.EFRON),
        ProportionalHazards.fit(patterns, SimulatedHazards.PIPE, HazardTies.BRESLOW),
        1e-11);
  }

  @Test
  void anotherReferenceShiftsTheCoefficients() {
    HazardDesign fromB = HazardDesign.empty().withFactor("pipe", "B", List.of("A", "C"));
    HazardPatterns patterns = SimulatedHazards.of(4, 300, true);
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
    ProportionalHazards a =
        ProportionalHazards.fit(patterns, SimulatedHazards.PIPE, HazardTies.EFRON);
    ProportionalHazards b = ProportionalHazards.fit(relabeled, fromB, HazardTies.EFRON);
    assertEquals(a.logLikelihood(), b.logLikelihood(), 1e-10);
    assertEquals(1 / ratio(a, 0), ratio(b, 0), 1e-10);
    assertEquals(ratio(a, 1) / ratio(a, 0), ratio(b, 1), 1e-10);
  }

  @Test
  void partsMergeInAnyOrderToTheSameBits() {
    HazardPatterns whole = SimulatedHazards.of(5, 400, true);
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
    ProportionalHazards a = ProportionalHazards.fit(whole, SimulatedHazards.PIPE, HazardTies.EFRON);
    ProportionalHazards b =
        ProportionalHazards.fit(right.merge(left), SimulatedHazards.PIPE, HazardTies.EFRON);
    assertEquals(a.terms(), b.terms());
    assertEquals(a.logLikelihood(), b.logLikelihood());
    assertEquals(whole.distinct(), right.distinct());
  }

  @Test
  void theScoreVanishesAtTheMaximumAndClusterSumsDoNotDependOnOrder() {
    HazardPatterns patterns = SimulatedHazards.of(6, 300, true);
    HazardScores scores =
        ProportionalHazards.fit(patterns, SimulatedHazards.PIPE, HazardTies.EFRON).scores();
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
    HazardPatterns once = SimulatedHazards.of(7, 200, false);
    HazardPatterns twice = HazardPatterns.ofColumns(2).merge(once).merge(once);
    HazardTerm.Estimate a = clustered(once, 1).terms().get(0).estimate().orElseThrow();
    HazardTerm.Estimate b = clustered(twice, 2).terms().get(0).estimate().orElseThrow();
    HazardTerm.Estimate breslow =
        ProportionalHazards.fit(twice, SimulatedHazards.PIPE, HazardTies.BRESLOW)
            .terms()
            .get(0)
            .estimate()
            .orElseThrow();
    assertEquals(
        a.robustStandardError().getAsDouble(), b.robustStandardError().getAsDouble(), 1e-12);
    assertEquals(a.modelStandardError() / Math.sqrt(2), breslow.modelStandardError(), 1e-12);
  }

  private static ProportionalHazards clustered(HazardPatterns patterns, int copies) {
    ProportionalHazards fit =
        ProportionalHazards.fit(patterns, SimulatedHazards.PIPE, HazardTies.BRESLOW);
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
}
