package pondtally.stats;

import java.util.OptionalDouble;

/**
 * Mean life within a horizon, in the unit of time: of the first {@code horizon} days, how many does
 * a device work on average before its failure. Source: Royston &amp; Parmar 2013.
 *
 * @param horizon end of the span over which S was integrated
 * @param mean area under S from 0 to the horizon
 * @param stdError its standard error (Greenwood type; 0 where nothing failed, which is no
 *     certainty)
 * @param level level of the limits
 */
public record RestrictedMean(double horizon, double mean, double stdError, double level) {
  /** Normal limits mean ± z·se, cut at 0 and the horizon; none where the error is 0. */
  public Limits limits() {
    if (!(stdError > 0)) {
      return Limits.none();
    }
    double spread = Quantile.twoSided(level) * stdError;
    return Limits.of(Math.max(0, mean - spread), Math.min(horizon, mean + spread));
  }

  /**
   * This mean less another's, over the same horizon and for other lives: the errors are added as
   * squares. Throws IllegalArgumentException if the horizons differ.
   */
  public Difference minus(RestrictedMean other) {
    if (horizon != other.horizon) {
      throw new IllegalArgumentException(
          "mean lives to " + horizon + " and to " + other.horizon + " cannot be compared");
    }
    return new Difference(mean - other.mean, Math.hypot(stdError, other.stdError), level);
  }

  /**
   * Difference of two restricted means.
   *
   * @param difference first less second, in the unit of time
   * @param stdError its standard error
   * @param level level of the limits
   */
  public record Difference(double difference, double stdError, double level) {
    /** Normal limits; none where the error is 0. */
    public Limits limits() {
      double spread = Quantile.twoSided(level) * stdError;
      return stdError > 0 ? Limits.of(difference - spread, difference + spread) : Limits.none();
    }

    /**
     * Two-sided p value of no difference, by the normal distribution; empty where the error is 0.
     */
    public OptionalDouble pValue() {
      return stdError > 0
          ? OptionalDouble.of(Quantile.normalTwoSidedP(difference / stdError))
          : OptionalDouble.empty();
    }
  }
}
