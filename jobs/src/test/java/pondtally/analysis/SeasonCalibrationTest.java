package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How often the prediction limits of next year's failures hold what next year brings, in invented
 * programs that live one year past their data cut. Judged by the binomial.
 */
class SeasonCalibrationTest {

  private record Held(double at90, double at95, double bias) {

    static Held of(int programs, int sites, double siteSpread) {
      int in90 = 0;
      int in95 = 0;
      double expected = 0;
      double found = 0;
      for (int seed = 1; seed <= programs; seed++) {
        SeasonWorld world = SeasonWorld.of(seed, sites, siteSpread);
        SeasonSums sums = SeasonForecast.all(world.devices, world.tally, world.settings);
        in90 += holds(sums.limits(0, 0.05), world.foundNextYear) ? 1 : 0;
        in95 += holds(sums.limits(0, 0.025), world.foundNextYear) ? 1 : 0;
        expected += sums.expected(0);
        found += world.foundNextYear;
      }
      return new Held((double) in90 / programs, (double) in95 / programs, expected / found - 1);
    }

    private static boolean holds(long[] limits, int found) {
      return limits[0] <= found && found <= limits[1];
    }
  }

  /**
   * 100 programs: a true share of 90 per cent lies below 80 or above 98 in one of 500 such tests.
   */
  @Test
  void ninetyPerCentLimitsHoldAboutNinetyPerCent() {
    Held held = Held.of(100, 30, 0);
    assertTrue(held.at90 >= 0.80 && held.at90 <= 0.98, held.toString());
    assertTrue(held.at95 >= held.at90, held.toString());
    assertTrue(Math.abs(held.bias) < 0.05, held.toString());
  }

  @Test
  @Tag("benchmark")
  void limitsHoldWhatTheyPromiseInAThousandPrograms() {
    Held held = Held.of(1000, 100, 0);
    System.out.println("like sites: " + held);
    assertTrue(held.at90 >= 0.88 && held.at90 <= 0.92, held.toString());
    assertTrue(held.at95 >= 0.935 && held.at95 <= 0.975, held.toString());
    assertTrue(Math.abs(held.bias) < 0.01, held.toString());
  }

  @Test
  @Tag("benchmark")
  void theyHoldItWhereSitesDifferByMoreThanTheModelKnows() {
    Held held = Held.of(1000, 100, 0.5);
    System.out.println("unlike sites: " + held);
    assertTrue(held.at90 >= 0.88 && held.at90 <= 0.92, held.toString());
  }
}
