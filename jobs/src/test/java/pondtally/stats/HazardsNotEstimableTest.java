package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What a hazard model says where there is nothing to estimate, or nothing to tell terms apart. */
class HazardsNotEstimableTest {
  private static final HazardDesign ONE = HazardDesign.empty().withNumber("x");

  private static double ratio(ProportionalHazards fit, int term) {
    return fit.terms().get(term).estimate().orElseThrow().hazardRatio();
  }

  @Test
  void aLevelWithoutFailuresHasAReasonAndLeavesTheOthersAlone() {
    HazardPatterns patterns = SimulatedHazards.of(8, 300, true);
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
    ProportionalHazards a =
        ProportionalHazards.fit(without, SimulatedHazards.PIPE, HazardTies.EFRON);
    ProportionalHazards b = ProportionalHazards.fit(some, SimulatedHazards.PIPE, HazardTies.EFRON);
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
    SimulatedHazards.of(9, 300, true)
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
    for (HazardTerm term :
        ProportionalHazards.fit(patterns, SimulatedHazards.PIPE, HazardTies.EFRON).terms()) {
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
    HazardDesign design =
        SimulatedHazards.PIPE.withFactor("fence", "none", List.of("round")).withNumber("x");
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
    assertThrows(IllegalArgumentException.class, () -> SimulatedHazards.PIPE.encode("D"));
    assertThrows(IllegalArgumentException.class, () -> ONE.encode("twelve"));
    assertEquals(
        List.of("pipe B", "pipe C"),
        SimulatedHazards.PIPE.columns().stream().map(HazardDesign.Column::label).toList());
  }
}
