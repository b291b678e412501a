package pondtally.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * Patterns laid out for sweeps over the failure days of each stratum. What a life does between two
 * failure days is of no consequence, so ages are kept as failure-day numbers: a life that enters at
 * number a and leaves at number b is at risk on the failure days a+1 to b.
 */
final class HazardData {
  /** Covariates of each profile, numbers centered at their mean, 0/1 columns as they are. */
  final double[][] x;

  /** What was taken from each column. */
  final double[] center;

  final List<Stratum> strata = new ArrayList<>();
  final long lives;
  final long failures;

  /** For each column, lives and failures with a value other than 0. */
  final long[] livesWith;

  final long[] failuresWith;

  /** One stratum's failure days in order and its lives by failure-day number. */
  static final class Stratum {
    final String name;
    final double[] days;
    final int[] profile;
    final double[] entry;
    final double[] exit;
    final int[] enter;
    final int[] leave;
    final boolean[] failed;
    final long[] count;
    final HazardBuckets entering;
    final HazardBuckets leaving;
    final HazardBuckets failing;

    private Stratum(String name, List<Map<HazardPatterns.Span, Long>> spans, int firstProfile) {
      this.name = name;
      days = failureDays(spans);
      int n = spans.stream().mapToInt(Map::size).sum();
      profile = new int[n];
      entry = new double[n];
      exit = new double[n];
      enter = new int[n];
      leave = new int[n];
      failed = new boolean[n];
      count = new long[n];
      int i = 0;
      for (int v = 0; v < spans.size(); v++) {
        for (Map.Entry<HazardPatterns.Span, Long> e : spans.get(v).entrySet()) {
          profile[i] = firstProfile + v;
          entry[i] = e.getKey().entryDays();
          exit[i] = e.getKey().exitDays();
          enter[i] = number(e.getKey().entryDays());
          leave[i] = number(e.getKey().exitDays());
          failed[i] = e.getKey().failed();
          count[i++] = e.getValue();
        }
      }
      entering = HazardBuckets.of(enter, profile, count, days.length, k -> enter[k] < leave[k]);
      leaving = HazardBuckets.of(leave, profile, count, days.length, k -> enter[k] < leave[k]);
      failing = HazardBuckets.of(leave, profile, count, days.length, k -> failed[k]);
    }

    private static double[] failureDays(List<Map<HazardPatterns.Span, Long>> spans) {
      return spans.stream()
          .flatMap(m -> m.keySet().stream())
          .filter(HazardPatterns.Span::failed)
          .mapToDouble(HazardPatterns.Span::exitDays)
          .sorted()
          .distinct()
          .toArray();
    }

    /** How many failure days lie at or before an age. */
    int number(double age) {
      int at = Arrays.binarySearch(days, age);
      return at >= 0 ? at + 1 : -at - 1;
    }
  }

  private HazardData(
      SortedMap<HazardPatterns.Profile, Map<HazardPatterns.Span, Long>> profiles, int columns) {
    x = profiles.keySet().stream().map(p -> p.x.clone()).toArray(double[][]::new);
    livesWith = new long[columns];
    failuresWith = new long[columns];
    List<Map<HazardPatterns.Span, Long>> spans = new ArrayList<>();
    String stratum = null;
    long all = 0;
    long failed = 0;
    int v = 0;
    long[] weight = new long[x.length];
    for (Map.Entry<HazardPatterns.Profile, Map<HazardPatterns.Span, Long>> e :
        profiles.entrySet()) {
      if (stratum != null && !stratum.equals(e.getKey().stratum)) {
        strata.add(new Stratum(stratum, spans, v - spans.size()));
        spans = new ArrayList<>();
      }
      stratum = e.getKey().stratum;
      spans.add(e.getValue());
      long here = 0;
      long failedHere = 0;
      for (Map.Entry<HazardPatterns.Span, Long> s : e.getValue().entrySet()) {
        here += s.getValue();
        failedHere += s.getKey().failed() ? s.getValue() : 0;
      }
      tally(e.getKey().x, here, failedHere);
      all += here;
      failed += failedHere;
      weight[v++] = here;
    }
    if (stratum != null) {
      strata.add(new Stratum(stratum, spans, v - spans.size()));
    }
    lives = all;
    failures = failed;
    center = centered(x, weight, columns);
  }

  static HazardData of(HazardPatterns patterns) {
    return new HazardData(patterns.profiles(), patterns.columns());
  }

  private void tally(double[] row, long here, long failedHere) {
    for (int j = 0; j < row.length; j++) {
      if (row[j] != 0) {
        livesWith[j] += here;
        failuresWith[j] += failedHere;
      }
    }
  }

  private static double[] centered(double[][] x, long[] weight, int columns) {
    double[] center = new double[columns];
    for (int j = 0; j < columns; j++) {
      double sum = 0;
      double total = 0;
      boolean indicator = true;
      for (int v = 0; v < x.length; v++) {
        sum += weight[v] * x[v][j];
        total += weight[v];
        indicator &= x[v][j] == 0 || x[v][j] == 1;
      }
      center[j] = indicator ? 0 : sum / total;
      for (double[] row : x) {
        row[j] -= center[j];
      }
    }
    return center;
  }

  /** Linear predictor of each profile, relative to the center. */
  double[] predictors(double[] beta) {
    double[] lp = new double[x.length];
    for (int v = 0; v < lp.length; v++) {
      for (int j = 0; j < beta.length; j++) {
        lp[v] += x[v][j] == 0 ? 0 : x[v][j] * beta[j];
      }
    }
    return lp;
  }
}
