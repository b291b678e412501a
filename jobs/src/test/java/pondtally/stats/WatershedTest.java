package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;

/** Funnel limits, shrinkage and sample size at their edges. */
class WatershedTest {
  @Test
  void outsideIsWhereTheTailIsBelowHalfOfOneLessTheLevel() {
    for (double expected : new double[] {0.001, 0.01, 0.2, 1, 3.3, 12, 75.5}) {
      PoissonDistribution count = PoissonDistribution.of(expected);
      for (int observed = 0; observed < 150; observed++) {
        double below = count.cumulativeProbability(observed);
        double above = count.survivalProbability(observed - 1);
        assertEquals(
            Math.min(below, above) < 0.001,
            FunnelLimits.outside(observed, expected, FunnelLimits.OUTER),
            observed + " of " + expected);
      }
    }
  }

  @Test
  void nothingExpected() {
    assertEquals(Limits.none(), FunnelLimits.exact(0, FunnelLimits.INNER));
    assertEquals(Limits.none(), FunnelLimits.interpolated(0, FunnelLimits.INNER));
    assertFalse(FunnelLimits.outside(0, 0, FunnelLimits.OUTER));
    assertTrue(FunnelLimits.outside(1, 0, FunnelLimits.OUTER));
    assertThrows(
        IllegalArgumentException.class, () -> FunnelLimits.exact(Double.NaN, FunnelLimits.INNER));
  }

  @Test
  void dispersionByHand() {
    // z = −1, 1, 2, −2 at E = 4: mean square 10/4; too few groups to draw any in.
    long[] observed = {2, 6, 8, 0};
    FunnelLimits.Dispersion found = FunnelLimits.dispersion(observed, new double[] {4, 4, 4, 4});
    assertEquals(2.5, found.ratio().getAsDouble(), 1e-12);
    // P(χ² with 4 degrees > 10) = e^−5·(1 + 5).
    assertEquals(6 * Math.exp(-5), found.pValue().getAsDouble(), 1e-12);
    assertTrue(found.noticed());
    // Of ten, the outermost at either end is drawn in to the next.
    long[] ten = {4, 4, 4, 4, 4, 4, 4, 4, 6, 400};
    double[] four = new double[10];
    Arrays.fill(four, 4);
    assertEquals(2 / 10.0, FunnelLimits.dispersion(ten, four).ratio().getAsDouble(), 1e-12);
    assertFalse(FunnelLimits.dispersion(ten, four).noticed());
    FunnelLimits.Dispersion nothing = FunnelLimits.dispersion(new long[2], new double[2]);
    assertEquals(0, nothing.groups());
    assertEquals(OptionalDouble.empty(), nothing.ratio());
    assertEquals(OptionalDouble.empty(), nothing.pValue());
    assertFalse(nothing.noticed());
    assertThrows(
        IllegalArgumentException.class, () -> FunnelLimits.dispersion(new long[1], new double[2]));
  }

  @Test
  void groupsThatDoNotDifferGetThePooledRatio() {
    assertPooled(1.5, new long[] {3, 6, 9}, new double[] {2, 4, 6});
    assertPooled(0, new long[] {0, 0, 0}, new double[] {2, 4, 6});
    assertPooled(3.5, new long[] {7}, new double[] {2});
    // Less spread than chance: 2, 3, 2 of 2.5 each.
    assertPooled(7 / 7.5, new long[] {2, 3, 2}, new double[] {2.5, 2.5, 2.5});
    assertPooled(1.5, new long[] {3, 6, 0}, new double[] {2, 4, 0});
  }

  private static void assertPooled(double ratio, long[] observed, double[] expected) {
    GammaPoisson fit = GammaPoisson.fit(observed, expected);
    assertEquals(OptionalDouble.empty(), fit.shape());
    assertEquals(OptionalDouble.empty(), fit.rate());
    assertEquals(ratio, fit.pooled().getAsDouble(), 1e-12);
    assertEquals(ratio, fit.mean().getAsDouble(), 1e-12);
    assertEquals(ratio, fit.shrunken(3, 2).getAsDouble(), 1e-12);
    assertEquals(Limits.none(), fit.limits(3, 2, 0.95));
  }

  @Test
  void nothingExpectedAnywhere() {
    GammaPoisson none = GammaPoisson.fit(new long[0], new double[0]);
    assertEquals(OptionalDouble.empty(), none.mean());
    assertEquals(OptionalDouble.empty(), none.shrunken(0, 0));
    long[] one = {1};
    assertThrows(IllegalArgumentException.class, () -> GammaPoisson.fit(one, new double[1]));
    assertThrows(IllegalArgumentException.class, () -> GammaPoisson.fit(one, new double[2]));
    assertThrows(
        IllegalArgumentException.class, () -> GammaPoisson.fit(one, new double[] {Double.NaN}));
  }

  @Test
  void shrunkenRatiosLieBetweenOwnAndMean() {
    long[] observed = {0, 30, 4, 11, 2};
    double[] expected = {8, 10, 9, 10, 1};
    GammaPoisson fit = GammaPoisson.fit(observed, expected);
    double mean = fit.mean().getAsDouble();
    double average = 0;
    for (int i = 0; i < 5; i++) {
      double own = observed[i] / expected[i];
      double shrunken = fit.shrunken(observed[i], expected[i]).getAsDouble();
      assertTrue(shrunken >= Math.min(own, mean) && shrunken <= Math.max(own, mean));
      average += shrunken / 5;
    }
    // At the maximum the mean of the posterior means is the prior's (Clayton & Kaldor 1987, eq. 3).
    assertEquals(mean, average, 1e-9);
    assertEquals(mean, fit.shrunken(0, 0).getAsDouble(), 1e-12);
    // A group without expectation changes nothing.
    GammaPoisson more =
        GammaPoisson.fit(new long[] {0, 30, 4, 11, 2, 0}, new double[] {8, 10, 9, 10, 1, 0});
    assertEquals(fit.shape().getAsDouble(), more.shape().getAsDouble(), 1e-9);
  }

  @Test
  void devicesAndYears() {
    assertEquals(250, SampleSize.devices(50, 0.2));
    assertEquals(625, SampleSize.deviceYears(50, 8));
    assertThrows(IllegalArgumentException.class, () -> SampleSize.failures(1, 0.5, 0.95, 0.8));
    assertThrows(IllegalArgumentException.class, () -> SampleSize.failures(2, 1, 0.95, 0.8));
    assertThrows(IllegalArgumentException.class, () -> SampleSize.failures(2, 0.5, 0.95, 80));
    assertThrows(IllegalArgumentException.class, () -> SampleSize.smallestRatio(0, 0.5, 0.95, 0.8));
    assertThrows(IllegalArgumentException.class, () -> SampleSize.devices(5, 0));
    assertThrows(IllegalArgumentException.class, () -> SampleSize.deviceYears(5, 0));
  }
}
