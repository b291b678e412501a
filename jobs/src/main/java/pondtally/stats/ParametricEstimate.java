package pondtally.stats;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * An estimate with its standard error (delta method) and 95 per cent Wald limits.
 *
 * @param value the estimate
 * @param standardError in the unit of the value
 * @param lower limit
 * @param upper limit
 */
public record ParametricEstimate(double value, double standardError, double lower, double upper) {
  private static final double Z = NormalDistribution.of(0, 1).inverseSurvivalProbability(0.025);

  /** Limits value ± 1.96 s. */
  static ParametricEstimate plain(double value, double error) {
    return new ParametricEstimate(value, error, value - Z * error, value + Z * error);
  }

  /** Limits value · exp(±1.96 s/value), for what cannot be below 0. */
  static ParametricEstimate positive(double value, double error) {
    double factor = Math.exp(Z * error / value);
    return new ParametricEstimate(value, error, value / factor, value * factor);
  }
}
