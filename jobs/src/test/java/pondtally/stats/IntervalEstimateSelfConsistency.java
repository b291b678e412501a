package pondtally.stats;

import java.util.Arrays;
import java.util.List;

/**
 * Turnbull's 1976 self-consistency iteration by plain sums over all pairs: slow, simple, and
 * written without the solver's ideas.
 */
final class IntervalEstimateSelfConsistency {
  private IntervalEstimateSelfConsistency() {}

  static double[] masses(
      List<IntervalCounts.Row> rows, List<IntervalEstimate.Mass> support, int iterations) {
    double[] p = new double[support.size()];
    Arrays.fill(p, 1.0 / p.length);
    for (int iteration = 0; iteration < iterations; iteration++) {
      double[] share = new double[p.length];
      double total = 0;
      for (IntervalCounts.Row row : rows) {
        double seen = probability(row, support, p, false);
        double atRisk = probability(row, support, p, true);
        for (int j = 0; j < p.length; j++) {
          share[j] += row.count() * (holds(row, support.get(j)) ? p[j] / seen : 0);
          share[j] += row.count() * (beyondEntry(row, support.get(j)) ? 0 : p[j] / atRisk);
        }
        total += row.count() / atRisk;
      }
      double change = 0;
      for (int j = 0; j < p.length; j++) {
        change = Math.max(change, Math.abs(share[j] / total - p[j]));
        p[j] = share[j] / total;
      }
      if (change < 1e-15) {
        break;
      }
    }
    return p;
  }

  static double logLikelihood(
      List<IntervalCounts.Row> rows, List<IntervalEstimate.Mass> support, double[] p) {
    double sum = 0;
    for (IntervalCounts.Row row : rows) {
      sum +=
          row.count()
              * Math.log(probability(row, support, p, false) / probability(row, support, p, true));
    }
    return sum;
  }

  private static double probability(
      IntervalCounts.Row row, List<IntervalEstimate.Mass> support, double[] p, boolean ofEntry) {
    double sum = 0;
    for (int j = 0; j < p.length; j++) {
      sum += (ofEntry ? beyondEntry(row, support.get(j)) : holds(row, support.get(j))) ? p[j] : 0;
    }
    return sum;
  }

  private static boolean holds(IntervalCounts.Row row, IntervalEstimate.Mass mass) {
    if (row.exact()) {
      return mass.leftDays() == row.leftDays() && mass.rightDays() == row.rightDays();
    }
    boolean point = mass.leftDays() == mass.rightDays();
    return (point ? mass.leftDays() > row.leftDays() : mass.leftDays() >= row.leftDays())
        && mass.rightDays() <= row.rightDays();
  }

  private static boolean beyondEntry(IntervalCounts.Row row, IntervalEstimate.Mass mass) {
    boolean point = mass.leftDays() == mass.rightDays();
    return point ? mass.leftDays() > row.entryDays() : mass.leftDays() >= row.entryDays();
  }
}
