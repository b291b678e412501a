package pondtally.reports.text;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The last decimal place that an uncertain figure deserves. The error keeps two digits where its
 * first three read 100 to 354, else one, and the figure stops at the same place (Particle Data
 * Group, Review of Particle Physics, Introduction, "Rounding"). As the error stands the distance to
 * the nearer limit that is not the figure itself, so that a long upper arm does not blur the
 * figure.
 */
final class Rounding {

  private Rounding() {}

  /**
   * Decimal places for a figure with these limits; negative for tens, hundreds and so on.
   *
   * @param most never more decimals than this
   */
  static int decimals(double value, double lower, double upper, int most) {
    double error = error(value - lower, upper - value);
    if (!(error > 0) || Double.isInfinite(error)) {
      return most;
    }
    int exponent = (int) Math.floor(Math.log10(error));
    int digits = error / Math.pow(10, exponent) < 3.55 ? 2 : 1;
    return Math.min(digits - 1 - exponent, most);
  }

  /** {@code value} rounded half up to that many decimal places. */
  static BigDecimal to(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return decimals < 0 ? rounded.setScale(0) : rounded;
  }

  private static double error(double below, double above) {
    return below > 0 && above > 0 ? Math.min(below, above) : Math.max(below, above);
  }
}
