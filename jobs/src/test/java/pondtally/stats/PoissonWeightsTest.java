package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;

class PoissonWeightsTest {
  /** The stream is the class library's SplittableRandom, inverted by Commons Statistics. */
  @Test
  void inverseOfThePoissonDistribution() {
    PoissonWeights weights = PoissonWeights.of(7, "site-19");
    SplittableRandom words = new SplittableRandom(weights.start());
    PoissonDistribution poisson = PoissonDistribution.of(1);
    for (int r = 0; r < 200_000; r++) {
      double u = (words.nextLong() >>> 1) * 0x1p-63;
      assertEquals(poisson.inverseCumulativeProbability(u), weights.weight(r));
    }
  }

  @Test
  void fillGivesTheSameWeights() {
    PoissonWeights weights = PoissonWeights.of(-3, "12345");
    byte[] filled = new byte[5000];
    weights.fill(filled);
    for (int r = 0; r < filled.length; r++) {
      assertEquals(weights.weight(r), filled[r]);
    }
  }

  /** Worked out once and kept, so that no later change alters published limits unnoticed. */
  @Test
  void weightsStayWhatTheyWere() {
    byte[] text = new byte[12];
    PoissonWeights.of(20250601, "S-0001").fill(text);
    assertEquals("[2, 0, 0, 1, 1, 2, 2, 1, 2, 0, 0, 1]", Arrays.toString(text));
  }

  @Test
  void frequenciesArePoisson() {
    long[] seen = new long[25];
    int clusters = 2000;
    byte[] weights = new byte[1000];
    double products = 0;
    byte[] before = new byte[1000];
    for (int c = 0; c < clusters; c++) {
      PoissonWeights.of(99, "cluster " + c).fill(weights);
      for (int r = 0; r < weights.length; r++) {
        seen[weights[r]]++;
        products += (weights[r] - 1.0) * (before[r] - 1.0);
      }
      before = weights.clone();
    }
    PoissonDistribution poisson = PoissonDistribution.of(1);
    double draws = 1000.0 * clusters;
    for (int k = 0; k <= 8; k++) {
      double expected = draws * poisson.probability(k);
      assertEquals(expected, seen[k], 5 * Math.sqrt(expected), "weight " + k);
    }
    // Neighboring clusters are uncorrelated: the sum of products has mean 0 and variance 1 each.
    assertTrue(Math.abs(products) < 5 * Math.sqrt(draws), "correlation " + products / draws);
  }

  @Test
  void seedsAndClustersHaveStreamsOfTheirOwn() {
    Set<Long> starts = new HashSet<>();
    for (int seed = 0; seed < 50; seed++) {
      for (int c = 0; c < 200; c++) {
        starts.add(PoissonWeights.of(seed, "" + c).start());
      }
    }
    starts.add(PoissonWeights.of(0, "").start());
    starts.add(PoissonWeights.of(0, "\0").start());
    assertEquals(10_002, starts.size());
  }
}
