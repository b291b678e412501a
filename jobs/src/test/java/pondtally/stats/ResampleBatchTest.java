package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ResampleBatchTest {

  private static final int RESAMPLES = 101;

  private static double[] weights(String cluster) {
    double[] weights = new double[RESAMPLES];
    PoissonWeights.of(7, cluster).fill(weights);
    return weights;
  }

  @Test
  void weightsAreTheSameAsBytesAndAsDoubles() {
    byte[] bytes = new byte[RESAMPLES];
    PoissonWeights.of(7, "S12").fill(bytes);
    double[] doubles = weights("S12");
    for (int r = 0; r < RESAMPLES; r++) {
      assertEquals(bytes[r], doubles[r]);
    }
  }

  /** Against one cluster after the other, in whole numbers; also amounts beyond {@code LARGEST}. */
  @Test
  void clustersThatWaitTogetherAddUpAsOneByOne() {
    Random random = new Random(3);
    for (double size : new double[] {1, 1e9, ResampleBatch.LARGEST, 4e15}) {
      for (int clusters = 1; clusters <= ResampleBatch.SIZE; clusters++) {
        ResampleBatch batch = new ResampleBatch();
        assertTrue(batch.isEmpty());
        double[] amounts = new double[ResampleBatch.SIZE];
        long[] expected = new long[RESAMPLES];
        for (int c = 0; c < clusters; c++) {
          double[] weights = weights("S" + random.nextInt());
          amounts[c] = Math.rint((2 * random.nextDouble() - 1) * size);
          assertEquals(c, batch.add(weights));
          for (int r = 0; r < RESAMPLES; r++) {
            expected[r] += (long) weights[r] * (long) amounts[c];
          }
        }
        assertEquals(clusters == ResampleBatch.SIZE, batch.isFull());
        long[] whole = new long[RESAMPLES];
        batch.addTo(whole, amounts, new double[RESAMPLES]);
        assertArrayEquals(expected, whole);
        if (size <= ResampleBatch.LARGEST) {
          double[] sums = new double[RESAMPLES];
          batch.addTo(sums, amounts);
          assertArrayEquals(Arrays.stream(expected).asDoubleStream().toArray(), sums);
        }
        batch.clear();
        assertTrue(batch.isEmpty());
      }
    }
  }

  @Test
  void whatIsEmptyAddsNothing() {
    double[] sums = {5};
    new ResampleBatch().addTo(sums, new double[] {1, 2, 3, 4});
    assertEquals(5, sums[0]);
  }
}
