package pondtally.stats;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/**
 * Prediction limits of a count or an amount whose distribution depends on parameters known only by
 * draws: the distribution is the mean over the draws, so that the limits hold parameter and chance
 * variation both.
 *
 * <p>A sum of independent yes-or-no outcomes of unequal chances is taken as the binomial with the
 * same mean and variance, its number of trials not whole (Ehm 1991 bounds the error); the Poisson
 * where all chances are small, and the normal where the variance is large.
 */
public final class CountMixture {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final double LARGE_VARIANCE = 2000;
  private static final double TINY_CHANCE = 1e-9;

  /** Up to here it is quicker to add up terms from 0, and none of them vanishes. */
  private static final double SMALL_MEAN = 100;

  private static final int MOST_STEPS = 1000;

  private final double[] means;
  private final double[] variances;

  private CountMixture(double[] means, double[] variances) {
    this.means = means;
    this.variances = variances;
  }

  /**
   * A mixture with equal weights.
   *
   * @param means by draw, not negative for counts
   * @param variances by draw; of a count, not above its mean
   */
  public static CountMixture of(double[] means, double[] variances) {
    return new CountMixture(means, variances);
  }

  /** P(N ≤ k) of the count; 0 for k below 0. */
  public double atMost(long k) {
    if (k < 0) {
      return 0;
    }
    double sum = 0;
    for (int i = 0; i < means.length; i++) {
      sum += atMost(k, means[i], variances[i]);
    }
    return sum / means.length;
  }

  /** Smallest k with P(N ≤ k) ≥ share. */
  public long countQuantile(double share) {
    return Arrays.stream(means).max().orElse(0) <= SMALL_MEAN
        ? new CountWalk(means, variances, TINY_CHANCE).until(share)
        : searched(share);
  }

  private long searched(double share) {
    // The normal with the same mean and variance is near; from there in growing steps.
    long upper = Math.max(0, guess(share));
    for (long step = 1; atMost(upper) < share; step *= 2) {
      upper += step;
    }
    long below = upper - 1;
    for (long step = 1; below >= 0 && atMost(below) >= share; step *= 2) {
      upper = below;
      below -= step;
    }
    below = Math.max(-1, below);
    while (upper - below > 1) {
      long middle = (upper + below) / 2;
      if (atMost(middle) < share) {
        below = middle;
      } else {
        upper = middle;
      }
    }
    return upper;
  }

  private long guess(double share) {
    double mean = Arrays.stream(means).average().orElse(0);
    double variance = Arrays.stream(variances).average().orElse(0);
    for (double each : means) {
      variance += (each - mean) * (each - mean) / means.length;
    }
    return Math.round(mean + NORMAL.inverseCumulativeProbability(share) * Math.sqrt(variance));
  }

  /** Amount x with P(X ≤ x) = share, each draw's amount being normal. */
  public double amountQuantile(double share) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < means.length; i++) {
      double reach = 10 * Math.sqrt(variances[i]) + 1e-9;
      low = Math.min(low, means[i] - reach);
      high = Math.max(high, means[i] + reach);
    }
    double accuracy = 1e-9 * Math.max(1, Math.max(Math.abs(low), Math.abs(high)));
    return new BrentSolver(accuracy).solve(MOST_STEPS, x -> normal(x) - share, low, high);
  }

  private double normal(double x) {
    double sum = 0;
    for (int i = 0; i < means.length; i++) {
      double sd = Math.sqrt(variances[i]);
      sum += sd > 0 ? NORMAL.cumulativeProbability((x - means[i]) / sd) : x >= means[i] ? 1 : 0;
    }
    return sum / means.length;
  }

  private static double atMost(long k, double mean, double variance) {
    if (mean <= 0) {
      return 1;
    }
    if (variance > LARGE_VARIANCE) {
      return NORMAL.cumulativeProbability((k + 0.5 - mean) / Math.sqrt(variance));
    }
    double chance = 1 - variance / mean;
    if (chance < TINY_CHANCE) {
      return Gamma.regularizedGammaQ(k + 1.0, mean);
    }
    double trials = mean / chance;
    if (k >= trials) {
      return 1;
    }
    return chance >= 1 ? 0 : Beta.regularizedBeta(1 - chance, trials - k, k + 1.0);
  }
}
