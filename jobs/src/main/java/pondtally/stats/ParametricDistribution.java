package pondtally.stats;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Distributions of log T = μ + σW: the standard variable W of each. Weibull: W has the
 * smallest-extreme-value distribution, shape = 1/σ, scale = exp(μ), S(t) = exp(−(t/scale)^shape).
 * Exponential: the same with σ = 1. Lognormal: W is normal.
 */
public enum ParametricDistribution {
  /** S(t) = exp(−(t/scale)^shape). */
  WEIBULL(true),
  /** S(t) = exp(−t/mean). */
  EXPONENTIAL(false),
  /** log T is normal. */
  LOGNORMAL(true);

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final double HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);

  private final boolean scaled;

  ParametricDistribution(boolean scaled) {
    this.scaled = scaled;
  }

  /** Whether σ is estimated. */
  boolean scaled() {
    return scaled;
  }

  /** log P(W &gt; z). */
  double logSurvival(double z) {
    return this == LOGNORMAL ? logNormalTail(z) : -Math.exp(z);
  }

  /** z with P(W ≤ z) = share. */
  double quantile(double share) {
    return this == LOGNORMAL
        ? NORMAL.inverseCumulativeProbability(share)
        : Math.log(-Math.log1p(-share));
  }

  /** Writes log f(z), and its first and second derivatives, into out[0..2]. */
  void density(double z, double[] out) {
    if (this == LOGNORMAL) {
      out[0] = -z * z / 2 - HALF_LOG_TWO_PI;
      out[1] = -z;
      out[2] = -1;
    } else {
      double h = Math.exp(z);
      out[0] = z - h;
      out[1] = 1 - h;
      out[2] = -h;
    }
  }

  /**
   * Writes log P(a &lt; W ≤ b) and its derivatives ∂a, ∂b, ∂a∂a, ∂a∂b, ∂b∂b into out[0..5]; a may
   * be −∞, b may be ∞.
   */
  void interval(double a, double b, double[] out) {
    double lower = share(a, a, b);
    double upper = share(b, a, b);
    out[0] = logInterval(a, b);
    out[1] = -lower;
    out[2] = upper;
    out[3] = -lower * slope(a) - lower * lower;
    out[4] = lower * upper;
    out[5] = upper * slope(b) - upper * upper;
  }

  private double logInterval(double a, double b) {
    if (b == Double.POSITIVE_INFINITY) {
      return a == Double.NEGATIVE_INFINITY ? 0 : logSurvival(a);
    }
    if (this != LOGNORMAL) {
      double gap = Math.exp(b) - Math.exp(a);
      return -Math.exp(a) + (gap > 0.7 ? Math.log1p(-Math.exp(-gap)) : Math.log(-Math.expm1(-gap)));
    }
    // The normal is symmetric: work in the tail where differences keep their digits.
    return a + b > 0
        ? logDifference(logNormalTail(a), logNormalTail(b))
        : logDifference(logNormalTail(-b), logNormalTail(-a));
  }

  private static double logDifference(double larger, double smaller) {
    return larger + Math.log(-Math.expm1(smaller - larger));
  }

  /** f(z)/P(a &lt; W ≤ b), 0 at an infinite end. */
  private double share(double z, double a, double b) {
    if (Double.isInfinite(z)) {
      return 0;
    }
    double[] f = new double[3];
    density(z, f);
    return Math.exp(f[0] - logInterval(a, b));
  }

  /** f′/f. */
  private double slope(double z) {
    if (Double.isInfinite(z)) {
      return 0;
    }
    double[] f = new double[3];
    density(z, f);
    return f[1];
  }

  /**
   * log of the upper normal tail; beyond 30 by its asymptotic series, where the tail itself would
   * underflow at 38.
   */
  private static double logNormalTail(double z) {
    if (z == Double.NEGATIVE_INFINITY) {
      return 0;
    }
    if (z < 30) {
      return z < -1
          ? Math.log1p(-NORMAL.cumulativeProbability(z))
          : Math.log(NORMAL.survivalProbability(z));
    }
    double w = 1 / (z * z);
    return -z * z / 2 - HALF_LOG_TWO_PI - Math.log(z) + Math.log1p(-w * (1 - 3 * w * (1 - 5 * w)));
  }
}
