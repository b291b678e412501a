package pondtally.stats;

import java.util.OptionalDouble;

/**
 * Failure rate of a count of failures over an exposure, with exact limits: the lower is χ²(α/2;
 * 2x)/2 and the upper χ²(1 − α/2; 2x + 2)/2 failures, divided by the exposure. Source: Garwood
 * 1936. The coverage is at least the level; with few failures it is well above.
 *
 * <p>Assumes that failures come independently at one rate; devices at one site that fail together
 * make the limits too narrow.
 *
 * @param failures x, 0 or more
 * @param deviceYears exposure in years of 365.25 days, 0 or more
 * @param level level of the limits, such as 0.95
 */
public record PoissonRate(long failures, double deviceYears, double level) {
  private static final double HUNDRED = 100;

  /**
   * Refuses negative counts, exposures that are negative or not finite, and levels outside 0 to 1.
   */
  public PoissonRate {
    if (failures < 0 || !(deviceYears >= 0 && deviceYears < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          failures + " failures in " + deviceYears + " device-years");
    }
    Quantile.checkLevel(level);
  }

  /** A rate with 95 per cent limits. */
  public static PoissonRate of(long failures, double deviceYears) {
    return new PoissonRate(failures, deviceYears, 0.95);
  }

  /**
   * Exact limits of the expected count behind an observed one (Garwood 1936): lower 0 where the
   * count is 0.
   */
  public static Limits countLimits(long count, double level) {
    if (count < 0) {
      throw new IllegalArgumentException("count " + count + ", expected 0 or more");
    }
    double tail = (1 - Quantile.checkLevel(level)) / 2;
    double lower = count == 0 ? 0 : Quantile.gamma(tail, count);
    return Limits.of(lower, Quantile.gamma(1 - tail, count + 1.0));
  }

  /** Failures per 100 device-years; empty without exposure. */
  public OptionalDouble per100DeviceYears() {
    return deviceYears > 0
        ? OptionalDouble.of(HUNDRED * failures / deviceYears)
        : OptionalDouble.empty();
  }

  /** Exact limits of the failures per 100 device-years; none without exposure. */
  public Limits limitsPer100DeviceYears() {
    return deviceYears > 0
        ? countLimits(failures, level).times(HUNDRED / deviceYears)
        : Limits.none();
  }
}
