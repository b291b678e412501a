package pondtally.reports.text;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * An estimate with its limits, told with no more digits than the limits warrant. Without limits it
 * says so: an estimate never looks surer than it is.
 *
 * @param value the estimate
 * @param lower its lower limit; empty where there is none
 * @param upper its upper limit; empty where there is none
 */
public record Estimate(double value, OptionalDouble lower, OptionalDouble upper) {

  private static final String NO_LIMITS = Messages.of("estimate.limits-not-known");

  /** The estimate in a table's three cells; empty where there is no value. */
  public static Optional<Estimate> of(
      OptionalDouble value, OptionalDouble lower, OptionalDouble upper) {
    return value.isPresent()
        ? Optional.of(new Estimate(value.getAsDouble(), lower, upper))
        : Optional.empty();
  }

  /** Whether both limits are known. */
  public boolean hasLimits() {
    return lower.isPresent() && upper.isPresent();
  }

  /** A share: {@code about 84 of 100 (likely 72 to 92)}. */
  public String ofHundred() {
    return estimate(NumberText.aboutOfHundred(value), limitsOfShare());
  }

  /** The limits of a share in their brackets: {@code (likely 72 to 92)}. */
  public String limitsOfShare() {
    return hasLimits() ? likely(hundredLimits()) : NO_LIMITS;
  }

  /** The limits of a share alone: {@code 72 to 92 of 100}. */
  public String limitsOfHundred() {
    return hasLimits()
        ? Messages.of("number.of-hundred", Map.of("number", hundredLimits()))
        : Missing.NOT_KNOWN;
  }

  /** A share in per cent: {@code 34% (likely 22% to 47%)}. */
  public String percent() {
    if (!hasLimits()) {
      return estimate(NumberText.percent(value), NO_LIMITS);
    }
    Estimate percent =
        new Estimate(
            100 * value,
            OptionalDouble.of(100 * lower.getAsDouble()),
            OptionalDouble.of(100 * upper.getAsDouble()));
    int decimals = Math.max(0, percent.decimals(1));
    return percent.said(decimals, number -> NumberText.percent(NumberText.decimal(number)), "");
  }

  /** Dollars: {@code $4,300 (likely $3,100 to $6,200)}. */
  public String dollars() {
    return said(decimals(0), NumberText::dollars, "");
  }

  /** Dollars without the limits that decide where they are rounded: {@code $4,300}. */
  public String dollarsAlone() {
    return NumberText.dollars(Rounding.to(value, decimals(0)));
  }

  /** A count to be expected, never with decimals: {@code 12 (likely 7 to 18)}. */
  public String whole() {
    return said(decimals(0), NumberText::decimal, "");
  }

  /** The same with what is counted: {@code 12 failures (likely 7 to 18)}. */
  public String whole(String plural) {
    return measured(plural, 0);
  }

  /** A rate: {@code 2.7 (likely 1.4 to 4.9)}. */
  public String rate() {
    return said(decimals(2), NumberText::decimal, "");
  }

  /** A rate with what it counts: {@code 2.7 failures per 100 device-years (likely 1.4 to 4.9)}. */
  public String rate(String of) {
    return said(decimals(2), NumberText::decimal, " " + of);
  }

  /**
   * A ratio, each number with two digits because ratios are compared by multiples: {@code 1.1
   * (likely 0.01 to 80)}.
   */
  public String ratio() {
    return ratio("");
  }

  /** A ratio with what follows it: {@code 1.2 times on average (likely 0.9 to 1.5)}. */
  public String ratio(String of) {
    String limits =
        hasLimits()
            ? likely(
                range(NumberText.ratio(lower.getAsDouble()), NumberText.ratio(upper.getAsDouble())))
            : NO_LIMITS;
    return estimate(NumberText.ratio(value) + of, limits);
  }

  /** Years: {@code 6.2 years (likely 4.8 to 8.1)}. */
  public String years() {
    return measured("years");
  }

  /** Any measure with its unit in the plural: {@code 12.4 days (likely 7.1 to 18.0)}. */
  public String measured(String plural) {
    return measured(plural, 1);
  }

  private String measured(String plural, int most) {
    int decimals = decimals(most);
    double rounded = Rounding.to(value, decimals).doubleValue();
    String figure = NumberText.measured(rounded, Math.max(0, decimals), plural);
    return estimate(figure, limits(decimals, NumberText::decimal));
  }

  private String said(int decimals, Function<BigDecimal, String> form, String of) {
    return estimate(form.apply(Rounding.to(value, decimals)) + of, limits(decimals, form));
  }

  private int decimals(int most) {
    return hasLimits()
        ? Rounding.decimals(value, lower.getAsDouble(), upper.getAsDouble(), most)
        : Math.min(most, 1);
  }

  private String limits(int decimals, Function<BigDecimal, String> form) {
    if (!hasLimits()) {
      return NO_LIMITS;
    }
    String low = form.apply(Rounding.to(lower.getAsDouble(), decimals));
    String high = form.apply(Rounding.to(upper.getAsDouble(), decimals));
    return likely(range(low, high));
  }

  private String hundredLimits() {
    return range(
        NumberText.decimal(100 * lower.getAsDouble(), 0),
        NumberText.decimal(100 * upper.getAsDouble(), 0));
  }

  private static String range(String low, String high) {
    return Messages.of("number.range", Map.of("low", low, "high", high));
  }

  private static String likely(String range) {
    return Messages.of("estimate.likely", Map.of("range", range));
  }

  private static String estimate(String figure, String limits) {
    return Messages.of("estimate", Map.of("figure", figure, "limits", limits));
  }
}
