package pondtally.stats;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Quantiles and tails of the standard distributions, by Apache Commons Statistics, with the
 * quantiles of gamma and beta brought to full double precision by Newton's steps (the library's own
 * search stops at an absolute error of 1e-9, which is too coarse for limits near 0).
 */
final class Quantile {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final int NEWTON_STEPS = 8;

  private Quantile() {}

  /** Standard normal quantile; infinite at 0 and 1. */
  static double normal(double probability) {
    return NORMAL.inverseCumulativeProbability(probability);
  }

  /** z of a two-sided level, such as 1.959963984540054 for 0.95. */
  static double twoSided(double level) {
    return -normal((1 - checkLevel(level)) / 2);
  }

  /** P(Z ≤ z) for a standard normal Z. */
  static double normalBelow(double z) {
    return NORMAL.cumulativeProbability(z);
  }

  /** 2 P(Z > |z|) for a standard normal Z. */
  static double normalTwoSidedP(double z) {
    return Math.min(1, 2 * NORMAL.survivalProbability(Math.abs(z)));
  }

  /** P(X > x) for X chi-square with the degrees of freedom given (at least 1). */
  static double chiSquareAbove(double x, int degreesOfFreedom) {
    return ChiSquaredDistribution.of(degreesOfFreedom).survivalProbability(x);
  }

  /** Quantile of the gamma distribution with the shape given (above 0) and scale 1. */
  static double gamma(double probability, double shape) {
    return polished(GammaDistribution.of(shape, 1), probability);
  }

  /** Quantile of the beta distribution, both parameters above 0. */
  static double beta(double probability, double alpha, double beta) {
    return polished(BetaDistribution.of(alpha, beta), probability);
  }

  static double checkLevel(double level) {
    if (!(level > 0 && level < 1)) {
      throw new IllegalArgumentException("level " + level + ", expected above 0 and below 1");
    }
    return level;
  }

  private static double polished(ContinuousDistribution distribution, double probability) {
    double x = distribution.inverseCumulativeProbability(probability);
    for (int i = 0; i < NEWTON_STEPS; i++) {
      double density = distribution.density(x);
      double next = x - excess(distribution, x, probability) / density;
      if (!(density > 0) || !(next > distribution.getSupportLowerBound()) || next == x) {
        return x;
      }
      x = next;
    }
    return x;
  }

  /** F(x) − p, from the tail in which it loses fewest digits. */
  private static double excess(ContinuousDistribution distribution, double x, double probability) {
    return probability <= 0.5
        ? distribution.cumulativeProbability(x) - probability
        : (1 - probability) - distribution.survivalProbability(x);
  }
}
