package pondtally.stats;

import java.util.Optional;

/**
 * Exponential distribution by maximum likelihood, S(t) = exp(−t/mean): a failure rate that does not
 * change with age. With known days the mean is days at risk over failures. Limits on the log scale;
 * see {@link ParametricFit}. At least one failure is needed.
 */
public final class ExponentialFit {
  private static final double DAYS_PER_YEAR = 365.25;

  private ExponentialFit() {}

  /** The fit; {@link ParametricFit#scaleDays} is its mean. */
  public static ParametricFit of(IntervalCounts counts) {
    return ParametricFit.of(ParametricDistribution.EXPONENTIAL, counts);
  }

  /** Failures per device-year, with limits. */
  public static Optional<ParametricEstimate> failuresPerDeviceYear(ParametricFit fit) {
    return fit.distribution() != ParametricDistribution.EXPONENTIAL
        ? Optional.empty()
        : fit.scaleDays()
            .map(
                m ->
                    ParametricEstimate.positive(
                        DAYS_PER_YEAR / m.value(),
                        DAYS_PER_YEAR / m.value() * m.standardError() / m.value()));
  }
}
