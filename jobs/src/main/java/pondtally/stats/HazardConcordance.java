package pondtally.stats;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How well the model orders lives: of the pairs in which one life failed while the other, of the
 * same stratum, was at risk and outlived it, the share in which the one that failed had the higher
 * predicted hazard, ties in prediction counting half (Harrell et al. 1982; error by the
 * infinitesimal jackknife, Therneau &amp; Atkinson). 0.5 is no better than chance.
 */
public final class HazardConcordance {
  private final HazardData data;
  private final int[] rank;
  private final double[][] influence;
  private long concordant;
  private long discordant;
  private long tiedPrediction;
  private long tiedAge;
  private long tiedBoth;

  private HazardConcordance(HazardData data, double[] predictor) {
    this.data = data;
    double[] values = Arrays.stream(predictor).map(v -> v + 0.0).sorted().distinct().toArray();
    rank = Arrays.stream(predictor).mapToInt(v -> Arrays.binarySearch(values, v + 0.0)).toArray();
    for (HazardData.Stratum stratum : data.strata) {
      count(stratum, values.length);
    }
    influence = new double[data.strata.size()][];
    for (int s = 0; s < influence.length; s++) {
      influence[s] = influences(data.strata.get(s), values.length);
    }
  }

  static HazardConcordance of(HazardData data, double[] predictor) {
    return new HazardConcordance(data, predictor);
  }

  /** Pairs in which the life that failed first had the higher predicted hazard. */
  public long concordant() {
    return concordant;
  }

  /** Pairs in which it had the lower. */
  public long discordant() {
    return discordant;
  }

  /** Pairs with the same prediction. */
  public long tiedPrediction() {
    return tiedPrediction;
  }

  /** Pairs that failed at the same age with different predictions; they do not count. */
  public long tiedAge() {
    return tiedAge;
  }

  /** Pairs alike in both. */
  public long tiedBoth() {
    return tiedBoth;
  }

  /** (concordant + tied/2)/(concordant + discordant + tied); empty without a pair to compare. */
  public OptionalDouble value() {
    return pairs() == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of((concordant + tiedPrediction / 2.0) / pairs());
  }

  private double pairs() {
    return (double) concordant + discordant + tiedPrediction;
  }

