package pondtally.analysis;

/**
 * A Weibull survival, S(t) = exp(−(t/scale)^shape), and the group whose lives it was fitted to.
 *
 * @param group the group's value; {@code all} for all devices
 */
record BenefitFit(String group, double shape, double scaleDays) {

  private static final double DAYS_PER_YEAR = 365.25;

  /** −log S at an age in days. */
  double cumulativeHazard(double days) {
    return days <= 0 ? 0 : Math.pow(days / scaleDays, shape);
  }

  /**
   * Chance that a device known not failed at age {@code fromDays} has failed {@code furtherDays}
   * later: 1 − S(a + u)/S(a).
   */
  double chanceFailed(double fromDays, double furtherDays) {
    return furtherDays <= 0
        ? 0
        : -Math.expm1(cumulativeHazard(fromDays) - cumulativeHazard(fromDays + furtherDays));
  }

  /** Age by which half have failed, years. */
  double medianYears() {
    return scaleDays * Math.pow(Math.log(2), 1 / shape) / DAYS_PER_YEAR;
  }

  /** The same survival with every age multiplied. */
  BenefitFit stretched(double factor) {
    return new BenefitFit(group, shape, scaleDays * factor);
  }
}
