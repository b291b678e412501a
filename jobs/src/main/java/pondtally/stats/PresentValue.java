package pondtally.stats;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Present values by end-of-year factors. Source: NIST Handbook 135 (Fuller &amp; Petersen 1995,
 * rev. 2020); ASTM E917. Rates d are per year and above −1: 0.03 is 3 per cent. Year 0 is today and
 * not discounted; what happens in year t counts at its end. Rates and dollars must be of one kind:
 * real rates with dollars of one year, nominal rates with nominal dollars.
 */
public final class PresentValue {
  private PresentValue() {}

  /** Single present value factor (1 + d)^−n, for an amount n years ahead, n 0 or more. */
  public static double single(double rate, int years) {
    check(rate, years);
    return Math.pow(1 + rate, -years);
  }

  /**
   * Uniform present value factor ((1 + d)^n − 1)/(d(1 + d)^n), for 1 at the end of each of n years;
   * n where d = 0.
   */
  public static double uniform(double rate, int years) {
    check(rate, years);
    // The same as −(e^(−n·ln(1+d)) − 1)/d, which keeps its digits where d is near 0.
    return rate == 0 || years == 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;
  }

  /**
   * Modified uniform present value factor (1 + e)/(d − e)·(1 − ((1 + e)/(1 + d))^n), for yearly
   * amounts that grow at rate e from 1 + e at the end of the first year; n where d = e.
   */
  public static double modifiedUniform(double rate, double growth, int years) {
    check(rate, years);
    check(growth, years);
    return uniform((rate - growth) / (1 + growth), years);
  }

  /** Value of 1 in each of n years for 1 today: 1/UPV. n at least 1. */
  public static double capitalRecovery(double rate, int years) {
    if (years < 1) {
      throw new IllegalArgumentException(years + " years, expected at least 1");
    }
    return 1 / uniform(rate, years);
  }

  /** Net present value Σ amount(t)·(1 + d)^−t, of amounts of years 0, 1, 2, …; in their dollars. */
  public static double net(double rate, double... amountsUsd) {
    double sum = 0;
    for (int t = amountsUsd.length - 1; t >= 0; t--) {
      sum += amountsUsd[t] * single(rate, t);
    }
    return sum;
  }

  /** Equivalent annual cost: the equal yearly amount over n years with that present value. */
  public static double equivalentAnnual(double presentValueUsd, double rate, int years) {
    return presentValueUsd * capitalRecovery(rate, years);
  }

  /** Real rate (1 + D)/(1 + I) − 1 from a nominal rate and inflation (Fisher 1930). */
  public static double realRate(double nominalRate, double inflation) {
    check(nominalRate, 0);
    check(inflation, 0);
    return (nominalRate - inflation) / (1 + inflation);
  }

  /**
   * Discounted pay-back: the first year by whose end the present values of years 0 to then add up
   * to 0 or more; empty if that never happens within the years given.
   */
  public static OptionalInt paybackYear(double rate, double... netAmountsUsd) {
    double sum = 0;
    for (int t = 0; t < netAmountsUsd.length; t++) {
      sum += netAmountsUsd[t] * single(rate, t);
      if (sum >= 0) {
        return OptionalInt.of(t);
      }
    }
    return OptionalInt.empty();
  }

  /**
   * The yearly benefit at which benefit and cost have the same present value, for a benefit that
   * arrives in shares of a year: PV(cost) / Σ share(t)·(1 + d)^−t, t from 1; empty if no share is
   * above 0.
   *
   * @param costPresentValueUsd present value of all cost
   * @param workingShares share of the benefit that arrives in years 1, 2, …; 0 to 1 each
   */
  public static OptionalDouble breakEvenYearly(
      double costPresentValueUsd, double rate, double... workingShares) {
    double factor = 0;
    for (int t = workingShares.length; t >= 1; t--) {
      factor += workingShares[t - 1] * single(rate, t);
    }
    return factor > 0 ? OptionalDouble.of(costPresentValueUsd / factor) : OptionalDouble.empty();
  }

  /**
   * Expected present value of the cost of first failures: Σ cost·(S(t−1) − S(t))·(1 + d)^−t over
   * years 1 to n. Assumes that a failure is paid for at the end of the year in which it comes.
   *
   * @param costUsd of one failure
   * @param survival S(0), S(1), … S(n): falling from 1, at least S(0)
   */
  public static double expectedFailureCost(double costUsd, double rate, double... survival) {
    double sum = 0;
    for (int t = survival.length - 1; t >= 1; t--) {
      if (!(survival[t] <= survival[t - 1])) {
        throw new IllegalArgumentException("survival rises in year " + t);
      }
      sum += costUsd * (survival[t - 1] - survival[t]) * single(rate, t);
    }
    return sum;
  }

  private static void check(double rate, int years) {
    if (!(rate > -1 && rate < Double.POSITIVE_INFINITY) || years < 0) {
      throw new IllegalArgumentException("rate " + rate + " over " + years + " years");
    }
  }
}