  /** Standard error as if lives were independent. */
  public OptionalDouble standardError() {
    double sum = 0;
    for (int s = 0; s < influence.length; s++) {
      for (int i = 0; i < influence[s].length; i++) {
        sum += data.strata.get(s).count[i] * influence[s][i] * influence[s][i];
      }
    }
    return pairs() == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(sum));
  }

  /** One life, for {@link #clusteredStandardError}. */
  public static final class Life {
    final String stratum;
    final double[] x;
    final double entryDays;
    final double exitDays;
    final boolean failed;

    private Life(String stratum, double[] x, double entryDays, double exitDays, boolean failed) {
      this.stratum = stratum;
      this.x = x.clone();
      this.entryDays = entryDays;
      this.exitDays = exitDays;
      this.failed = failed;
    }

    /** A life as it was given to {@link HazardPatterns#add}. */
    public static Life of(
        String stratum, double[] x, double entryDays, double exitDays, boolean failed) {
      return new Life(stratum, x, entryDays, exitDays, failed);
    }
  }

  /**
   * Standard error that allows for likeness within clusters. It looks every life up in the fit, so
   * it is meant for sets that fit in memory.
   *
   * @param clusters the lives of each cluster, all of them part of the fit
   */
  public OptionalDouble clusteredStandardError(Collection<? extends Collection<Life>> clusters) {
    Map<HazardPatterns.Profile, Map<HazardPatterns.Span, Double>> table = table();
    double sum = 0;
    for (Collection<Life> cluster : clusters) {
      double shift = 0;
      for (Life life : cluster) {
        double[] centered = new double[life.x.length];
        Arrays.setAll(centered, j -> life.x[j] + 0.0 - data.center[j]);
        shift +=
            table
                .get(new HazardPatterns.Profile(life.stratum, centered))
                .get(
                    new HazardPatterns.Span(
                        life.entryDays + 0.0, life.exitDays + 0.0, life.failed));
      }
      sum += shift * shift;
    }
    return pairs() == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(sum));
  }

  private Map<HazardPatterns.Profile, Map<HazardPatterns.Span, Double>> table() {
    Map<HazardPatterns.Profile, Map<HazardPatterns.Span, Double>> table = new HashMap<>();
    for (int s = 0; s < influence.length; s++) {
      HazardData.Stratum stratum = data.strata.get(s);
      for (int i = 0; i < influence[s].length; i++) {
        table
            .computeIfAbsent(
                new HazardPatterns.Profile(stratum.name, data.x[stratum.profile[i]]),
                p -> new HashMap<>())
            .put(
                new HazardPatterns.Span(stratum.entry[i], stratum.exit[i], stratum.failed[i]),
                influence[s][i]);
      }
    }
    return table;
  }

  /**
   * Goes back through the failure days with the lives that outlive each in a tree by predicted
   * hazard.
   */
  private void count(HazardData.Stratum stratum, int ranks) {
    HazardCountTree outlive = new HazardCountTree(ranks);
    for (int k = stratum.days.length; k >= 1; k--) {
      move(outlive, stratum.leaving, k, 1);
      move(outlive, stratum.entering, k, -1);
      move(outlive, stratum.failing, k, -1);
      HazardBuckets failing = stratum.failing;
      long before = 0;
      Map<Integer, Long> sameRank = new HashMap<>();
      for (int e = failing.from(k); e < failing.to(k); e++) {
        int r = rank[failing.profile(e)];
        long n = failing.count(e);
        concordant += n * outlive.below(r);
        discordant += n * outlive.above(r);
        tiedPrediction += n * outlive.equal(r);
        long same = sameRank.getOrDefault(r, 0L);
        tiedBoth += n * same + n * (n - 1) / 2;
        tiedAge += n * (before - same);
        before += n;
        sameRank.merge(r, n, Long::sum);
      }
      move(outlive, failing, k, 1);
    }
  }

  private void move(HazardCountTree tree, HazardBuckets lives, int number, int sign) {
    for (int e = lives.from(number); e < lives.to(number); e++) {
      tree.add(rank[lives.profile(e)], sign * lives.count(e));
    }
  }

  /** For each pattern, d concordance / d weight of one of its lives. */
  private double[] influences(HazardData.Stratum stratum, int ranks) {
    int n = stratum.count.length;
    double[] agree = new double[n];
    double[] differ = new double[n];
    double[] tie = new double[n];
    asFirst(stratum, ranks, agree, differ, tie);
    asLater(stratum, ranks, agree, differ, tie);
    double[] influence = new double[n];
    double c = value().orElse(0);
    for (int i = 0; i < n; i++) {
      influence[i] =
          pairs() == 0
              ? 0
              : (agree[i] + tie[i] / 2 - c * (agree[i] + differ[i] + tie[i])) / pairs();
    }
    return influence;
  }

  private void asFirst(
      HazardData.Stratum stratum, int ranks, double[] agree, double[] differ, double[] tie) {
    int[][] failedOn = rowsBy(stratum.leave, stratum.days.length, stratum.failed);
    HazardCountTree outlive = new HazardCountTree(ranks);
    for (int k = stratum.days.length; k >= 1; k--) {
      move(outlive, stratum.leaving, k, 1);
      move(outlive, stratum.entering, k, -1);
      move(outlive, stratum.failing, k, -1);
      for (int i : failedOn[k]) {
        int r = rank[stratum.profile[i]];
        agree[i] += outlive.below(r);
        differ[i] += outlive.above(r);
        tie[i] += outlive.equal(r);
      }
      move(outlive, stratum.failing, k, 1);
    }
  }

  /**
   * A life outlives the failures from its entry to its end, those on the day of its own failure
   * left out.
   */
  private void asLater(
      HazardData.Stratum stratum, int ranks, double[] agree, double[] differ, double[] tie) {
    int n = stratum.count.length;
    int[] last = new int[n];
    Arrays.setAll(
        last,
        i ->
            Math.max(
                stratum.enter[i], stratum.failed[i] ? stratum.leave[i] - 1 : stratum.leave[i]));
    int[][] ends = rowsBy(last, stratum.days.length, null);
    int[][] begins = rowsBy(stratum.enter, stratum.days.length, null);
    HazardCountTree failed = new HazardCountTree(ranks);
    for (int k = 0; k <= stratum.days.length; k++) {
      move(failed, stratum.failing, k, 1);
      tally(stratum, ends[k], 1, failed, agree, differ, tie);
      tally(stratum, begins[k], -1, failed, agree, differ, tie);
    }
  }

  private void tally(
      HazardData.Stratum stratum,
      int[] rows,
      int sign,
      HazardCountTree failed,
      double[] agree,
      double[] differ,
      double[] tie) {
    for (int i : rows) {
      int r = rank[stratum.profile[i]];
      agree[i] += sign * failed.above(r);
      differ[i] += sign * failed.below(r);
      tie[i] += sign * failed.equal(r);
    }
  }

  private static int[][] rowsBy(int[] number, int most, boolean[] chosen) {
    int[] size = new int[most + 1];
    for (int i = 0; i < number.length; i++) {
      size[number[i]] += chosen == null || chosen[i] ? 1 : 0;
    }
    int[][] rows = new int[most + 1][];
    Arrays.setAll(rows, k -> new int[size[k]]);
    for (int i = number.length - 1; i >= 0; i--) {
      if (chosen == null || chosen[i]) {
        rows[number[i]][--size[number[i]]] = i;
      }
    }
    return rows;
  }
}
