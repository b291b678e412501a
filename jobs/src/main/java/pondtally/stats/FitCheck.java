package pondtally.stats;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far a fitted distribution can be trusted: its largest distance from the curve that assumes
 * none, and whether the Weibull describes the lives better than the exponential (likelihood ratio,
 * 1 degree of freedom).
 *
 * <p>The distance has no p-value: the fit was made from the same lives, and few failures hide a
 * poor fit.
 *
 * @param largestGap largest distance of the fitted survival from the band that the curve leaves
 *     open, 0 to 1; empty without a fit or curve
 * @param gapAtDays age of the largest distance
 * @param weibullAgainstExponential 2(ℓ Weibull − ℓ exponential); empty unless both could be fitted.
 *     A small p-value says that the failure rate changes with age
 */
public record FitCheck(
    OptionalDouble largestGap,
    OptionalDouble gapAtDays,
    Optional<HazardTest> weibullAgainstExponential) {

  /** Compares a fit with the interval curve of the same lives, and the two fits with each other. */
  public static FitCheck of(
      ParametricFit fit, IntervalEstimate curve, ParametricFit weibull, ParametricFit exponential) {
    double largest = -1;
    double at = 0;
    if (fit.reason().isEmpty()) {
      for (IntervalEstimate.Mass mass : curve.masses()) {
        for (double days : new double[] {mass.leftDays(), mass.rightDays()}) {
          double gap = Double.isInfinite(days) ? -1 : gap(fit, curve, days);
          if (gap > largest) {
            largest = gap;
            at = days;
          }
        }
      }
    }
    Optional<HazardTest> ratio = ratio(weibull, exponential);
    return largest < 0
        ? new FitCheck(OptionalDouble.empty(), OptionalDouble.empty(), ratio)
        : new FitCheck(OptionalDouble.of(largest), OptionalDouble.of(at), ratio);
  }

  /**
   * Both ends of an innermost interval are ages at which the curve is known; at a known day it
   * falls, so both sides count.
   */
  private static double gap(ParametricFit fit, IntervalEstimate curve, double days) {
    double fitted = fit.survivalAt(days).getAsDouble();
    IntervalEstimate.Bounds after = curve.survivalBounds(days);
    IntervalEstimate.Bounds before = curve.survivalBounds(Math.nextDown(days));
    return Math.max(outside(fitted, after), outside(fitted, before));
  }

  private static double outside(double value, IntervalEstimate.Bounds bounds) {
    return Math.max(0, Math.max(value - bounds.upper(), bounds.lower() - value));
  }

  private static Optional<HazardTest> ratio(ParametricFit weibull, ParametricFit exponential) {
    if (weibull.reason().isPresent() || exponential.reason().isPresent()) {
      return Optional.empty();
    }
    double twice =
        2 * (weibull.logLikelihood().getAsDouble() - exponential.logLikelihood().getAsDouble());
    return Optional.of(HazardTest.of(Math.max(0, twice), 1));
  }
}
