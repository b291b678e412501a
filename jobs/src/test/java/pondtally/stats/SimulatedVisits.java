package pondtally.stats;

import java.util.SplittableRandom;

/** Lives drawn at random and seen at visits alone. */
final class SimulatedVisits {

  private SimulatedVisits() {}

  /**
   * Lives with Weibull failures, visited about once a year for up to twenty years; a quarter enters
   * late.
   */
  static IntervalCounts of(int lives, long seed) {
    return of(lives, seed, 365);
  }

  /** The same with another mean gap between visits. */
  static IntervalCounts of(int lives, long seed, int gapDays) {
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
}
