package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MeanCumulativeTest {
  @Test
  void handFractions() {
    // Two devices to 10, failures at 2 and 6 in one, at 6 in the other; one from 4 to 8, none.
    List<RepeatHistory> devices =
        List.of(RepeatHistory.of(0, 10, 6, 2), RepeatHistory.of(0, 10, 6), RepeatHistory.of(4, 8));
    MeanCumulative mean = MeanCumulative.of(counts(devices));
    assertEquals(2, mean.atRisk(0));
    assertEquals(3, mean.atRisk(1));
    assertEquals(1 / 2.0, mean.mean(0), 1e-12);
    assertEquals(1 / 2.0 + 2 / 3.0, mean.mean(1), 1e-12);
    assertEquals(1 / 4.0 + 2 / 9.0, mean.poissonVariance(1), 1e-12);
    double[] robust = spread(mean, devices).variances();
    // ψ at 2: ±1/4. At 6 each adds (d − 2/3)/3: 1/9, 1/9, −2/9.
    assertEquals(1 / 16.0 + 1 / 16.0, robust[0], 1e-12);
    double first = 1 / 4.0 + 1 / 9.0;
    double second = -1 / 4.0 + 1 / 9.0;
    assertEquals(first * first + second * second + 4 / 81.0, robust[1], 1e-12);
    // The first two as one cluster.
    double[] clustered =
        mean.spread().add(devices.subList(0, 2)).add(devices.subList(2, 3)).variances();
    assertEquals(0, clustered[0], 1e-12);
    assertEquals(4 / 81.0 + 4 / 81.0, clustered[1], 1e-12);
  }

  /** Against the defining double sum over devices and event times. */
  @Test
  void agreesWithTheDefinitionForClustersWithDelayedEntry() {
    Random random = new Random(17);
    List<List<RepeatHistory>> clusters = new ArrayList<>();
    List<RepeatHistory> all = new ArrayList<>();
    for (int c = 0; c < 60; c++) {
      List<RepeatHistory> cluster = new ArrayList<>();
      for (int i = 0; i <= random.nextInt(4); i++) {
        cluster.add(history(random));
      }
      clusters.add(cluster);
      all.addAll(cluster);
    }
    MeanCumulative mean = MeanCumulative.of(counts(all));
    RepeatSpread spread = mean.spread();
    clusters.forEach(spread::add);
    double[] variances = spread.variances();
    for (int row = 0; row < mean.rows(); row++) {
      double expected = 0;
      for (List<RepeatHistory> cluster : clusters) {
        double psi = cluster.stream().mapToDouble(d -> 0).sum();
        for (RepeatHistory device : cluster) {
          for (int k = 0; k <= row; k++) {
            double t = mean.time(k);
            double n = mean.atRisk(k);
            long own = Arrays.stream(device.eventTimes()).filter(e -> e == t).count();
            boolean atRisk = device.entry() < t && t <= device.exit();
            psi += atRisk ? (own - mean.events(k) / n) / n : 0;
          }
        }
        expected += psi * psi;
      }
      assertEquals(expected, variances[row], 1e-9 * expected);
    }
  }

  @Test
  void orderAndSplitDoNotMatter() {
    Random random = new Random(18);
    List<RepeatHistory> devices = new ArrayList<>();
    for (int i = 0; i < 500; i++) {
      devices.add(history(random));
    }
    MeanCumulative mean = MeanCumulative.of(counts(devices));
    double[] forward = spread(mean, devices).variances();
    List<RepeatHistory> shuffled = new ArrayList<>(devices);
    Collections.shuffle(shuffled, random);
    RepeatCounts merged =
        counts(shuffled.subList(0, 123)).merge(counts(shuffled.subList(123, 500)));
    MeanCumulative again = MeanCumulative.of(merged);
    RepeatSpread parts =
        spread(again, shuffled.subList(0, 200)).merge(spread(again, shuffled.subList(200, 500)));
    assertArrayEquals(forward, parts.variances());
    for (int row = 0; row < mean.rows(); row++) {
      assertEquals(mean.mean(row), again.mean(row));
    }
  }

  @Test
  void edges() {
    MeanCumulative none = MeanCumulative.of(new RepeatCounts());
    assertEquals(0, none.rows());
    assertEquals(0, none.spread().variances().length);
    assertEquals(OptionalDouble.empty(), none.lastTimeWithAtRisk(1));
    List<RepeatHistory> one = List.of(RepeatHistory.of(0, 9, 3, 3));
    MeanCumulative single = MeanCumulative.of(counts(one));
    assertEquals(2, single.mean(0));
    assertEquals(0, spread(single, one).variances()[0]);
    assertEquals(Limits.none(), single.limits(0, 0, 0.95));
    assertEquals(3, single.lastTimeWithAtRisk(1).getAsDouble());
    List<RepeatHistory> unseen = List.of(RepeatHistory.of(0, 9, 4));
    assertThrows(IllegalArgumentException.class, () -> single.spread().add(unseen));
    assertThrows(IllegalArgumentException.class, () -> single.spread().merge(none.spread()));
    assertThrows(IllegalArgumentException.class, () -> RepeatHistory.of(2, 9, 2));
    assertThrows(IllegalArgumentException.class, () -> RepeatHistory.of(2, 9, 9.5));
    assertThrows(IllegalArgumentException.class, () -> RepeatHistory.of(2, 1));
    assertThrows(IllegalArgumentException.class, () -> RepeatHistory.of(2, 9, Double.NaN));
  }

  private static RepeatHistory history(Random random) {
    double entry = random.nextInt(3) == 0 ? random.nextInt(20) : 0;
    double length = 1 + random.nextInt(40);
    double[] events =
        random.ints(random.nextInt(4), 1, (int) length + 1).mapToDouble(t -> entry + t).toArray();
    return RepeatHistory.of(entry, entry + length, events);
  }

  private static RepeatCounts counts(List<RepeatHistory> devices) {
    RepeatCounts counts = new RepeatCounts();
    devices.forEach(counts::add);
    return counts;
  }

  private static RepeatSpread spread(MeanCumulative mean, List<RepeatHistory> devices) {
    RepeatSpread spread = mean.spread();
    devices.forEach(d -> spread.add(List.of(d)));
    return spread;
  }
}
