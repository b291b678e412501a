package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ParametricFitTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  /** Known days: the mean is time at risk over failures, 600 days over 3, late entry taken off. */
  @Test
  void exponentialByHand() {
    ParametricFit fit =
        ExponentialFit.of(
            IntervalCounts.empty().add(0, 100, 100, 2).add(0, 250, NEVER, 1).add(50, 200, 200, 1));
    assertEquals(200, fit.meanLifeDays().orElseThrow().value(), 1e-10);
    assertEquals(200 / Math.sqrt(3), fit.meanLifeDays().orElseThrow().standardError(), 1e-9);
    assertEquals(
        365.25 / 200, ExponentialFit.failuresPerDeviceYear(fit).orElseThrow().value(), 1e-12);
    assertEquals(-3 * Math.log(200) - 3, fit.logLikelihood().getAsDouble(), 1e-12);
    assertEquals(Math.exp(-0.5), fit.survivalAt(100).getAsDouble(), 1e-13);
  }

  /** One reading at 100 days found 3 of 8 failed: S(100) = 5/8. */
  @Test
  void exponentialFromOneReading() {
    ParametricFit fit =
        ExponentialFit.of(IntervalCounts.empty().add(0, 0, 100, 3).add(0, 100, NEVER, 5));
    assertEquals(5 / 8.0, fit.survivalAt(100).getAsDouble(), 1e-12);
    assertEquals(100 / Math.log(8 / 5.0), fit.scaleDays().orElseThrow().value(), 1e-9);
  }

  /**
   * Readings at 100 and 400 days: two shares fix two parameters, so both distributions pass through
   * them.
   */
  @ParameterizedTest
  @EnumSource(names = {"WEIBULL", "LOGNORMAL"})
  void twoReadingsAreMetExactly(ParametricDistribution distribution) {
    ParametricFit fit =
        ParametricFit.of(
            distribution,
            IntervalCounts.empty().add(0, 0, 100, 1).add(0, 100, 400, 4).add(0, 400, NEVER, 5));
    assertEquals(0.9, fit.survivalAt(100).getAsDouble(), 1e-10);
    assertEquals(0.5, fit.survivalAt(400).getAsDouble(), 1e-10);
    assertEquals(400, fit.quantileDays(0.5).orElseThrow().value(), 1e-7);
  }

  @Test
  void whatCannotBeEstimatedSaysWhy() {
    assertReason("no device failed", IntervalCounts.empty().add(0, 100, NEVER, 9));
    assertReason("no device failed", IntervalCounts.empty());
    assertReason(
        "one failure gives a rate but no shape",
        IntervalCounts.empty().add(0, 100, NEVER, 9).add(0, 50, 50, 1));
    assertReason(
        "all failures can have happened at one age, which gives no finite shape",
        IntervalCounts.empty().add(0, 70, 70, 3).add(0, 60, NEVER, 1));
    assertReason(
        "all failures can have happened at one age, which gives no finite shape",
        IntervalCounts.empty().add(0, 50, 80, 3).add(0, 60, 200, 1));
    assertReason(
        "all failures can have happened at one age, which gives no finite shape",
        IntervalCounts.empty().add(0, 50, 100, 3).add(0, 100, 200, 2));
    assertReason(
        "every device had failed by its first visit",
        IntervalCounts.empty().add(0, 0, 100, 3).add(0, 0, 200, 2));
  }

  private static void assertReason(String reason, IntervalCounts counts) {
    ParametricFit fit = WeibullFit.of(counts);
    assertEquals(Optional.of(reason), fit.reason());
    assertEquals(OptionalDouble.empty(), fit.logLikelihood());
    assertEquals(OptionalDouble.empty(), fit.survivalAt(10));
    assertTrue(
        fit.shape().isEmpty()
            && fit.scaleDays().isEmpty()
            && fit.meanLifeDays().isEmpty()
            && fit.quantileDays(0.5).isEmpty());
    assertTrue(
        fit.restrictedMeanDays(100).isEmpty()
            && fit.survivalLimits(3).isEmpty()
            && fit.location().isEmpty());
  }

  @Test
  void oneFailureStillGivesARate() {
    ParametricFit fit =
        ExponentialFit.of(IntervalCounts.empty().add(0, 100, NEVER, 9).add(0, 50, 50, 1));
    assertEquals(950, fit.scaleDays().orElseThrow().value(), 1e-8);
  }

  static IntervalCounts mixture(long seed, double unit) {
    SplittableRandom random = new SplittableRandom(seed);
    IntervalCounts counts = IntervalCounts.empty();
    for (int i = 0; i < 200; i++) {
      double life = 1000 * Math.pow(-Math.log(random.nextDouble()), 1 / 1.6);
      double entry = i % 4 == 0 ? 200 : 0;
      if (life > entry) {
        double seen = entry + 100 * Math.floor((life - entry) / 100);
        if (life > 1500) {
          counts.add(entry * unit, 1500 * unit, NEVER, 1);
        } else if (i % 3 == 0) {
          counts.add(entry * unit, life * unit, life * unit, 1);
        } else {
          counts.add(entry * unit, seen * unit, (seen + 100) * unit, 1);
        }
      }
    }
    return counts;
  }

  /**
   * At the maximum no nearby parameters do better, by the density and distribution written out
   * here.
   */
  @Test
  void weibullIsAMaximumOfItsLikelihood() {
    IntervalCounts counts = mixture(1, 1);
    ParametricFit fit = WeibullFit.of(counts);
    double shape = fit.shape().orElseThrow().value();
    double scale = fit.scaleDays().orElseThrow().value();
    double top = logLikelihood(counts, shape, scale);
    assertEquals(top, fit.logLikelihood().getAsDouble(), 1e-9);
    for (double step : new double[] {-1e-4, 1e-4}) {
      assertTrue(logLikelihood(counts, shape * (1 + step), scale) < top);
      assertTrue(logLikelihood(counts, shape, scale * (1 + step)) < top);
      assertTrue(logLikelihood(counts, shape * (1 + step), scale * (1 + step)) < top);
      assertTrue(logLikelihood(counts, shape * (1 + step), scale * (1 - step)) < top);
    }
  }

  private static double logLikelihood(IntervalCounts counts, double k, double s) {
    double sum = 0;
    for (IntervalCounts.Row row : counts.rows()) {
      double t = row.leftDays();
      double p =
          row.exact()
              ? k / s * Math.pow(t / s, k - 1) * Math.exp(-Math.pow(t / s, k))
              : Math.exp(-Math.pow(t / s, k)) - Math.exp(-Math.pow(row.rightDays() / s, k));
      sum += row.count() * (Math.log(p) + Math.pow(row.entryDays() / s, k));
    }
    return sum;
  }

  @ParameterizedTest
  @EnumSource(ParametricDistribution.class)
  void anotherUnitOfTimeScalesDaysOnly(ParametricDistribution distribution) {
    ParametricFit days = ParametricFit.of(distribution, mixture(2, 1));
    ParametricFit years = ParametricFit.of(distribution, mixture(2, 1 / 365.25));
    assertEquals(
        days.quantileDays(0.3).orElseThrow().value(),
        365.25 * years.quantileDays(0.3).orElseThrow().value(),
        1e-6);
    assertEquals(
        days.restrictedMeanDays(900).orElseThrow().standardError(),
        365.25 * years.restrictedMeanDays(900 / 365.25).orElseThrow().standardError(),
        1e-6);
    days.logSigma()
        .ifPresent(s -> assertEquals(s.value(), years.logSigma().orElseThrow().value(), 1e-9));
  }

  @ParameterizedTest
  @EnumSource(ParametricDistribution.class)
  void cuttingLivesByLateEntryChangesNothing(ParametricDistribution distribution) {
    IntervalCounts whole = mixture(3, 1);
    IntervalCounts cut = IntervalCounts.empty();
    for (IntervalCounts.Row row : whole.rows()) {
      double middle = (row.entryDays() + row.leftDays()) / 2;
      cut.add(row.entryDays(), middle, NEVER, row.count());
      cut.add(middle, row.leftDays(), row.rightDays(), row.count());
    }
    ParametricFit a = ParametricFit.of(distribution, whole);
    ParametricFit b = ParametricFit.of(distribution, cut);
    assertEquals(a.logLikelihood().getAsDouble(), b.logLikelihood().getAsDouble(), 1e-8);
    assertEquals(a.scaleDays().orElseThrow().value(), b.scaleDays().orElseThrow().value(), 1e-6);
    assertEquals(
        a.scaleDays().orElseThrow().standardError(),
        b.scaleDays().orElseThrow().standardError(),
        1e-5);
  }

  /** Means are areas under the curve: compared with a general-purpose integrator. */
  @ParameterizedTest
  @EnumSource(ParametricDistribution.class)
  void meansAreAreas(ParametricDistribution distribution) {
    ParametricFit fit = ParametricFit.of(distribution, mixture(4, 1));
    IterativeLegendreGaussIntegrator integrator =
        new IterativeLegendreGaussIntegrator(20, 1e-10, 1e-10);
    for (double horizon : new double[] {800, 3000}) {
      double area = integrator.integrate(100_000, t -> fit.survivalAt(t).getAsDouble(), 0, horizon);
      assertEquals(area, fit.restrictedMeanDays(horizon).orElseThrow().value(), 1e-5);
    }
    assertEquals(
        fit.meanLifeDays().orElseThrow().value(),
        fit.restrictedMeanDays(1e9).orElseThrow().value(),
        1e-6);
    assertEquals(0, fit.restrictedMeanDays(0).orElseThrow().value());
    ParametricEstimate limits = fit.survivalLimits(400).orElseThrow();
    assertTrue(limits.lower() < limits.value() && limits.value() < limits.upper());
  }

  @Test
  void fitCheckFindsTheGapAndTheShape() {
    IntervalCounts counts =
        IntervalCounts.empty().add(0, 0, 100, 1).add(0, 100, 400, 4).add(0, 400, NEVER, 5);
    IntervalEstimate curve = IntervalEstimate.of(counts);
    ParametricFit weibull = WeibullFit.of(counts);
    ParametricFit exponential = ExponentialFit.of(counts);
    FitCheck good = FitCheck.of(weibull, curve, weibull, exponential);
    FitCheck poor = FitCheck.of(exponential, curve, weibull, exponential);
    assertEquals(0, good.largestGap().getAsDouble(), 1e-9);
    assertEquals(100, poor.gapAtDays().getAsDouble());
    assertEquals(
        0.9 - exponential.survivalAt(100).getAsDouble(), poor.largestGap().getAsDouble(), 1e-9);
    assertEquals(
        2 * (weibull.logLikelihood().getAsDouble() - exponential.logLikelihood().getAsDouble()),
        poor.weibullAgainstExponential().orElseThrow().statistic(),
        1e-12);
    ParametricFit none = WeibullFit.of(IntervalCounts.empty().add(0, 5, NEVER, 1));
    assertEquals(
        new FitCheck(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty()),
        FitCheck.of(none, curve, none, exponential));
  }

  @Test
  void weibullHazardRisesWithShape() {
    ParametricFit fit = WeibullFit.of(mixture(5, 1));
    double k = fit.shape().orElseThrow().value();
    double s = fit.scaleDays().orElseThrow().value();
    double h = 1e-4;
    double slope =
        (Math.log(fit.survivalAt(500 - h).getAsDouble())
                - Math.log(fit.survivalAt(500 + h).getAsDouble()))
            / (2 * h);
    assertEquals(slope, WeibullFit.hazardPerDay(fit, 500).orElseThrow(), 1e-8);
    assertTrue(k > 1 && s > 0);
  }
}
