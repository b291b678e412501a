package pondtally.stats;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/** Quantiles and tails of the standard distributions, by Apache Commons Statistics. */
final class Quantile {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

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
    return GammaDistribution.of(shape, 1).inverseCumulativeProbability(probability);
  }

  /** Quantile of the beta distribution, both parameters above 0. */
  static double beta(double probability, double alpha, double beta) {
    return BetaDistribution.of(alpha, beta).inverseCumulativeProbability(probability);
  }

  /** Quantile of Student's t; degrees of freedom above 0. */
  static double studentT(double probability, double degreesOfFreedom) {
    return TDistribution.of(degreesOfFreedom).inverseCumulativeProbability(probability);
  }

  static double checkLevel(double level) {
    if (!(level > 0 && level < 1)) {
      throw new IllegalArgumentException("level " + level + ", expected above 0 and below 1");
    }
    return level;
  }
}
