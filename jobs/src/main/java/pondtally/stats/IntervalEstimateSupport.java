package pondtally.stats;

import java.util.Arrays;
import java.util.List;

/**
 * The innermost intervals: the only places where the likelihood of interval-censored, late-entering
 * lives can gain from putting probability. Each begins at some L and ends at the next R or E with
 * no other end between (Turnbull 1976; entry ages among the right ends: Frydman 1994). Supports are
 * numbered 1 to {@code size} in order of age; boundary j lies behind support j.
 */
final class IntervalEstimateSupport {
  private static final int EXACT_LEFT = 1;
  private static final int RIGHT = 2;
  private static final int OPEN_LEFT = 4;

  private final double[] left;
  private final double[] right;

  private IntervalEstimateSupport(double[] left, double[] right) {
    this.left = left;
    this.right = right;
  }

  /** The support of the rows whose weight is above zero. */
  static IntervalEstimateSupport of(List<IntervalCounts.Row> rows, double[] weights) {
    double[] ends = ends(rows, weights);
    byte[] kinds = kinds(rows, weights, ends);
    double[] left = new double[ends.length];
    double[] right = new double[ends.length];
    int size = 0;
    double open = Double.NaN;
    for (int i = 0; i < ends.length; i++) {
      if ((kinds[i] & EXACT_LEFT) != 0) {
        open = ends[i];
      }
      if ((kinds[i] & RIGHT) != 0 && !Double.isNaN(open)) {
        left[size] = open;
        right[size++] = ends[i];
        open = Double.NaN;
      }
      if ((kinds[i] & OPEN_LEFT) != 0) {
        open = ends[i];
      }
    }
    return new IntervalEstimateSupport(Arrays.copyOf(left, size), Arrays.copyOf(right, size))
        .joined(rows, weights);
  }

  /**
   * Joins supports between which nothing tells: no failure begins or ends there, and as many lives
   * enter there as are last known working there, so that the survival between cancels. The
   * likelihood depends on the sum of their probabilities only.
   */
  private IntervalEstimateSupport joined(List<IntervalCounts.Row> rows, double[] weights) {
    boolean[] told = new boolean[right.length + 1];
    double[] net = new double[right.length + 1];
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] > 0) {
        int entered = upTo(rows.get(i).entryDays());
        int passed = passed(rows.get(i));
        net[entered] += entered == passed ? 0 : weights[i];
        net[passed] -= entered == passed ? 0 : weights[i];
        told[passed] |= rows.get(i).failed();
        told[upTo(rows.get(i).rightDays())] = true;
      }
    }
    double[] lefts = new double[right.length];
    double[] rights = new double[right.length];
    int size = 0;
    for (int j = 1; j <= right.length; j++) {
      if (j == 1 || told[j - 1] || net[j - 1] != 0) {
        lefts[size++] = left[j - 1];
      }
      rights[size - 1] = right[j - 1];
    }
    return new IntervalEstimateSupport(Arrays.copyOf(lefts, size), Arrays.copyOf(rights, size));
  }

  private static double[] ends(List<IntervalCounts.Row> rows, double[] weights) {
    double[] all = new double[3 * rows.size()];
    int n = 0;
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] > 0) {
        all[n++] = rows.get(i).entryDays();
        all[n++] = rows.get(i).leftDays();
        all[n++] = rows.get(i).rightDays();
      }
    }
    return Arrays.stream(all, 0, n).sorted().distinct().toArray();
  }

  private static byte[] kinds(List<IntervalCounts.Row> rows, double[] weights, double[] ends) {
    byte[] kinds = new byte[ends.length];
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] > 0) {
        IntervalCounts.Row row = rows.get(i);
        kinds[Arrays.binarySearch(ends, row.leftDays())] |=
            (byte) (row.exact() ? EXACT_LEFT : OPEN_LEFT);
        kinds[Arrays.binarySearch(ends, row.rightDays())] |= RIGHT;
        kinds[Arrays.binarySearch(ends, row.entryDays())] |= RIGHT;
      }
    }
    return kinds;
  }

  int size() {
    return right.length;
  }

  /**
   * Left end in days of support j, 1 to size; the end itself belongs to it only where both ends are
   * equal.
   */
  double left(int j) {
    return left[j - 1];
  }

  /** Right end in days of support j, which belongs to it unless infinite. */
  double right(int j) {
    return right[j - 1];
  }

  /** Number of supports that lie wholly at or before the age. */
  int upTo(double days) {
    int at = Arrays.binarySearch(right, days);
    return at >= 0 ? at + 1 : -at - 1;
  }

  /**
   * Number of supports that a row is known to have passed: those up to L, or before the day of a
   * failure on a known day.
   */
  int passed(IntervalCounts.Row row) {
    int j = upTo(row.leftDays());
    return row.exact() ? j - 1 : j;
  }
}
