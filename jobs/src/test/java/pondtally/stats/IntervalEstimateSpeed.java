package pondtally.stats;

import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;

/** Prints how long the interval estimate takes; run by hand, not a test. Arguments: lives, runs. */
final class IntervalEstimateSpeed {
  private IntervalEstimateSpeed() {}

  /**
   * Lives with Weibull failures, visited about once a year for up to twenty years; a quarter enters
   * late.
   */
  static IntervalCounts simulated(int lives, long seed) {
    return simulated(lives, seed, 365);
  }

  static IntervalCounts simulated(int lives, long seed, int gapDays) {
    SplittableRandom random = new SplittableRandom(seed);
    IntervalCounts counts = IntervalCounts.empty();
    for (int i = 0; i < lives; i++) {
      double entry = random.nextInt(4) == 0 ? random.nextInt(1000) : 0;
      double failure = 0;
      while (failure <= entry) {
        failure = 3000 * Math.pow(-Math.log(1 - random.nextDouble()), 1 / 1.4);
      }
      double end = entry + 1 + random.nextInt(7000);
      double left = entry;
      double next = entry + 1 + random.nextInt(2 * gapDays);
      while (next < failure && next < end) {
        left = next;
        next += 1 + random.nextInt(2 * gapDays);
      }
      counts.add(entry, left, next < end ? next : Double.POSITIVE_INFINITY, 1);
    }
    return counts;
  }

  public static void main(String[] args) {
    int lives = args.length > 0 ? Integer.parseInt(args[0]) : 20_000;
    int runs = args.length > 1 ? Integer.parseInt(args[1]) : 5;
    int gap = args.length > 2 ? Integer.parseInt(args[2]) : 365;
    IntervalCounts counts = simulated(lives, 1, gap);
    double[] seconds = new double[runs];
    double[] again = new double[runs];
    IntervalEstimate estimate = null;
    for (int i = 0; i < runs; i++) {
      long start = System.nanoTime();
      estimate = IntervalEstimate.of(counts);
      seconds[i] = (System.nanoTime() - start) / 1e9;
      SplittableRandom random = new SplittableRandom(i);
      double[] weights =
          estimate.rows().stream()
              .mapToDouble(r -> -Math.log(1 - random.nextDouble()) * r.count())
              .toArray();
      start = System.nanoTime();
      IntervalEstimate resample = estimate.reweighted(weights);
      again[i] = (System.nanoTime() - start) / 1e9;
      System.out.printf(
          Locale.ROOT,
          "  resample residual %.1e, %d iterations%n",
          resample.residual(),
          resample.iterations());
    }
    Arrays.sort(seconds);
    Arrays.sort(again);
    System.out.printf(
        Locale.ROOT,
        "%d lives, %d distinct, %d supports (%d with mass), rounded to %d days: %.2f s (%.2f to %.2f), reweighted %.2f s; %d iterations, residual %.1e%n",
        lives,
        counts.distinct(),
        estimate.masses().size(),
        estimate.masses().stream().filter(m -> m.mass() > 0).count(),
        estimate.roundedToDays(),
        seconds[runs / 2],
        seconds[0],
        seconds[runs - 1],
        again[runs / 2],
        estimate.iterations(),
        estimate.residual());
  }
}
