package pondtally.stats;

import java.util.List;
import java.util.Optional;

/**
 * Masses and survival over a support, with the log-likelihood and how well it was maximized.
 *
 * <p>Where no life at risk is known to have passed support k, its hazard is infinite and the
 * likelihood falls apart into the part before and the part after, which share no life. Each part is
 * solved for itself. The last support always is such a place; an earlier one means that the lives
 * at risk ran out.
 */
final class IntervalEstimateFit {
  private final double[] survival;
  private final double[] mass;
  private final int emptied;
  private double logLikelihood;
  private double residual;
  private int iterations;

  private IntervalEstimateFit(int supports, int emptied) {
    survival = new double[supports + 1];
    mass = new double[supports + 1];
    survival[0] = 1;
    this.emptied = emptied;
  }

  static IntervalEstimateFit of(
      List<IntervalCounts.Row> rows,
      double[] weights,
      IntervalEstimateSupport support,
      Optional<IntervalEstimate> older) {
    int n = rows.size();
    int[] entered = new int[n];
    int[] passed = new int[n];
    int[] failedBy = new int[n];
    for (int i = 0; i < n; i++) {
      entered[i] = support.upTo(rows.get(i).entryDays());
      passed[i] = support.passed(rows.get(i));
      failedBy[i] = support.upTo(rows.get(i).rightDays());
    }
    double[] known = spread(entered, passed, weights, support.size(), false);
    int last = 1;
    while (last < support.size() && known[last] > 0) {
      last++;
    }
    IntervalEstimateFit fit = new IntervalEstimateFit(support.size(), last);
    double[] failures = spread(passed, failedBy, weights, support.size(), true);
    for (int first = 0; first < support.size(); first = last) {
      last = first + 1;
      while (known[last] > 0) {
        last++;
      }
      IntervalEstimateLikelihood likelihood =
          IntervalEstimateLikelihood.of(entered, passed, failedBy, weights, first, last - 1);
      fit.take(
          IntervalEstimateSolver.solve(
              likelihood, start(first, last, known, failures, support, older)),
          first);
    }
    return fit;
  }

  private static double[] start(
      int first,
      int last,
      double[] known,
      double[] failures,
      IntervalEstimateSupport support,
      Optional<IntervalEstimate> older) {
    double[] x = new double[last - first];
    for (int k = 1; k < x.length; k++) {
      int j = first + k;
      double cold = Math.max(1e-9, Math.log1p(failures[j] / known[j]));
      double warm = older.map(o -> behind(o, support, j) - behind(o, support, j - 1)).orElse(cold);
      x[k] = x[k - 1] + (warm >= 0 && warm < 1e3 ? warm : cold);
    }
    return x;
  }

  /**
   * An older estimate's cumulative hazard behind support j, half of any rise before the next
   * support counted. The older support is the finer, so an interval that held probability there
   * holds some here.
   */
  private static double behind(IntervalEstimate older, IntervalEstimateSupport support, int j) {
    if (j == 0) {
      return 0;
    }
    double left = support.left(j + 1);
    double next = left == support.right(j + 1) ? Math.nextDown(left) : left;
    return (older.cumulativeHazard(support.right(j)) + older.cumulativeHazard(next)) / 2;
  }

  private void take(IntervalEstimateSolver.Solution solution, int first) {
    logLikelihood += solution.logLikelihood;
    residual = Math.max(residual, solution.residual);
    iterations += solution.iterations;
    if (first == 0) {
      double[] x = solution.cumulativeHazard;
      for (int k = 1; k < x.length; k++) {
        survival[k] = Math.exp(-x[k]);
        mass[k] = survival[k - 1] * -Math.expm1(x[k - 1] - x[k]);
      }
      mass[x.length] = survival[x.length - 1];
    }
  }

  /**
   * Sums weights over the supports after boundary from[i] up to boundary to[i], shared out evenly
   * among them or each in full.
   */
  private static double[] spread(
      int[] from, int[] to, double[] weights, int supports, boolean evenly) {
    double[] sum = new double[supports + 2];
    int[] rows = new int[supports + 2];
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] > 0 && to[i] > from[i]) {
        double each = evenly ? weights[i] / (to[i] - from[i]) : weights[i];
        sum[from[i] + 1] += each;
        sum[to[i] + 1] -= each;
        rows[from[i] + 1]++;
        rows[to[i] + 1]--;
      }
    }
    for (int j = 1; j <= supports; j++) {
      sum[j] += sum[j - 1];
      rows[j] += rows[j - 1];
      if (rows[j] == 0) {
        sum[j] = 0; // rounding must not leave a trace where there is no life
      }
    }
    return sum;
  }

  /** The failures seen, shared out over supports: Σ weight · p_j / P(L &lt; T ≤ R). */
  double[] expectedFailures(
      List<IntervalCounts.Row> rows, double[] weights, IntervalEstimateSupport support) {
    double[] density = new double[support.size() + 2];
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] > 0 && rows.get(i).failed()) {
        int from = support.passed(rows.get(i));
        int to = support.upTo(rows.get(i).rightDays());
        double probability = survival[from] - survival[to];
        if (probability > 0) {
          density[from + 1] += weights[i] / probability;
          density[to + 1] -= weights[i] / probability;
        }
      }
    }
    double[] failures = new double[support.size() + 1];
    for (int j = 1; j <= support.size(); j++) {
      density[j] += density[j - 1];
      failures[j] = Math.max(0, density[j]) * mass[j];
    }
    return failures;
  }

  /**
   * Lives at risk before each support and known to outlive it, or seen to fail in an interval that
   * holds it.
   */
  static double[] atRisk(
      List<IntervalCounts.Row> rows, double[] weights, IntervalEstimateSupport support) {
    int[] entered = new int[weights.length];
    int[] followed = new int[weights.length];
    for (int i = 0; i < weights.length; i++) {
      IntervalCounts.Row row = rows.get(i);
      entered[i] = support.upTo(row.entryDays());
      followed[i] = row.failed() ? support.upTo(row.rightDays()) : support.passed(row);
    }
    return spread(entered, followed, weights, support.size(), false);
  }

  double survival(int boundary) {
    return survival[boundary];
  }

  double mass(int j) {
    return mass[j];
  }

  /** The first support after which no life at risk is left. */
  int emptied() {
    return emptied;
  }

  double logLikelihood() {
    return logLikelihood;
  }

  double residual() {
    return residual;
  }

  int iterations() {
    return iterations;
  }
}
