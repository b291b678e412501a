package pondtally.analysis;

import java.io.IOException;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import pondtally.stats.ExactSum;
import pondtally.stats.ResampleBatch;

/**
 * One group's cost and outcome, in the data and in every resample of the clusters. What was paid is
 * resampled once for all the measures that a cluster counts in, by the set of those measures.
 * Resampled sums are whole millionths.
 */
final class EffectSums implements Serializable {

  private static final long serialVersionUID = 1;
  private static final double MILLION = 1e6;

  private final OfMeasure[] byMeasure = new OfMeasure[Measure.ALL.size()];
  private final Map<Integer, Paid> paid = new HashMap<>();
  private final int resamples;
  private transient Waiting waiting;

  EffectSums(int resamples) {
    this.resamples = resamples;
    Arrays.setAll(byMeasure, m -> new OfMeasure(resamples));
  }

  /** Sums of one measure over the clusters that count in it. */
  static final class OfMeasure implements Serializable {
    private static final long serialVersionUID = 1;
    private long clusters;
    private long leftOut;
    private final ExactSum cash = new ExactSum();
    private final ExactSum all = new ExactSum();
    private final ExactSum units = new ExactSum();
    private final double[] unitDraws;

    private OfMeasure(int resamples) {
      unitDraws = new double[resamples];
    }

    private void add(Effect effect, double denominator) {
      clusters++;
      cash.add(effect.cashUsd());
      all.add(effect.allUsd());
      units.add(denominator);
    }

    private void merge(OfMeasure other) {
      clusters += other.clusters;
      leftOut += other.leftOut;
      cash.merge(other.cash);
      all.merge(other.all);
      units.merge(other.units);
      mergeDraws(unitDraws, other.unitDraws);
    }

    long clusters() {
      return clusters;
    }

    long leftOut() {
      return leftOut;
    }

    /** Dollars of the base year in cash. */
    double cash() {
      return cash.result();
    }

    /** Dollars of the base year with in-kind value. */
    double all() {
      return all.result();
    }

    double units() {
      return units.result();
    }

    /** Units in each resample, in millionths. */
    double[] unitDraws() {
      return unitDraws;
    }
  }

  /** Resampled dollars, in millionths. */
  private static final class Paid implements Serializable {
    private static final long serialVersionUID = 1;
    private final double[] cash;
    private final double[] inKind;

    Paid(int resamples) {
      cash = new double[resamples];
      inKind = new double[resamples];
    }

    private void merge(Paid other) {
      mergeDraws(cash, other.cash);
      mergeDraws(inKind, other.inKind);
    }
  }

  /** Clusters that are not yet in the resampled sums: their amounts, in millionths. */
  private static final class Waiting {
    private final ResampleBatch clusters = new ResampleBatch();
    private final double[][] units = new double[Measure.ALL.size()][ResampleBatch.SIZE];
    private final double[] cash = new double[ResampleBatch.SIZE];
    private final double[] inKind = new double[ResampleBatch.SIZE];
    private final int[] measures = new int[ResampleBatch.SIZE];
  }

  /** Adds a cluster with its weights. */
  void add(Effect effect, double[] weights) {
    waiting = waiting == null ? new Waiting() : waiting;
    int at = waiting.clusters.add(weights);
    int counted = 0;
    for (Measure measure : Measure.ALL) {
      OfMeasure s = byMeasure[measure.ordinal()];
      Double denominator = measure.denominator(effect);
      boolean counts = effect.costed() && denominator != null;
      if (counts) {
        s.add(effect, denominator);
        counted |= 1 << measure.ordinal();
      } else {
        s.leftOut++;
      }
      waiting.units[measure.ordinal()][at] = counts ? millionths(denominator) : 0;
    }
    double cash = millionths(effect.cashUsd());
    waiting.measures[at] = counted;
    waiting.cash[at] = cash;
    waiting.inKind[at] = millionths(effect.allUsd()) - cash;
    if (waiting.clusters.isFull()) {
      settle();
    }
  }

  private static double millionths(double amount) {
    return Math.rint(amount * MILLION);
  }

  /** Adds the waiting clusters to the resampled sums. */
  private void settle() {
    if (waiting == null || waiting.clusters.isEmpty()) {
      return;
    }
    for (int m = 0; m < byMeasure.length; m++) {
      waiting.clusters.addTo(byMeasure[m].unitDraws, waiting.units[m]);
    }
    for (int at = 0; at < ResampleBatch.SIZE; at++) {
      int measures = waiting.measures[at];
      if (measures != 0) {
        Paid into = paid.computeIfAbsent(measures, m -> new Paid(resamples));
        waiting.clusters.addTo(into.cash, of(measures, waiting.cash));
        waiting.clusters.addTo(into.inKind, of(measures, waiting.inKind));
        done(measures);
      }
    }
    waiting.clusters.clear();
  }

  /** The amounts of clusters that count in just these measures; 0 for others. */
  private double[] of(int measures, double[] amounts) {
    double[] own = new double[amounts.length];
    for (int i = 0; i < own.length; i++) {
      own[i] = waiting.measures[i] == measures ? amounts[i] : 0;
    }
    return own;
  }

  private void done(int measures) {
    for (int i = 0; i < waiting.measures.length; i++) {
      waiting.measures[i] = waiting.measures[i] == measures ? 0 : waiting.measures[i];
    }
  }

  void merge(EffectSums other) {
    settle();
    other.settle();
    for (int m = 0; m < byMeasure.length; m++) {
      byMeasure[m].merge(other.byMeasure[m]);
    }
    other.paid.forEach(
        (measures, more) -> paid.computeIfAbsent(measures, m -> new Paid(resamples)).merge(more));
  }

  private static void mergeDraws(double[] draws, double[] more) {
    for (int i = 0; i < draws.length; i++) {
      draws[i] += more[i];
    }
  }

  OfMeasure of(Measure measure) {
    settle();
    return byMeasure[measure.ordinal()];
  }

  /** What was paid in each resample by the clusters that count in a measure, in millionths. */
  double[] paid(Measure measure, boolean inKindToo) {
    settle();
    double[] sum = new double[resamples];
    paid.forEach(
        (measures, own) -> {
          if ((measures & 1 << measure.ordinal()) != 0) {
            mergeDraws(sum, own.cash);
            if (inKindToo) {
              mergeDraws(sum, own.inKind);
            }
          }
        });
    return sum;
  }

  private void writeObject(ObjectOutputStream out) throws IOException {
    settle();
    out.defaultWriteObject();
  }
}
