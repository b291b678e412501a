package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;

class PoissonRateTest {
  @Test
  void limitsAreWhereTheTailsAreHalfAlpha() {
    for (long count : new long[] {1, 2, 7, 40, 999, 123456}) {
      Limits limits = PoissonRate.countLimits(count, 0.95);
      double lower = limits.lower().getAsDouble();
      double upper = limits.upper().getAsDouble();
      int x = (int) count;
      assertEquals(0.025, PoissonDistribution.of(lower).survivalProbability(x - 1), 1e-9);
      assertEquals(0.025, PoissonDistribution.of(upper).cumulativeProbability(x), 1e-9);
    }
  }

  @Test
  void coverageIsNeverBelowTheLevel() {
    Limits[] limits = new Limits[120];
    Arrays.setAll(limits, x -> PoissonRate.countLimits(x, 0.95));
    for (double mean = 0.05; mean < 40; mean += 0.05) {
      PoissonDistribution distribution = PoissonDistribution.of(mean);
      double covered = 0;
      for (int x = 0; x < limits.length; x++) {
        boolean inside =
            limits[x].lower().getAsDouble() <= mean && mean <= limits[x].upper().getAsDouble();
        covered += inside ? distribution.probability(x) : 0;
      }
      assertTrue(covered >= 0.95, mean + " is covered with " + covered);
    }
  }

  @Test
  void withoutExposureThereIsNoRate() {
    assertEquals(OptionalDouble.empty(), PoissonRate.of(0, 0).per100DeviceYears());
    assertEquals(Limits.none(), PoissonRate.of(0, 0).limitsPer100DeviceYears());
    RateRatio ratio = RateRatio.of(PoissonRate.of(3, 10), PoissonRate.of(0, 0));
    assertEquals(OptionalDouble.empty(), ratio.ratio());
    assertEquals(Limits.none(), ratio.limits());
    assertEquals(OptionalDouble.empty(), ratio.pValue());
  }

  @Test
  void ratioWithoutFailuresInTheSecondHasNoUpperLimit() {
    RateRatio ratio = RateRatio.of(PoissonRate.of(6, 120), PoissonRate.of(0, 100));
    assertEquals(OptionalDouble.empty(), ratio.ratio());
    assertEquals(OptionalDouble.empty(), ratio.limits().upper());
    RateRatio turned = RateRatio.of(PoissonRate.of(0, 100), PoissonRate.of(6, 120));
    double lower = ratio.limits().lower().getAsDouble();
    assertEquals(1 / lower, turned.limits().upper().getAsDouble(), 1e-9);
    assertEquals(turned.pValue().getAsDouble(), ratio.pValue().getAsDouble(), 1e-12);
    RateRatio nothing = RateRatio.of(PoissonRate.of(0, 1), PoissonRate.of(0, 1));
    assertEquals(OptionalDouble.empty(), nothing.pValue());
  }

  @Test
  void wrongArgumentsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> PoissonRate.of(-1, 10));
    assertThrows(IllegalArgumentException.class, () -> PoissonRate.of(1, -10));
    assertThrows(IllegalArgumentException.class, () -> PoissonRate.of(1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new PoissonRate(1, 1, 95));
    assertThrows(IllegalArgumentException.class, () -> PoissonRate.countLimits(-1, 0.95));
    PoissonRate other = new PoissonRate(1, 1, 0.9);
    assertThrows(IllegalArgumentException.class, () -> RateRatio.of(PoissonRate.of(1, 1), other));
  }
}
