package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

class BenefitYearsTest {

  private static final double YEAR = 365.25;

  /**
   * With a constant hazard every interval between visits is alike: (1 − e^(−λu))/(λu) of it works,
   * and 1 − e^(−λu) of the visits find a failure, whether they repair or replace.
   */
  @Test
  void aConstantHazardHasAClosedForm() {
    double perDay = 1 / 900.0;
    int revisit = 100;
    int years = 400;
    BenefitYears ahead = BenefitYears.of(days -> days * perDay, revisit, years, 0.4);
    double working = 0;
    double visits = 0;
    double repairs = 0;
    double replacements = 0;
    for (int t = 1; t <= years; t++) {
      working += ahead.workingShare(t);
      visits += ahead.visits(t);
      repairs += ahead.repairs(t);
      replacements += ahead.replacements(t);
    }
    double fails = -Math.expm1(-perDay * revisit);
    // 400 years of 365.25 days are exactly 1,461 intervals of 100 days.
    assertEquals(1461, visits, 1e-6);
    assertEquals(0.6 * fails * 1461, repairs, 1e-6);
    assertEquals(0.4 * fails * 1461, replacements, 1e-6);
    // Trapezoids a day wide: relative error λ²/12 = 1e-7.
    assertEquals(fails / (perDay * revisit) * years, working, 1e-6 * years);
  }

  /** Ten thousand devices drawn from a Weibull distribution and followed visit by visit. */
  @Test
  void agreesWithDevicesFollowedOneByOne() {
    double shape = 2;
    double scale = 1500;
    int revisit = 180;
    int devices = 10_000;
    BenefitFit fit = new BenefitFit("all", shape, scale);
    BenefitYears ahead = BenefitYears.of(fit::cumulativeHazard, revisit, 10, 0.3);
    double[] working = new double[10];
    double[] failures = new double[10];
    Random random = new Random(20251231);
    for (int i = 0; i < devices; i++) {
      follow(random, shape, scale, revisit, working, failures);
    }
    for (int t = 1; t <= 10; t++) {
      // Four standard errors: a device's share of a year has a deviation below 0.5, and so has the
      // number of failures in a year.
      double error = 4 * 0.5 / Math.sqrt(devices);
      assertEquals(working[t - 1] / devices, ahead.workingShare(t), error, "year " + t);
      assertEquals(
          failures[t - 1] / devices, ahead.repairs(t) + ahead.replacements(t), error, "year " + t);
    }
  }

  private static void follow(
      Random random, double shape, double scale, int revisit, double[] working, double[] failures) {
    double horizon = 10 * YEAR;
    double born = 0;
    for (int k = 0; k * revisit < horizon; k++) {
      double start = (double) k * revisit;
      double age = start - born;
      // Age at failure given that it works now: −log S grows by a standard exponential.
      double hazard = Math.pow(age / scale, shape) - Math.log(1 - random.nextDouble());
      double failsAt = born + scale * Math.pow(hazard, 1 / shape);
      double end = start + revisit;
      for (double day = start; day < Math.min(Math.min(end, failsAt), horizon); day++) {
        double part = Math.min(1, Math.min(Math.min(end, failsAt), horizon) - day);
        working[Math.min(9, (int) (day / YEAR))] += part / YEAR;
      }
      if (failsAt < end && end <= horizon) {
        failures[Math.min(9, (int) Math.ceil(end / YEAR) - 1)]++;
        born = random.nextDouble() < 0.3 ? end : born;
      }
    }
  }

  @Test
  void theLongRunCostOfAYearFollowsFromItsEvents() {
    BenefitYears ahead = BenefitYears.of(days -> 0, 365, 3, 0);
    BenefitUnits units = new BenefitUnits(500, 1000, 50, 200, 900);
    assertEquals(1000, ahead.costUsd(units, 0));
    assertEquals(50, ahead.costUsd(units, 1));
    assertEquals(1000 + 3 * 50, ahead.costUsd(units, 0.0), 1e-9);
    assertEquals(-1000, ahead.netUsd(units)[0]);
    assertEquals(450, ahead.netUsd(units)[3], 1e-9);
  }
}
