package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;

class CountMixtureTest {

  private static CountMixture one(double mean, double variance) {
    return CountMixture.of(new double[] {mean}, new double[] {variance});
  }

  /** Against Apache Commons Statistics. */
  @Test
  void equalChancesGiveTheBinomial() {
    BinomialDistribution binomial = BinomialDistribution.of(40, 0.3);
    CountMixture count = one(12, 12 * 0.7);
    for (int k = 0; k < 40; k++) {
      assertEquals(binomial.cumulativeProbability(k), count.atMost(k), 1e-9);
    }
    assertEquals(binomial.inverseCumulativeProbability(0.025), count.countQuantile(0.025));
    assertEquals(binomial.inverseCumulativeProbability(0.975), count.countQuantile(0.975));
  }

  /** Against Apache Commons Statistics. */
  @Test
  void tinyChancesGiveThePoisson() {
    PoissonDistribution poisson = PoissonDistribution.of(4.2);
    CountMixture count = one(4.2, 4.2);
    for (int k = 0; k < 20; k++) {
      assertEquals(poisson.cumulativeProbability(k), count.atMost(k), 1e-9);
    }
    assertEquals(0, count.atMost(-1));
    assertEquals(0, one(0, 0).countQuantile(0.975));
  }

  /** The exact distribution by adding one outcome after another. */
  @Test
  void unequalChancesComeWithinAPercentOfTheExactDistribution() {
    Random random = new Random(1);
    double[] exact = {1};
    double mean = 0;
    double variance = 0;
    for (int i = 0; i < 60; i++) {
      double p = 0.02 + 0.4 * random.nextDouble() * random.nextDouble();
      mean += p;
      variance += p * (1 - p);
      double[] next = new double[exact.length + 1];
      for (int k = 0; k < exact.length; k++) {
        next[k] += exact[k] * (1 - p);
        next[k + 1] += exact[k] * p;
      }
      exact = next;
    }
    CountMixture count = one(mean, variance);
    double sum = 0;
    for (int k = 0; k < 30; k++) {
      sum += exact[k];
      assertEquals(sum, count.atMost(k), 0.01);
    }
  }

  @Test
  void theMixtureIsTheMeanOverItsDraws() {
    CountMixture both = CountMixture.of(new double[] {2, 10}, new double[] {2, 10});
    assertEquals((one(2, 2).atMost(5) + one(10, 10).atMost(5)) / 2, both.atMost(5), 1e-15);
    assertTrue(both.countQuantile(0.975) > one(6, 6).countQuantile(0.975));
  }

  @Test
  void largeCountsAreNormal() {
    CountMixture count = one(40_000, 36_000);
    double upper = 40_000 + 1.959963984540054 * Math.sqrt(36_000);
    assertEquals(upper, count.countQuantile(0.975), 1);
  }

  /** Against Apache Commons Statistics. */
  @Test
  void amountsAreNormalInEachDraw() {
    CountMixture amount = CountMixture.of(new double[] {100}, new double[] {25});
    assertEquals(
        NormalDistribution.of(100, 5).inverseCumulativeProbability(0.9),
        amount.amountQuantile(0.9),
        1e-5);
    assertEquals(7, CountMixture.of(new double[] {7}, new double[] {0}).amountQuantile(0.3), 1e-5);
  }

  /** Binomials with trials that are not whole, and one that is certain. */
  @Test
  void termsAddUpToTheIncompleteBetaFunction() {
    double[] means = {7.3, 40, 6, 0};
    double[] variances = {7.3 * 0.4, 40 * 0.95, 0, 0};
    CountMixture mixture = CountMixture.of(means, variances);
    for (double share = 0.0025; share < 1; share += 0.0025) {
      long k = mixture.countQuantile(share);
      assertTrue(mixture.atMost(k) >= share - 1e-13 && mixture.atMost(k - 1) < share, "" + share);
    }
  }

  /** By trying every count from 0: where the first guess is too high, too low, and right. */
  @Test
  void theQuantileIsTheSmallestCountThatReachesTheShare() {
    double[][] means = {{0.2}, {0.9, 4}, {0, 3}, {3, 3.5, 40}, {30, 31, 29}, {1, 99}, {1, 200}};
    for (double[] each : means) {
      CountMixture mixture = CountMixture.of(each, each);
      for (double share : new double[] {0.005, 0.025, 0.3, 0.5, 0.8, 0.95, 0.975, 0.995}) {
        long k = 0;
        while (mixture.atMost(k) < share) {
          k++;
        }
        assertEquals(k, mixture.countQuantile(share), Arrays.toString(each) + " " + share);
      }
    }
  }
}
