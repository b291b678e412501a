package pondtally.analysis;

import java.io.IOException;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import pondtally.stats.ExactSum;
import pondtally.stats.ResampleBatch;

/**
 * Sums of one group, in the data and in every resample of the clusters. Resampled sums are whole
 * numbers of millionths, so that their order does not matter.
 */
final class BenefitSums implements Serializable {

  private static final long serialVersionUID = 1;
  private static final double MILLION = 1e6;
  private static final int MEASURES = BenefitMeasure.ALL.size();

  private final ExactSum[] totals = new ExactSum[MEASURES];
  private final long[][] draws = new long[MEASURES][];
  private final BenefitMoments moments = new BenefitMoments();
  private transient Waiting waiting;
  private long sites;
  private long withoutDamage;
  private long withoutCost;
  private long counted;
  private long clustersToDate;
  private long clustersAtDamage;
  private int firstInstall = Integer.MAX_VALUE;

  BenefitSums(int resamples) {
    for (BenefitMeasure measure : BenefitMeasure.ALL) {
      totals[measure.ordinal()] = new ExactSum();
      draws[measure.ordinal()] = new long[measure.resampled() ? resamples : 0];
    }
  }

  /** Clusters that are not yet in the resampled sums: their amounts, in millionths. */
  private static final class Waiting {
    private final ResampleBatch clusters = new ResampleBatch();
    private final double[][] millionths = new double[MEASURES][ResampleBatch.SIZE];
  }

  /**
   * Adds a cluster.
   *
   * @param weights how often it is in each resample
   * @param anyCounted whether any of its sites counts to date
   */
  void add(BenefitAmounts amounts, double[] weights, boolean anyCounted) {
    waiting = waiting == null ? new Waiting() : waiting;
    int at = waiting.clusters.add(weights);
    for (int m = 0; m < MEASURES; m++) {
      double amount = amounts.get(m);
      if (amount != 0) {
        totals[m].add(amount);
      }
      waiting.millionths[m][at] = Math.round(amount * MILLION);
    }
    if (waiting.clusters.isFull()) {
      settle();
    }
    if (anyCounted) {
      clustersToDate++;
      moments.add(amounts.get(BenefitMeasure.BENEFIT_USD), amounts.get(BenefitMeasure.COST_USD));
    }
    clustersAtDamage += amounts.get(BenefitMeasure.AT_DAMAGE) > 0 ? 1 : 0;
  }

  /** Adds the waiting clusters to the resampled sums. */
  private void settle() {
    if (waiting == null || waiting.clusters.isEmpty()) {
      return;
    }
    double[] scratch = new double[draws[BenefitMeasure.COST_USD.ordinal()].length];
    for (BenefitMeasure measure : BenefitMeasure.ALL) {
      if (measure.resampled()) {
        int m = measure.ordinal();
        waiting.clusters.addTo(draws[m], waiting.millionths[m], scratch);
      }
    }
    waiting.clusters.clear();
  }

  private static void addTo(long[] sums, long[] more) {
    for (int i = 0; i < sums.length; i++) {
      sums[i] += more[i];
    }
  }

  /** Counts a site. */
  void addSite(boolean damageKnown, boolean costKnown, int installedOn) {
    sites++;
    withoutDamage += damageKnown ? 0 : 1;
    withoutCost += costKnown ? 0 : 1;
    if (damageKnown && costKnown) {
      counted++;
      firstInstall = Math.min(firstInstall, installedOn);
    }
  }

  void merge(BenefitSums other) {
    settle();
    other.settle();
    for (int m = 0; m < totals.length; m++) {
      totals[m].merge(other.totals[m]);
      addTo(draws[m], other.draws[m]);
    }
    moments.merge(other.moments);
    sites += other.sites;
    withoutDamage += other.withoutDamage;
    withoutCost += other.withoutCost;
    counted += other.counted;
    clustersToDate += other.clustersToDate;
    clustersAtDamage += other.clustersAtDamage;
    firstInstall = Math.min(firstInstall, other.firstInstall);
  }

  double total(BenefitMeasure measure) {
    return totals[measure.ordinal()].result();
  }

  /** Total of a resampled measure in one resample. */
  double total(BenefitMeasure measure, int resample) {
    settle();
    return draws[measure.ordinal()][resample] / MILLION;
  }

  BenefitMoments moments() {
    return moments;
  }

  long sites() {
    return sites;
  }

  long withoutDamage() {
    return withoutDamage;
  }

  long withoutCost() {
    return withoutCost;
  }

  /** Sites that count to date. */
  long counted() {
    return counted;
  }

  long clustersToDate() {
    return clustersToDate;
  }

  long clustersAtDamage() {
    return clustersAtDamage;
  }

  /** First install at a site that counts, days since 1970-01-01; some site must count. */
  int firstInstall() {
    return firstInstall;
  }

  private void writeObject(ObjectOutputStream out) throws IOException {
    settle();
    out.defaultWriteObject();
  }
}
