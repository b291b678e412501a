package pondtally.analysis;

import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import pondtally.stats.ParametricFit;

/**
 * Weibull intensity of failure by age, H(t) = (t/scale)^shape, with draws of its parameters from
 * their approximate normal distribution: draw 0 holds the estimates, the others come in pairs that
 * mirror each other.
 *
 * @param group the group whose stretches at risk it was fitted to
 * @param shape by draw
 * @param logScale log of the scale in days, by draw
 */
record SeasonFit(String group, double[] shape, double[] logScale) {

  /**
   * The fit with its draws; empty where nothing could be estimated.
   *
   * @param draws odd: one for the estimates, and pairs
   * @param seed of the program's resampling
   */
  static Optional<SeasonFit> of(String group, ParametricFit fit, int draws, long seed) {
    if (fit.reason().isPresent()) {
      return Optional.empty();
    }
    double[] shape = new double[draws];
    double[] logScale = new double[draws];
    Random random = seeded(seed, "fit " + group);
    for (int i = 0; i < draws; i += i == 0 ? 1 : 2) {
      double first = i == 0 ? 0 : random.nextGaussian();
      double second = i == 0 ? 0 : random.nextGaussian();
      set(fit.displaced(first, second).orElseThrow(), i, shape, logScale);
      if (i > 0) {
        set(fit.displaced(-first, -second).orElseThrow(), i + 1, shape, logScale);
      }
    }
    return Optional.of(new SeasonFit(group, shape, logScale));
  }

  private static void set(double[] drawn, int i, double[] shape, double[] logScale) {
    logScale[i] = drawn[0];
    shape[i] = Math.exp(-drawn[1]);
  }

  /** A generator that depends on the seed and on what is drawn, not on the order of drawing. */
  static Random seeded(long seed, String what) {
    return new Random(new SplittableRandom(seed + 31L * what.hashCode()).nextLong());
  }

  /** H at an age given by its logarithm in days (−∞ at birth), in one draw. */
  double cumulativeHazard(double logDays, int draw) {
    return Math.exp(shape[draw] * (logDays - logScale[draw]));
  }

  /** H at an age in days, at the estimates. */
  double cumulativeHazard(double days) {
    return days <= 0 ? 0 : cumulativeHazard(Math.log(days), 0);
  }
}
