package pondtally.stats;

/**
 * Cumulative probabilities of a mixture of counts, from 0 upward: each step takes one
 * multiplication for each draw. The law of a draw is that of {@link CountMixture}: binomial with a
 * number of trials that need not be whole, or Poisson where all chances are small. For real n the
 * terms Γ(n+1) / (Γ(k+1) Γ(n−k+1)) · pᵏ (1−p)ⁿ⁻ᵏ add up to the incomplete beta function (Abramowitz
 * &amp; Stegun 1964, 26.5.16).
 */
final class CountWalk {

  private final double[] means;

  /** Chance over its complement, 0 for Poisson. */
  private final double[] odds;

  private final double[] trials;
  private final double[] terms;
  private final double[] sums;
  private long count;

  /**
   * Stands at a count of 0.
   *
   * @param tinyChance a chance below which a draw is Poisson
   */
  CountWalk(double[] means, double[] variances, double tinyChance) {
    this.means = means;
    odds = new double[means.length];
    trials = new double[means.length];
    terms = new double[means.length];
    for (int i = 0; i < means.length; i++) {
      start(i, means[i] <= 0 ? 0 : 1 - variances[i] / means[i], tinyChance);
    }
    sums = terms.clone();
  }

  private void start(int i, double chance, double tinyChance) {
    if (means[i] <= 0) {
      terms[i] = 1;
    } else if (chance < tinyChance) {
      trials[i] = Double.POSITIVE_INFINITY;
      terms[i] = Math.exp(-means[i]);
    } else {
      odds[i] = chance / (1 - chance);
      trials[i] = means[i] / chance;
      terms[i] = chance >= 1 ? 0 : Math.exp(trials[i] * Math.log1p(-chance));
    }
  }

  /** The first count at which the share is reached, from where it stands. */
  long until(double share) {
    while (atMost() < share) {
      count++;
      for (int i = 0; i < terms.length; i++) {
        terms[i] = term(i);
        sums[i] += terms[i];
      }
    }
    return count;
  }

  private double term(int i) {
    if (count >= trials[i]) {
      return 1 - sums[i];
    }
    return odds[i] == 0
        ? terms[i] * means[i] / count
        : terms[i] == 0 ? 0 : terms[i] * odds[i] * (trials[i] - count + 1) / count;
  }

  private double atMost() {
    double sum = 0;
    for (double each : sums) {
      sum += each;
    }
    return sum / sums.length;
  }
}
