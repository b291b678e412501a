package pondtally.analysis;

import java.io.Serializable;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Median of amounts, held as counts of amounts to a hundredth of a cent, so that counting in parts
 * and merging gives the same.
 */
final class EstimatedMedian implements Serializable {

  private static final long serialVersionUID = 1;
  private static final double STEPS_PER_USD = 1e4;

  /** A median of fewer amounts says nothing about a program. */
  static final long FEWEST = 3;

  private final Map<Long, Long> counts = new HashMap<>();

  void add(double amount) {
    counts.merge(Math.round(amount * STEPS_PER_USD), 1L, Long::sum);
  }

  void merge(EstimatedMedian other) {
    other.counts.forEach((step, count) -> counts.merge(step, count, Long::sum));
  }

  /** The middle amount, or the mean of the middle two; empty with fewer than three. */
  OptionalDouble value() {
    long n = counts.values().stream().mapToLong(Long::longValue).sum();
    if (n < FEWEST) {
      return OptionalDouble.empty();
    }
    TreeMap<Long, Long> sorted = new TreeMap<>(counts);
    return OptionalDouble.of((at(sorted, (n - 1) / 2) + at(sorted, n / 2)) / (2 * STEPS_PER_USD));
  }

  private static double at(TreeMap<Long, Long> counts, long rank) {
    long passed = 0;
    for (Map.Entry<Long, Long> entry : counts.entrySet()) {
      passed += entry.getValue();
      if (rank < passed) {
        return entry.getKey();
      }
    }
    throw new IllegalStateException("rank " + rank + " of " + passed);
  }
}
