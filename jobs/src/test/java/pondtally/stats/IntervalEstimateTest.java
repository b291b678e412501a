package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IntervalEstimateTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  /**
   * Days known: 4 devices fail at 100, are last seen at 200, fail at 300, are last seen at 400:
   * S(300) = 3/4 · 1/2.
   */
  @Test
  void knownDaysGiveTheProductLimitCurve() {
    IntervalEstimate estimate =
        IntervalEstimate.of(
            IntervalCounts.empty()
                .add(0, 100, 100, 1)
                .add(0, 200, NEVER, 1)
                .add(0, 300, 300, 1)
                .add(0, 400, NEVER, 1));
    assertEquals(1.0, estimate.survivalAt(99.9).getAsDouble(), 1e-15);
    assertEquals(3 / 4.0, estimate.survivalAt(100).getAsDouble(), 1e-12);
    assertEquals(3 / 8.0, estimate.survivalAt(300).getAsDouble(), 1e-12);
    assertEquals(OptionalDouble.empty(), estimate.survivalAt(401));
    assertEquals(
        new IntervalEstimate.Bounds(0, estimate.survivalAt(300).getAsDouble()),
        estimate.survivalBounds(401));
    assertEquals(Math.log(1 / 4.0 * 3 / 4.0 * 3 / 8.0 * 3 / 8.0), estimate.logLikelihood(), 1e-12);
  }

  /**
   * One reading each (Ayer et al. 1955): failed 1 of 2 at day 1, 0 of 2 at day 2, 2 of 2 at day 3;
   * days 1 and 2 pool to 1/4.
   */
  @Test
  void singleReadingsPoolAdjacentViolators() {
    IntervalEstimate estimate =
        IntervalEstimate.of(
            IntervalCounts.empty()
                .add(0, 0, 1, 1)
                .add(0, 1, NEVER, 1)
                .add(0, 2, NEVER, 2)
                .add(0, 0, 3, 2));
    assertEquals(3 / 4.0, estimate.survivalAt(2).getAsDouble(), 1e-12);
    assertEquals(0.0, estimate.survivalAt(3).getAsDouble(), 1e-12);
    assertEquals(
        4 * Math.log(0.75) - Math.log(0.75) + Math.log(0.25), estimate.logLikelihood(), 1e-12);
  }

  /** Late entry: at risk are 2 at day 2, 2 at day 3, 1 at day 4, so S falls to 1/2, 1/4, 0. */
  @Test
  void lateEntryWithKnownDays() {
    IntervalEstimate estimate =
        IntervalEstimate.of(
            IntervalCounts.empty().add(0, 2, 2, 1).add(1, 3, 3, 1).add(2.5, 4, 4, 1));
    assertEquals(1 / 2.0, estimate.survivalAt(2).getAsDouble(), 1e-12);
    assertEquals(1 / 4.0, estimate.survivalAt(3).getAsDouble(), 1e-12);
    assertEquals(0.0, estimate.survivalAt(4).getAsDouble(), 1e-12);
    assertEquals(OptionalDouble.empty(), estimate.emptiedAtDays());
  }

  /**
   * Frydman 1994: an entry age ends an innermost interval, here (0, 5], which Turnbull's own rule
   * would miss.
   */
  @Test
  void entryAgesBoundTheSupport() {
    List<IntervalEstimate.Mass> masses =
        IntervalEstimate.of(
                IntervalCounts.empty().add(0, 0, 10, 1).add(5, 6, 8, 1).add(5, 9, NEVER, 1))
            .masses();
    assertEquals(
        List.of(5.0, 8.0, 10.0), masses.stream().map(IntervalEstimate.Mass::rightDays).toList());
    assertEquals(0.0, masses.get(0).leftDays());
  }

  /**
   * A life that enters at 138 and is last seen at 178 tells nothing between (135, 138] and (178,
   * 193]: they are one interval.
   */
  @Test
  void neighborsThatNothingTellsApartAreOne() {
    List<IntervalEstimate.Mass> masses =
        IntervalEstimate.of(
                IntervalCounts.empty()
                    .add(0, 135, NEVER, 3)
                    .add(138, 178, NEVER, 1)
                    .add(0, 0, 193, 1))
            .masses();
    assertEquals(135, masses.get(0).leftDays());
    assertEquals(193, masses.get(0).rightDays());
  }

  /**
   * All at risk fail by day 1 and the next life enters on day 2: nothing is known beyond, and the
   * age is said.
   */
  @Test
  void livesThatRunOutAreReported() {
    IntervalEstimate estimate =
        IntervalEstimate.of(
            IntervalCounts.empty().add(0, 1, 1, 2).add(2, 3, 3, 1).add(2, 4, NEVER, 1));
    assertEquals(OptionalDouble.of(1), estimate.emptiedAtDays());
    assertEquals(0.0, estimate.survivalAt(1).getAsDouble());
    assertEquals(2 * Math.log(0.5), estimate.logLikelihood(), 1e-12, "the later part still counts");
  }

  @Test
  void nobodyAndNoFailure() {
    IntervalEstimate none = IntervalEstimate.of(IntervalCounts.empty());
    assertEquals(List.of(), none.masses());
    assertEquals(OptionalDouble.empty(), none.survivalAt(0));
    IntervalEstimate working =
        IntervalEstimate.of(IntervalCounts.empty().add(0, 50, NEVER, 3).add(10, 80, NEVER, 1));
    assertEquals(OptionalDouble.of(1), working.survivalAt(80));
    assertEquals(OptionalDouble.empty(), working.survivalAt(80.5));
    assertTrue(working.quantile(0.5).isEmpty());
    assertTrue(working.meanLifeDays(81).isEmpty());
    assertEquals(new IntervalEstimate.Bounds(80, 80), working.meanLifeDays(80).orElseThrow());
  }

  /** Half fails in (0, 10], half in (20, 40]: inside an interval only bounds are known. */
  @Test
  void boundsQuantilesAndMean() {
    IntervalEstimate estimate =
        IntervalEstimate.of(IntervalCounts.empty().add(0, 0, 10, 5).add(0, 20, 40, 5));
    assertEquals(new IntervalEstimate.Bounds(0.5, 1), rounded(estimate.survivalBounds(4)));
    assertEquals(new IntervalEstimate.Bounds(0.5, 0.5), rounded(estimate.survivalBounds(20)));
    assertEquals(new IntervalEstimate.Bounds(0, 0.5), rounded(estimate.survivalBounds(39.9)));
    assertEquals(10, estimate.quantile(0.5).orElseThrow().rightDays());
    assertEquals(40, estimate.quantile(0.51).orElseThrow().rightDays());
    assertEquals(
        new IntervalEstimate.Bounds(10, 25), rounded(estimate.meanLifeDays(40).orElseThrow()));
    assertEquals(10, estimate.masses().get(0).atRisk());
    assertEquals(5, estimate.masses().get(1).expectedFailures(), 1e-9);
  }

  private static IntervalEstimate.Bounds rounded(IntervalEstimate.Bounds b) {
    return new IntervalEstimate.Bounds(
        Math.rint(b.lower() * 1e9) / 1e9, Math.rint(b.upper() * 1e9) / 1e9);
  }

  /**
   * Self-consistency iterated to the end (Turnbull 1976, with ghosts for late entry) reaches the
   * same likelihood and no higher one.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void agreesWithSelfConsistency(long seed) {
    IntervalCounts counts = SimulatedVisits.of(40, seed, 900);
    IntervalEstimate estimate = IntervalEstimate.of(counts);
    double[] em = IntervalEstimateSelfConsistency.masses(counts.rows(), estimate.masses(), 200_000);
    double byEm =
        IntervalEstimateSelfConsistency.logLikelihood(counts.rows(), estimate.masses(), em);
    double[] own = estimate.masses().stream().mapToDouble(IntervalEstimate.Mass::mass).toArray();
    assertEquals(
        IntervalEstimateSelfConsistency.logLikelihood(counts.rows(), estimate.masses(), own),
        estimate.logLikelihood(),
        1e-9);
    assertEquals(byEm, estimate.logLikelihood(), 1e-7);
    assertTrue(estimate.logLikelihood() >= byEm - 1e-10);
    assertTrue(estimate.residual() < 1e-10, () -> "residual " + estimate.residual());
  }

  @Test
  void theOrderOfLivesDoesNotMatter() {
    IntervalCounts whole = SimulatedVisits.of(200, 9);
    IntervalCounts parts = IntervalCounts.empty();
    List<IntervalCounts.Row> rows = whole.rows();
    for (int i = rows.size() - 1; i >= 0; i--) {
      IntervalCounts.Row row = rows.get(i);
      for (long k = 0; k < row.count(); k++) {
        parts.merge(
            IntervalCounts.empty().add(row.entryDays(), row.leftDays(), row.rightDays(), 1));
      }
    }
    assertEquals(IntervalEstimate.of(whole).masses(), IntervalEstimate.of(parts).masses());
  }

  @Test
  void timeInAnotherUnitGivesTheSameMasses() {
    IntervalEstimate days = IntervalEstimate.of(SimulatedVisits.of(200, 9));
    IntervalCounts halves = IntervalCounts.empty();
    for (IntervalCounts.Row row : days.rows()) {
      halves.add(2 * row.entryDays(), 2 * row.leftDays(), 2 * row.rightDays(), row.count());
    }
    IntervalEstimate doubled = IntervalEstimate.of(halves);
    assertEquals(days.logLikelihood(), doubled.logLikelihood(), 1e-10);
    for (int j = 0; j < days.masses().size(); j++) {
      assertEquals(2 * days.masses().get(j).rightDays(), doubled.masses().get(j).rightDays());
      assertEquals(days.masses().get(j).mass(), doubled.masses().get(j).mass(), 1e-9);
    }
  }

  /** A life cut in two at an age at which it was known to work is the same evidence. */
  @Test
  void cuttingALifeByLateEntryChangesNothing() {
    IntervalEstimate whole = IntervalEstimate.of(SimulatedVisits.of(200, 4));
    IntervalCounts cut = IntervalCounts.empty();
    for (IntervalCounts.Row row : whole.rows()) {
      double middle = row.entryDays() + Math.floor((row.leftDays() - row.entryDays()) / 2);
      cut.add(row.entryDays(), middle, NEVER, row.count());
      cut.add(middle, row.leftDays(), row.rightDays(), row.count());
    }
    IntervalEstimate pieces = IntervalEstimate.of(cut);
    assertEquals(whole.logLikelihood(), pieces.logLikelihood(), 1e-8);
    for (double days = 0; days < 6000; days += 50) {
      IntervalEstimate.Bounds a = whole.survivalBounds(days);
      IntervalEstimate.Bounds b = pieces.survivalBounds(days);
      assertTrue(
          b.lower() <= a.upper() + 1e-7 && b.upper() >= a.lower() - 1e-7,
          a + " and " + b + " at " + days);
    }
  }

  @Test
  void weightsStandForRepeatedLives() {
    IntervalEstimate first = IntervalEstimate.of(SimulatedVisits.of(300, 5));
    SplittableRandom random = new SplittableRandom(3);
    double[] weights = new double[first.rows().size()];
    IntervalCounts drawn = IntervalCounts.empty();
    for (int i = 0; i < weights.length; i++) {
      IntervalCounts.Row row = first.rows().get(i);
      weights[i] = random.nextInt(3);
      drawn.add(row.entryDays(), row.leftDays(), row.rightDays(), (long) weights[i]);
      assertEquals(i, first.rowOf(row.entryDays(), row.leftDays(), row.rightDays()).getAsInt());
    }
    IntervalEstimate warm = first.reweighted(weights);
    IntervalEstimate cold = IntervalEstimate.of(drawn);
    assertEquals(cold.logLikelihood(), warm.logLikelihood(), 1e-9);
    assertEquals(cold.masses().size(), warm.masses().size());
    for (int j = 0; j < cold.masses().size(); j++) {
      assertEquals(
          cold.masses().get(j).survivalAfter(), warm.masses().get(j).survivalAfter(), 1e-8);
    }
    assertThrows(IllegalArgumentException.class, () -> first.reweighted(new double[] {1}));
  }

  @Test
  void aRowOfWeightZeroIsAsIfItWereNotThere() {
    IntervalEstimate first =
        IntervalEstimate.of(
            IntervalCounts.empty().add(0, 1, 1, 1).add(0, 2, 5, 1).add(0, 4, NEVER, 1));
    IntervalEstimate without = first.reweighted(new double[] {0, 1, 1});
    assertEquals(
        IntervalEstimate.of(IntervalCounts.empty().add(0, 2, 5, 1).add(0, 4, NEVER, 1)).masses(),
        without.masses());
    assertEquals(List.of(), first.reweighted(new double[3]).masses());
  }

  @Test
  void tooManyDistinctFollowUpsAreRoundedOutwardAndSaid() {
    IntervalCounts counts = SimulatedVisits.of(2000, 6);
    assertEquals(0, IntervalEstimate.of(counts).roundedToDays());
    IntervalEstimate weeks = IntervalEstimate.of(counts, counts.roundedOutward(7).distinct());
    IntervalEstimate months = IntervalEstimate.of(counts, counts.roundedOutward(7).distinct() - 1);
    assertEquals(7, weeks.roundedToDays());
    assertEquals(30, months.roundedToDays());
    assertEquals(2000, months.rows().stream().mapToLong(IntervalCounts.Row::count).sum());
    for (IntervalCounts.Row row : counts.rows()) {
      IntervalCounts.Row wide =
          months
              .rows()
              .get(months.rowOf(row.entryDays(), row.leftDays(), row.rightDays()).getAsInt());
      assertTrue(
          wide.leftDays() <= row.leftDays()
              && wide.rightDays() >= row.rightDays()
              && wide.entryDays() <= wide.leftDays());
    }
  }

  @Test
  void roundingKeepsKnownDaysAndEntryHonest() {
    assertEquals(new IntervalCounts.Row(0, 7, 14, 0), IntervalCounts.outward(0, 14, 14, 7));
    assertEquals(new IntervalCounts.Row(7, 14, 21, 0), IntervalCounts.outward(3, 15, 20, 7));
    assertEquals(
        new IntervalCounts.Row(14, 14, NEVER, 0), IntervalCounts.outward(15, 16, NEVER, 7));
  }

  @Test
  void impossibleFollowUpsAreRefused() {
    IntervalCounts counts = IntervalCounts.empty();
    String message =
        assertThrows(IllegalArgumentException.class, () -> counts.add(5, 4, 6, 1)).getMessage();
    assertTrue(message.contains("E=5.0, L=4.0, R=6.0"), message);
    assertThrows(IllegalArgumentException.class, () -> counts.add(0, 6, 4, 1));
    assertThrows(IllegalArgumentException.class, () -> counts.add(4, 4, 4, 1));
    assertThrows(IllegalArgumentException.class, () -> counts.add(0, NEVER, NEVER, 1));
    assertThrows(IllegalArgumentException.class, () -> counts.add(0, Double.NaN, 4, 1));
    assertThrows(IllegalArgumentException.class, () -> counts.add(0, 1, 4, -1));
    assertEquals(0, counts.lives());
  }
}
