package pondtally.stats;

/**
 * How many failures, devices and years a comparison of two groups by the log-rank test needs: D =
 * (z(1 − α/2) + z(power))² / (p(1 − p)·(ln HR)²) failures in both groups together, with a share p
 * of the devices in the first. Source: Schoenfeld 1983. Assumes proportional hazards and a ratio
 * not far from 1; rough below some 20 failures.
 */
public final class SampleSize {
  private SampleSize() {}

  /**
   * Failures needed in both groups together, not rounded.
   *
   * @param hazardRatio that is to be found, above 0 and not 1
   * @param shareFirst share of devices in the first group, above 0 and below 1
   * @param level such as 0.95, for a two-sided test at 0.05
   * @param power chance of finding it, such as 0.8
   */
  public static double failures(double hazardRatio, double shareFirst, double level, double power) {
    if (!(hazardRatio > 0 && hazardRatio < Double.POSITIVE_INFINITY) || hazardRatio == 1) {
      throw new IllegalArgumentException("hazard ratio " + hazardRatio + " cannot be found");
    }
    double log = Math.log(hazardRatio);
    double z = z(level, power);
    return z * z / (shares(shareFirst) * log * log);
  }

  /**
   * The hazard ratio above 1 that so many failures can find: exp(z/√(D·p(1 − p))); its inverse can
   * be found as well.
   */
  public static double smallestRatio(
      double failures, double shareFirst, double level, double power) {
    if (!(failures > 0)) {
      throw new IllegalArgumentException(failures + " failures, expected more than 0");
    }
    return Math.exp(z(level, power) / Math.sqrt(failures * shares(shareFirst)));
  }

  /**
   * Devices that must be followed for so many failures, not rounded.
   *
   * @param failureProbability average share of devices that fail during follow-up, above 0, at most
   *     1
   */
  public static double devices(double failures, double failureProbability) {
    if (!(failures >= 0 && failureProbability > 0 && failureProbability <= 1)) {
      throw new IllegalArgumentException(
          failures + " failures at a probability of " + failureProbability);
    }
    return failures / failureProbability;
  }

  /** Device-years that must be watched for so many failures at a rate per 100 device-years. */
  public static double deviceYears(double failures, double per100DeviceYears) {
    if (!(failures >= 0 && per100DeviceYears > 0)) {
      throw new IllegalArgumentException(failures + " failures at a rate of " + per100DeviceYears);
    }
    return 100 * failures / per100DeviceYears;
  }

  private static double z(double level, double power) {
    if (!(power > 0.5 && power < 1)) {
      throw new IllegalArgumentException("power " + power + ", expected above 0.5 and below 1");
    }
    return Quantile.twoSided(level) + Quantile.normal(power);
  }

  private static double shares(double shareFirst) {
    if (!(shareFirst > 0 && shareFirst < 1)) {
      throw new IllegalArgumentException("share " + shareFirst + ", expected above 0 and below 1");
    }
    return shareFirst * (1 - shareFirst);
  }
}
