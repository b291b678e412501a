package pondtally.stats;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The figures of a survival curve that may be quoted: all of them stop at the last time with enough
 * lives at risk (five by default), and are empty later. Nothing is carried past it, because a few
 * lives decide the curve's tail. The curve itself stays complete.
 */
public final class SurvivalFigures {
  /** At least so many at risk for a figure to be quoted. */
  public static final int MINIMUM_AT_RISK = 5;

  private final SurvivalCurve curve;
  private final OptionalDouble lastTime;

  private SurvivalFigures(SurvivalCurve curve, int minimumAtRisk) {
    this.curve = curve;
    this.lastTime = curve.lastTimeWithAtRisk(minimumAtRisk);
  }

  /** Figures up to the last time with {@link #MINIMUM_AT_RISK} at risk. */
  public static SurvivalFigures of(SurvivalCurve curve) {
    return of(curve, MINIMUM_AT_RISK);
  }

  /** Figures up to the last time with another number at risk, at least 1. */
  public static SurvivalFigures of(SurvivalCurve curve, int minimumAtRisk) {
    if (minimumAtRisk < 1) {
      throw new IllegalArgumentException(minimumAtRisk + " at risk, expected at least 1");
    }
    return new SurvivalFigures(curve, minimumAtRisk);
  }

  /** The last time for which anything is said; empty if there never were enough at risk. */
  public OptionalDouble lastTime() {
    return lastTime;
  }

  /** S at t; empty after {@link #lastTime()}. */
  public OptionalDouble survivalAt(double t) {
    return covers(t) ? curve.at(t) : OptionalDouble.empty();
  }

  /** Limits of S at t; none after {@link #lastTime()}. */
  public Limits limitsAt(double t) {
    return covers(t) ? curve.limitsAt(t) : Limits.none();
  }

  /** Median life; empty if it is not reached by {@link #lastTime()}. */
  public OptionalDouble median() {
    return quantile(0.5);
  }

  /** Limits of the median; a side is empty if it is not reached by {@link #lastTime()}. */
  public Limits medianLimits() {
    return quantileLimits(0.5);
  }

  /** Time by which a share p has failed; see {@link SurvivalCurve#quantile}. */
  public OptionalDouble quantile(double p) {
    return ifCovered(curve.quantile(p));
  }

  /** Limits of {@link #quantile}. */
  public Limits quantileLimits(double p) {
    Limits limits = curve.quantileLimits(p);
    return new Limits(ifCovered(limits.lower()), ifCovered(limits.upper()));
  }

  /**
   * Mean life within a horizon, cut at {@link #lastTime()} if that comes sooner: the result's own
   * horizon is the time it was cut at. Empty if there never were enough at risk.
   */
  public Optional<RestrictedMean> meanLife(double horizon) {
    return lastTime.isEmpty()
        ? Optional.empty()
        : Optional.of(curve.restrictedMean(Math.min(horizon, lastTime.getAsDouble())));
  }

  private boolean covers(double t) {
    return lastTime.isPresent() && t <= lastTime.getAsDouble();
  }

  private OptionalDouble ifCovered(OptionalDouble t) {
    return t.isPresent() && covers(t.getAsDouble()) ? t : OptionalDouble.empty();
  }
}
