package pondtally.stats;

import java.util.Arrays;

/**
 * The log-likelihood as a function of the cumulative hazard x_j = −log S at each boundary j = 0..m,
 * x_0 = 0:
 *
 * <p>ℓ(x) = Σ_j c_j x_j + Σ_pairs w log(1 − exp(−(x_b − x_a)))
 *
 * <p>A life that passed boundary l and failed by boundary r after entering at boundary e
 * contributes w(x_e − x_l) to the first sum and the pair (l, r) to the second, which is log of P(L
 * &lt; T ≤ R)/P(T &gt; E). In x the function is concave, late entry included, and the only
 * constraint is that x does not fall (Groeneboom &amp; Wellner 1992; late entry in this form: Pan
 * &amp; Chappell 1998).
 */
final class IntervalEstimateLikelihood {
  private final double[] linear;
  private final int[] from;
  private final int[] to;
  private final double[] weight;
  private final double totalWeight;

  private IntervalEstimateLikelihood(
      double[] linear, int[] from, int[] to, double[] weight, double totalWeight) {
    this.linear = linear;
    this.from = from;
    this.to = to;
    this.weight = weight;
    this.totalWeight = totalWeight;
  }

  /**
   * Collects lives by the boundaries at which they enter, are last known working, and are known
   * failed.
   *
   * @param entered boundary of each row's entry
   * @param passed boundary of each row's last known working age
   * @param failedBy boundary by which each row had failed, above {@code last} where that is certain
   *     in any case
   * @param first the boundary taken as 0
   * @param last the last boundary with a finite cumulative hazard
   */
  static IntervalEstimateLikelihood of(
      int[] entered, int[] passed, int[] failedBy, double[] rowWeight, int first, int last) {
    double[] linear = new double[last - first + 1];
    long[] pairs = new long[rowWeight.length];
    int n = 0;
    double total = 0;
    for (int i = 0; i < rowWeight.length; i++) {
      if (rowWeight[i] > 0 && entered[i] >= first && entered[i] <= last) {
        total += rowWeight[i];
        linear[entered[i] - first] += rowWeight[i];
        linear[passed[i] - first] -= rowWeight[i];
        if (failedBy[i] <= last) {
          pairs[n++] = ((long) (passed[i] - first) << 32) | (failedBy[i] - first);
        }
      }
    }
    long[] distinct = Arrays.stream(pairs, 0, n).sorted().distinct().toArray();
    double[] weight = new double[distinct.length];
    for (int i = 0; i < rowWeight.length; i++) {
      if (rowWeight[i] > 0 && entered[i] >= first && entered[i] <= last && failedBy[i] <= last) {
        long pair = ((long) (passed[i] - first) << 32) | (failedBy[i] - first);
        weight[Arrays.binarySearch(distinct, pair)] += rowWeight[i];
      }
    }
    int[] from = Arrays.stream(distinct).mapToInt(p -> (int) (p >> 32)).toArray();
    int[] to = Arrays.stream(distinct).mapToInt(p -> (int) p).toArray();
    return new IntervalEstimateLikelihood(linear, from, to, weight, total);
  }

  /** Number m of increments of the cumulative hazard. */
  int size() {
    return linear.length - 1;
  }

  double totalWeight() {
    return totalWeight;
  }

  /** The log-likelihood at x; minus infinity where a failure would be impossible. */
  double at(double[] x) {
    double sum = 0;
    for (int j = 0; j < x.length; j++) {
      sum += linear[j] * x[j];
    }
    for (int i = 0; i < from.length; i++) {
      double gap = x[to[i]] - x[from[i]];
      if (!(gap > 0)) {
        return Double.NEGATIVE_INFINITY;
      }
      sum += weight[i] * (gap > 0.7 ? Math.log1p(-Math.exp(-gap)) : Math.log(-Math.expm1(-gap)));
    }
    return sum;
  }

  /** Writes dℓ/dx_j into {@code slope} and −d²ℓ/dx_j² into {@code bend}. */
  void derivatives(double[] x, double[] slope, double[] bend) {
    System.arraycopy(linear, 0, slope, 0, linear.length);
    Arrays.fill(bend, 0);
    for (int i = 0; i < from.length; i++) {
      double odds = Math.expm1(x[to[i]] - x[from[i]]);
      double s = weight[i] / odds;
      double c = s * (1 + 1 / odds);
      slope[to[i]] += s;
      slope[from[i]] -= s;
      bend[to[i]] += c;
      bend[from[i]] += c;
    }
  }

  /** For each pair, −d²ℓ/dg² in its gap g = x_b − x_a. */
  double[] bends(double[] x) {
    double[] bends = new double[from.length];
    for (int i = 0; i < from.length; i++) {
      double odds = Math.expm1(x[to[i]] - x[from[i]]);
      bends[i] = weight[i] * (1 + 1 / odds) / odds;
    }
    return bends;
  }

  /** Takes from {@code slope} what the second-order model loses when x is shifted. */
  void bend(double[] slope, double[] bends, double[] shift) {
    for (int i = 0; i < from.length; i++) {
      double change = bends[i] * (shift[to[i]] - shift[from[i]]);
      slope[to[i]] -= change;
      slope[from[i]] += change;
    }
  }

  /**
   * Adds up −d²ℓ/dx² over levels, where level[j] numbers the runs of boundaries that move together
   * and level 0 does not move.
   */
  IntervalEstimateBand curvature(double[] bends, int[] level) {
    IntervalEstimateBand band = new IntervalEstimateBand(reach(level));
    for (int i = 0; i < from.length; i++) {
      if (level[from[i]] < level[to[i]]) {
        band.link(level[from[i]], level[to[i]], bends[i]);
      }
    }
    return band;
  }

  /** For each level above 0, the lowest level above 0 that shares a failure with it. */
  int[] reach(int[] level) {
    int[] lowest = new int[level[level.length - 1]];
    Arrays.setAll(lowest, k -> k);
    for (int i = 0; i < from.length; i++) {
      if (level[from[i]] > 0) {
        lowest[level[to[i]] - 1] = Math.min(lowest[level[to[i]] - 1], level[from[i]] - 1);
      }
    }
    return lowest;
  }
}
