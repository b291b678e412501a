package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The cheapest visit interval against a simulation by brute force, and against a closed form. */
class VisitIntervalTest {

  private static final double REPLACED = 0.3;
  private static final double SHAPE = 1.4;
  private static final double SCALE = 1500;
  private static final double HORIZON = 10 * 365.25;
  private static final double VISIT_USD = 60;
  private static final double DAMAGE_USD = 2000;
  private static final int DEVICES = 20_000;

  private static final SeasonFit FIT =
      new SeasonFit("all", new double[] {SHAPE}, new double[] {Math.log(SCALE)});

  private static double costUsd(int days, double downShare) {
    return VISIT_USD * 365.25 / days + DAMAGE_USD * downShare;
  }

  /** Whole visit intervals on both sides of the horizon, weighted by how near they come to it. */
  private static double simulatedDownShare(int days, long seed) {
    int whole = (int) (HORIZON / days);
    double rest = HORIZON / days - whole;
    return (1 - rest) * simulated(days, whole, seed) + rest * simulated(days, whole + 1, seed);
  }

  /** Lives of devices, one after another: fails, lies until the next visit, is mended, goes on. */
  private static double simulated(int days, int visits, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double horizon = (double) days * visits;
    double down = 0;
    for (int device = 0; device < DEVICES; device++) {
      double born = 0;
      double failsOn = born + next(0, random);
      while (failsOn < horizon) {
        double visit = Math.ceil(failsOn / days) * days;
        down += visit - failsOn;
        born = random.nextDouble() < REPLACED ? visit : born;
        failsOn = born + next(visit - born, random);
      }
    }
    return down / (DEVICES * horizon);
  }

  private static double next(double age, SplittableRandom random) {
    double hazard = Math.pow(age / SCALE, SHAPE) - Math.log(1 - random.nextDouble());
    return SCALE * Math.pow(hazard, 1 / SHAPE);
  }

  @Test
  void downtimeAgreesWithTheSimulation() {
    for (int days : new int[] {60, 180, 365, 700}) {
      double computed = VisitDowntime.share(FIT, days, HORIZON, REPLACED);
      // Standard error of the simulation: below 0.6 per cent of the share at each interval.
      assertEquals(computed, simulatedDownShare(days, days), 0.02 * computed, days + " days");
    }
  }

  @Test
  void theCheapestIntervalAgreesWithTheSimulation() {
    int computed = 0;
    int simulated = 0;
    double least = Double.POSITIVE_INFINITY;
    double leastSimulated = Double.POSITIVE_INFINITY;
    // The same random numbers at each interval, so that the curve is smooth enough to have a least.
    for (int days = 30; days <= 400; days += 5) {
      double cost = costUsd(days, VisitDowntime.share(FIT, days, HORIZON, REPLACED));
      double other = costUsd(days, simulatedDownShare(days, 7));
      computed = cost < least ? days : computed;
      simulated = other < leastSimulated ? days : simulated;
      least = Math.min(least, cost);
      leastSimulated = Math.min(leastSimulated, other);
    }
    assertEquals(computed, simulated, 20, "days between visits");
    assertEquals(least, leastSimulated, 0.01 * least, "dollars a year");
    // What is chosen costs no more than 1 per cent above the least of the simulation.
    assertTrue(costUsd(computed, simulatedDownShare(computed, 7)) < 1.01 * leastSimulated);
  }

  /**
   * With a constant hazard λ and every failure mended, a share 1 − (1 − e^(−λd))/(λd) of each
   * interval of d days is lost: elementary, no source.
   */
  @Test
  void aConstantHazardGivesTheClosedForm() {
    SeasonFit constant = new SeasonFit("all", new double[] {1}, new double[] {Math.log(1000)});
    double x = 0.1;
    double lost = 1 + Math.expm1(-x) / x;
    assertEquals(0.04837418, lost, 1e-8);
    assertEquals(lost, VisitDowntime.share(constant, 100, HORIZON, 0), 1e-7);
    // Replacement changes nothing where age does not matter.
    assertEquals(lost, VisitDowntime.share(constant, 100, HORIZON, 0.4), 1e-7);
  }

  @Test
  void theCurveHasNoRipples() {
    double before = VisitDowntime.share(FIT, 30, HORIZON, REPLACED);
    for (int days = 31; days <= 730; days++) {
      double share = VisitDowntime.share(FIT, days, HORIZON, REPLACED);
      assertTrue(share > before, days + " days");
      before = share;
    }
  }
}
