package pondtally.reports.chart;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.Locale;

/**
 * The numbers along an axis.
 *
 * @param lower end of the axis
 * @param upper end of the axis
 * @param tick distance between numbers
 * @param format of the numbers, the same on every machine
 */
record Scale(double lower, double upper, double tick, NumberFormat format) {

  private static final double[] STEPS = {1, 2, 5, 10};
  private static final double[] YEAR_STEPS = {0.25, 0.5, 1, 2, 5, 10, 20, 50};

  /**
   * From 0, or from below it if {@code least} is negative, to a round number from {@code most} up.
   */
  static Scale upTo(double least, double most, int ticks, String pattern) {
    double span = Math.max(most, 0) - Math.min(least, 0);
    double tick = step(span > 0 ? span / ticks : 1.0 / ticks);
    double upper = tick * Math.max(1, Math.ceil(most / tick - 1e-9));
    double lower = least < 0 ? tick * Math.floor(least / tick + 1e-9) : 0;
    return new Scale(lower, upper, tick, format(pattern, tick));
  }

  /** From 0 to {@code most} itself, with round numbers as far as they go. */
  static Scale to(double most, int ticks, String pattern) {
    Scale scale = upTo(0, most, ticks, pattern);
    return new Scale(0, most > 0 ? most : scale.upper, scale.tick, scale.format);
  }

  /** Whole counts from 0. */
  static Scale counts(double least, double most, int ticks) {
    Scale scale = upTo(least, most, ticks, "#,##0.###");
    return scale.tick >= 1 ? scale : upTo(least, Math.max(most, ticks), ticks, "#,##0.###");
  }

  /** Shares from 0 to 1 in per cent. */
  static Scale shares() {
    return new Scale(0, 1, 0.2, format("0%", 0.2));
  }

  /** Years from 0, numbered at least {@code apart} of the whole length from each other. */
  static Scale years(double most, double apart) {
    double length = most > 0 ? most : 1;
    double tick = YEAR_STEPS[YEAR_STEPS.length - 1];
    for (int i = YEAR_STEPS.length - 1; i >= 0; i--) {
      if (YEAR_STEPS[i] / length >= apart) {
        tick = YEAR_STEPS[i];
      }
    }
    return new Scale(0, length, tick, format("0.##", tick));
  }

  /**
   * The same axis, longer by {@code pad} of its {@code points} at both ends, so that marks on its
   * ends are not cut.
   */
  Scale padded(double pad, double points) {
    double share = pad / (points - 2 * pad);
    return padded(share);
  }

  private Scale padded(double share) {
    double pad = (upper - lower) * share;
    return new Scale(lower - pad, upper + pad, tick, format);
  }

  /** Digits as on every machine; the minus is an en dash, which the bundled font has. */
  static NumberFormat format(String pattern) {
    DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
    symbols.setMinusSign('\u2013');
    return new DecimalFormat(pattern, symbols);
  }

  private static NumberFormat format(String pattern, double tick) {
    NumberFormat format = format(pattern);
    if (pattern.endsWith("%") && tick < 0.0099) {
      format.setMaximumFractionDigits(1);
    }
    return format;
  }

  private static double step(double atLeast) {
    double power = Math.pow(10, Math.floor(Math.log10(atLeast)));
    for (double step : STEPS) {
      if (step * power >= atLeast * (1 - 1e-9)) {
        return step * power;
      }
    }
    return 10 * power;
  }
}
