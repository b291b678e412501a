package pondtally.stats;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.PoissonDistribution;

/**
 * Which of many groups, such as watersheds, fail more or less often than chance explains: observed
 * over expected failures against the limits that a Poisson count with that expectation keeps to.
 * Source: Spiegelhalter 2005. Two levels are customary, 0.95 and 0.998; only beyond the second is a
 * group worth a look of its own.
 *
 * <p>Here the limits are whole counts over the expectation, so that a group at its own rate falls
 * beyond either with a probability of at most half of 1 − level, however small the expectation
 * (with the interpolated limits of Spiegelhalter's appendix it can be more: one failure where 0.01
 * is expected lies beyond the outer ones, although it has a chance of 1 per cent; {@link
 * #interpolated} gives them for drawing). Assumes independent failures; where groups differ for
 * reasons that were not allowed for, {@link #dispersion} is above 1 and too many fall outside.
 */
public final class FunnelLimits {
  /** The level of the inner funnel. */
  public static final double INNER = 0.95;

  /** The level of the outer funnel, which decides what is outside. */
  public static final double OUTER = 0.998;

  private static final double WINSORIZED = 0.1;
  private static final double NOTICED = 0.05;

  private FunnelLimits() {}

  /**
   * Limits of observed over expected: the smallest and the largest count whose tail, itself
   * included, has a probability of at least (1 − level)/2, over the expectation.
   *
   * @param expected failures if the group were like all; above 0, else there are no limits
   */
  public static Limits exact(double expected, double level) {
    double tail = (1 - Quantile.checkLevel(level)) / 2;
    if (none(expected)) {
      return Limits.none();
    }
    PoissonDistribution count = PoissonDistribution.of(expected);
    int lower = count.inverseCumulativeProbability(tail);
    int upper = count.inverseSurvivalProbability(tail);
    return Limits.of(lower / expected, upper / expected);
  }

  /**
   * Limits of observed over expected as Spiegelhalter 2005 interpolates them: (r − a)/E, with r the
   * smallest count with F(r) &gt; p and a = (F(r) − p)/(F(r) − F(r − 1)), not below 0. They draw a
   * smoother funnel.
   */
  public static Limits interpolated(double expected, double level) {
    double tail = (1 - Quantile.checkLevel(level)) / 2;
    if (none(expected)) {
      return Limits.none();
    }
    PoissonDistribution count = PoissonDistribution.of(expected);
    int low = count.inverseCumulativeProbability(tail);
    int high = count.inverseSurvivalProbability(tail);
    double lower = low - (count.cumulativeProbability(low) - tail) / count.probability(low);
    double upper = high - (tail - count.survivalProbability(high)) / count.probability(high);
    return Limits.of(Math.max(0, lower) / expected, Math.max(0, upper) / expected);
  }

  /**
   * Whether a count lies beyond the exact limits: its tail's probability is below (1 − level)/2.
   */
  public static boolean outside(long observed, double expected, double level) {
    Limits limits = exact(expected, level);
    if (!limits.known()) {
      return observed > 0;
    }
    return observed < Math.rint(limits.lower().getAsDouble() * expected)
        || observed > Math.rint(limits.upper().getAsDouble() * expected);
  }

  /**
   * Over-dispersion φ: mean square of z = (O − E)/√E over groups with E above 0, the tenth of them
   * at either end drawn in to the next, so that a few outliers do not hide themselves. About 1 if
   * chance alone is at work. Source: Spiegelhalter 2005b, Quality and Safety in Health Care
   * 14:347-351.
   */
  public static Dispersion dispersion(long[] observed, double[] expected) {
    if (observed.length != expected.length) {
      throw new IllegalArgumentException(
          observed.length + " observed counts, " + expected.length + " expected");
    }
    double[] z = new double[observed.length];
    int groups = 0;
    for (int i = 0; i < z.length; i++) {
      if (!none(expected[i])) {
        z[groups++] = (observed[i] - expected[i]) / Math.sqrt(expected[i]);
      }
    }
    z = Arrays.copyOf(z, groups);
    Arrays.sort(z);
    int cut = (int) (WINSORIZED * groups);
    double sum = 0;
    for (double one : z) {
      double kept = Math.min(Math.max(one, z[cut]), z[groups - 1 - cut]);
      sum += kept * kept;
    }
    return new Dispersion(
        groups, groups == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / groups));
  }

  private static boolean none(double expected) {
    if (!(expected >= 0 && expected < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("expected failures " + expected);
    }
    return expected == 0;
  }

  /**
   * Over-dispersion of a funnel.
   *
   * @param groups with an expectation above 0
   * @param ratio φ; empty without groups
   */
  public record Dispersion(int groups, OptionalDouble ratio) {
    /** P(groups·φ or more) if chance alone is at work, roughly chi-square; empty without groups. */
    public OptionalDouble pValue() {
      return ratio.isPresent()
          ? OptionalDouble.of(Quantile.chiSquareAbove(groups * ratio.getAsDouble(), groups))
          : ratio;
    }

    /** Whether it deserves a notice beside the funnel: the p value is below 0.05. */
    public boolean noticed() {
      return pValue().orElse(1) < NOTICED;
    }
  }
}
