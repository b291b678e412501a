package pondtally.stats;

import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * Ratio of two failure rates, first over second, with exact limits and p value: given the sum of
 * both counts the first is binomial with share RR·T₁/(RR·T₁ + T₂). Source: Przyborowski &amp;
 * Wilenski 1940; limits by Clopper &amp; Pearson 1934. The p value is twice the smaller tail, at
 * most 1, which agrees with the limits. Assumes independent Poisson counts.
 */
public final class RateRatio {
  private final PoissonRate first;
  private final PoissonRate second;
  private final double level;

  private RateRatio(PoissonRate first, PoissonRate second) {
    if (first.level() != second.level()) {
      throw new IllegalArgumentException(
          "rates with levels " + first.level() + " and " + second.level());
    }
    this.first = first;
    this.second = second;
    this.level = first.level();
  }

  /** Ratio of two rates that have the same level. */
  public static RateRatio of(PoissonRate first, PoissonRate second) {
    return new RateRatio(first, second);
  }

  private boolean exposed() {
    return first.deviceYears() > 0 && second.deviceYears() > 0;
  }

  private long failures() {
    return first.failures() + second.failures();
  }

  /** Ratio of the rates; empty without exposure on both sides or without failures in the second. */
  public OptionalDouble ratio() {
    return exposed() && second.failures() > 0
        ? OptionalDouble.of(
            (first.failures() / first.deviceYears()) / (second.failures() / second.deviceYears()))
        : OptionalDouble.empty();
  }

  /** Exact limits of the ratio; the upper is empty where the second group has no failures. */
  public Limits limits() {
    if (!exposed() || failures() == 0) {
      return Limits.none();
    }
    Limits share = ClopperPearson.limits(first.failures(), failures(), level);
    double lower = ratioOf(share.lower().getAsDouble());
    return second.failures() == 0
        ? new Limits(OptionalDouble.of(lower), OptionalDouble.empty())
        : Limits.of(lower, ratioOf(share.upper().getAsDouble()));
  }

  private double ratioOf(double share) {
    return share / (1 - share) * (second.deviceYears() / first.deviceYears());
  }

  /** Exact two-sided p value of equal rates; empty without exposure or without any failure. */
  public OptionalDouble pValue() {
    if (!exposed() || failures() == 0) {
      return OptionalDouble.empty();
    }
    int x = Math.toIntExact(first.failures());
    double share = first.deviceYears() / (first.deviceYears() + second.deviceYears());
    BinomialDistribution binomial = BinomialDistribution.of(Math.toIntExact(failures()), share);
    double below = binomial.cumulativeProbability(x);
    double above = binomial.survivalProbability(x - 1);
    return OptionalDouble.of(Math.min(1, 2 * Math.min(below, above)));
  }
}
