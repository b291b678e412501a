package pondtally.stats;

import java.util.Optional;

/**
 * Weibull distribution by maximum likelihood, S(t) = exp(−(t/scale)^shape) (Weibull 1951; censored
 * fits: Meeker &amp; Escobar 1998). Limits on the log scale; see {@link ParametricFit} for means,
 * quantiles and survival. At least two failures are needed.
 */
public final class WeibullFit {
  private WeibullFit() {}

  /**
   * The fit; {@link ParametricFit#shape} and {@link ParametricFit#scaleDays} are its parameters.
   */
  public static ParametricFit of(IntervalCounts counts) {
    return ParametricFit.of(ParametricDistribution.WEIBULL, counts);
  }

  /** Hazard (failures per device-day) at an age: (shape/scale)(t/scale)^(shape−1). */
  public static Optional<Double> hazardPerDay(ParametricFit fit, double days) {
    return fit.shape().map(k -> hazard(k.value(), fit.scaleDays().orElseThrow().value(), days));
  }

  private static double hazard(double shape, double scale, double days) {
    return shape / scale * Math.pow(days / scale, shape - 1);
  }
}
