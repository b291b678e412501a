package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BootstrapTest {
  @Test
  void ranksByHand() {
    // Of 1 to 999, rank 1000 · 0.025 is the value 25 and rank 1000 · 0.975 the value 975.
    double[] values = IntStream.rangeClosed(1, 999).mapToDouble(i -> 1000 - i).toArray();
    assertEquals(Limits.of(25, 975), Bootstrap.of(values, 0.95).percentile());
    assertEquals(0.25, Bootstrap.of(values, 0.95).shareAbove(749.75).getAsDouble(), 1e-3);
  }

  @Test
  void fewResamplesGiveTheExtremesAndSaySo() {
    Bootstrap few = Bootstrap.of(new double[] {3, 1, 2}, 0.95);
    assertEquals(Limits.of(1, 3), few.percentile());
    assertTrue(few.extreme(0.025));
    assertTrue(few.extreme(0.975));
    assertFalse(few.extreme(0.5));
  }

  @Test
  void undefinedResamplesAreCountedAndAboveOnePerCentEndTheLimits() {
    double[] values = new double[1000];
    Arrays.setAll(values, i -> i);
    for (int i = 0; i < 10; i++) {
      values[100 * i] = i % 2 == 0 ? Double.NaN : Double.POSITIVE_INFINITY;
    }
    Bootstrap allowed = Bootstrap.of(values, 0.95);
    assertEquals(10, allowed.undefined());
    assertEquals(1000, allowed.resamples());
    assertTrue(allowed.percentile().known());
    values[1] = Double.NEGATIVE_INFINITY;
    Bootstrap tooMany = Bootstrap.of(values, 0.95);
    assertEquals(11, tooMany.undefined());
    assertEquals(Limits.none(), tooMany.percentile());
    assertEquals(Limits.none(), tooMany.bca(500, 0));
    assertEquals(OptionalDouble.empty(), tooMany.shareAbove(1));
    Bootstrap nothing = Bootstrap.of(new double[0], 0.95);
    assertEquals(Limits.none(), nothing.percentile());
    assertEquals(Limits.none(), nothing.bca(1, 0));
    assertThrows(IllegalArgumentException.class, () -> Bootstrap.of(new double[0], 1));
  }

  @Test
  void bcaWithoutBiasAndSkewnessIsThePercentileLimits() {
    double[] values = IntStream.rangeClosed(1, 1000).asDoubleStream().toArray();
    Limits bca = Bootstrap.of(values, 0.95).bca(500.5, 0);
    Limits percentile = Bootstrap.of(values, 0.95).percentile();
    assertEquals(percentile.lower().getAsDouble(), bca.lower().getAsDouble(), 1e-6);
    assertEquals(percentile.upper().getAsDouble(), bca.upper().getAsDouble(), 1e-6);
    assertEquals(Limits.none(), Bootstrap.of(values, 0.95).bca(0, 0));
    assertEquals(Limits.none(), Bootstrap.of(values, 0.95).bca(2000, 0));
  }

  @Test
  void influenceByHand() {
    // The mean of 1, 2, 6 is 3; without each: 4, 3.5, 1.5. L = 2·(3 − those) = −2, −1, 3.
    JackknifeInfluence all = JackknifeInfluence.of(3, 3).add(4).add(3.5).add(1.5);
    double a = (-8 - 1 + 27) / (6 * Math.pow(4 + 1 + 9, 1.5));
    assertEquals(a, all.acceleration().getAsDouble(), 1e-12);
    JackknifeInfluence parts =
        JackknifeInfluence.of(3, 3).add(1.5).merge(JackknifeInfluence.of(3, 3).add(3.5).add(4));
    assertEquals(all.acceleration(), parts.acceleration());
    assertThrows(IllegalArgumentException.class, () -> all.merge(JackknifeInfluence.of(2, 3)));
    assertThrows(IllegalArgumentException.class, () -> JackknifeInfluence.of(Double.NaN, 3));
  }

  @Test
  void noAccelerationWhereItIsUndefined() {
    assertEquals(OptionalDouble.empty(), JackknifeInfluence.of(1, 1).add(1).acceleration());
    assertEquals(OptionalDouble.empty(), JackknifeInfluence.of(2, 2).add(2).add(2).acceleration());
    assertEquals(
        OptionalDouble.empty(),
        JackknifeInfluence.of(2, 3).add(1).add(3).add(Double.NaN).acceleration());
    assertEquals(
        OptionalDouble.empty(), JackknifeInfluence.of(1e-30, 3).add(1).add(3).acceleration());
  }

  @Test
  void resampleSumsAreWeightedSumsInAnyOrderAndSplit() {
    Random random = new Random(8);
    ResampleSums straight = ResampleSums.of(4, 2, 50);
    ResampleSums back = ResampleSums.of(4, 2, 50);
    ResampleSums rest = ResampleSums.of(4, 2, 50);
    double[] costs = random.doubles(300, -1e7, 1e9).toArray();
    double[] byHand = new double[50];
    for (int c = 0; c < 300; c++) {
      straight.add("c" + c, costs[c], c % 3);
      (c % 2 == 0 ? back : rest).add("c" + (299 - c), costs[299 - c], (299 - c) % 3);
      for (int r = 0; r < 50; r++) {
        byHand[r] += PoissonWeights.of(4, "c" + c).weight(r) * costs[c];
      }
    }
    ResampleSums merged = back.merge(rest);
    assertEquals(300, merged.clusters());
    assertEquals(300, merged.total(1));
    assertEquals(straight.total(0), merged.total(0));
    for (int r = 0; r < 50; r++) {
      assertEquals(straight.total(0, r), merged.total(0, r));
      assertEquals(byHand[r], straight.total(0, r), 1e-9 * Math.abs(byHand[r]));
    }
  }

  @Test
  void ratioWithoutDenominatorIsUndefined() {
    ResampleSums sums = ResampleSums.of(1, 2, 1000).add("only", 5, 1);
    // One cluster is left out of a resample with probability 1/e.
    assertEquals(368, sums.ratio(0, 1, 0.95).undefined(), 60);
    assertEquals(Limits.none(), sums.ratio(0, 1, 0.95).percentile());
  }

  @Test
  void wrongSumsAreRefused() {
    ResampleSums sums = ResampleSums.of(1, 2, 10);
    assertThrows(IllegalArgumentException.class, () -> sums.add("x", 1));
    assertThrows(ArithmeticException.class, () -> sums.add("x", Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> sums.merge(ResampleSums.of(2, 2, 10)));
    assertThrows(IllegalArgumentException.class, () -> ResampleSums.of(1, 0, 10));
  }

  /**
   * Of ten clusters the 2.5 per cent quantile is taken at Φ(−2.262·√(10/9)) = 0.86 per cent; 2.262
   * is t(9) in any printed table, the widening that of Hesterberg 2015.
   */
  @Test
  void fewClustersWidenTheLimits() {
    double[] values = new double[99_999];
    for (int i = 0; i < values.length; i++) {
      values[i] = i + 1;
    }
    Limits limits = Bootstrap.expanded(values, 0.95, 10).percentile();
    assertEquals(0.00855 * 100_000, limits.lower().orElseThrow(), 5);
    assertEquals(100_000 - 0.00855 * 100_000, limits.upper().orElseThrow(), 5);
    Limits many = Bootstrap.expanded(values, 0.95, 1_000_000).percentile();
    assertEquals(2_500, many.lower().orElseThrow(), 1);
  }
}
