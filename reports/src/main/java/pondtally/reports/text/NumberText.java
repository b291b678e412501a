package pondtally.reports.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Map;

/**
 * Single numbers as text: comma between thousands, point before decimals, a true minus sign, and no
 * line break between a number and its unit.
 */
public final class NumberText {

  /** Holds a number and its unit together on one line. */
  static final char NBSP = '\u00a0';

  private static final DecimalFormatSymbols SYMBOLS = symbols();

  private NumberText() {}

  /** A count: {@code 1,234}. */
  public static String count(long count) {
    return decimal(BigDecimal.valueOf(count));
  }

  /**
   * A count of things: {@code 1 failure}, {@code 1,234 failures}.
   *
   * @param plural the noun in its plural, as units in the tables are: {@code lives}
   */
  public static String count(long count, String plural) {
    return counted(count(count), Messages.things(plural, count));
  }

  /** A number with a fixed count of decimals, rounded half up: {@code 1,234.5}. */
  public static String decimal(double value, int decimals) {
    return decimal(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP));
  }

  /** A number with the decimals that it has. */
  static String decimal(BigDecimal value) {
    DecimalFormat format = new DecimalFormat("#,##0", SYMBOLS);
    int decimals = Math.max(0, value.scale());
    format.setMinimumFractionDigits(decimals);
    format.setMaximumFractionDigits(decimals);
    String digits = format.format(value.abs());
    return value.signum() < 0 ? "\u2212" + digits : digits;
  }

  /** Whole dollars: {@code $1,234}, {@code −$1,234}. */
  public static String dollars(double usd) {
    return dollars(BigDecimal.valueOf(usd).setScale(0, RoundingMode.HALF_UP));
  }

  static String dollars(BigDecimal usd) {
    String dollars = Messages.of("number.dollars", Map.of("number", decimal(usd.abs())));
    return usd.signum() < 0 ? "\u2212" + dollars : dollars;
  }

  /**
   * A share from 0 to 1 in per cent: {@code 84%}, below ten per cent {@code 8.4%}. Only nothing is
   * 0% and only everything is 100%.
   */
  public static String percent(double share) {
    double percent = 100 * share;
    if (share > 0 && percent < 0.05) {
      return Messages.of("number.percent.under");
    }
    if (share < 1 && percent >= 99.5) {
      return Messages.of("number.percent.over");
    }
    boolean fine = percent != 0 && percent < 9.95;
    return percent(decimal(percent, fine ? 1 : 0));
  }

  /** A number of hundredths with its sign. */
  static String percent(String number) {
    return Messages.of("number.percent", Map.of("number", number));
  }

  /**
   * A share from 0 to 1 in hundred: {@code 84 of 100}. Only nothing is 0 and only everything is
   * 100.
   */
  public static String ofHundred(double share) {
    if (share > 0 && share < 0.005) {
      return Messages.of("number.of-hundred.few");
    }
    if (share < 1 && share >= 0.995) {
      return Messages.of("number.of-hundred.most");
    }
    return Messages.of("number.of-hundred", Map.of("number", decimal(100 * share, 0)));
  }

  /** The same as an estimate: {@code about 84 of 100}. */
  public static String aboutOfHundred(double share) {
    String of = ofHundred(share);
    boolean edge = share > 0 && share < 0.005 || share < 1 && share >= 0.995;
    return edge ? of : Messages.of("number.of-hundred.about", Map.of("number", of));
  }

  /**
   * Failures in a hundred device-years, or any other rate: {@code 2.7}, from 100 up {@code 120}.
   */
  public static String rate(double rate) {
    return decimal(rate, Math.abs(rate) < 99.95 ? 1 : 0);
  }

  /** A benefit-cost or hazard ratio: {@code 0.85}, {@code 2.4}, {@code 14}. */
  public static String ratio(double ratio) {
    double size = Math.abs(ratio);
    if (ratio > 0 && size < 0.005) {
      return Messages.of("number.ratio.under");
    }
    return decimal(ratio, size < 0.995 ? 2 : size < 9.95 ? 1 : 0);
  }

  /** Years: {@code 1 year}, {@code 2.5 years}, {@code 3 years}. */
  public static String years(double years) {
    return measured(years, years == Math.rint(years) ? 0 : 1, "years");
  }

  /** Acres: {@code 1.0 acre}, {@code 12.3 acres}, from 100 up {@code 345 acres}. */
  public static String acres(double acres) {
    return measured(acres, Math.abs(acres) < 99.95 ? 1 : 0, "acres");
  }

  /** Acre-years, like acres. */
  public static String acreYears(double acreYears) {
    return measured(acreYears, Math.abs(acreYears) < 99.95 ? 1 : 0, "acre-years");
  }

  /** Any measure with its unit in the plural, made singular when exactly one is shown. */
  public static String measured(double value, int decimals, String plural) {
    BigDecimal shown = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return counted(decimal(shown), Messages.things(plural, shown.doubleValue()));
  }

  private static String counted(String number, String things) {
    return Messages.of("number.counted", Map.of("number", number, "things", things));
  }

  private static DecimalFormatSymbols symbols() {
    DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
    symbols.setGroupingSeparator(Messages.of("number.thousands").charAt(0));
    symbols.setDecimalSeparator(Messages.of("number.decimal").charAt(0));
    return symbols;
  }
}
