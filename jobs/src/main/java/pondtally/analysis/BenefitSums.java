package pondtally.analysis;

import java.io.Serializable;
import pondtally.stats.ExactSum;

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

  /**
   * A cluster's amounts, and their part in each resample.
   *
   * @param millionths by measure and resample; null where the amount is 0 or not resampled
   */
  record Draws(BenefitAmounts amounts, long[][] millionths) {}

  /** Weighs a cluster's amounts once for all the groups that they are added to. */
  static Draws draws(BenefitAmounts amounts, byte[] weights) {
    long[][] millionths = new long[MEASURES][];
    for (BenefitMeasure measure : BenefitMeasure.ALL) {
      long own = Math.round(amounts.get(measure) * MILLION);
      if (measure.resampled() && own != 0) {
        long[] drawn = new long[weights.length];
        for (int i = 0; i < drawn.length; i++) {
          drawn[i] = weights[i] * own;
        }
        millionths[measure.ordinal()] = drawn;
      }
    }
    return new Draws(amounts, millionths);
  }

  /** Adds a cluster. */
  void add(Draws cluster, boolean anyCounted) {
    BenefitAmounts amounts = cluster.amounts();
    for (int m = 0; m < MEASURES; m++) {
      double amount = amounts.get(m);
      if (amount != 0) {
        totals[m].add(amount);
      }
      long[] more = cluster.millionths()[m];
      if (more != null) {
        addTo(draws[m], more);
      }
    }
    if (anyCounted) {
      clustersToDate++;
      moments.add(amounts.get(BenefitMeasure.BENEFIT_USD), amounts.get(BenefitMeasure.COST_USD));
    }
    clustersAtDamage += amounts.get(BenefitMeasure.AT_DAMAGE) > 0 ? 1 : 0;
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
}
