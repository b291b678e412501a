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

  private final ExactSum[] totals = new ExactSum[BenefitMeasure.values().length];
  private final long[][] draws = new long[BenefitMeasure.values().length][];
  private final BenefitMoments moments = new BenefitMoments();
  private long sites;
  private long withoutDamage;
  private long withoutCost;
  private long counted;
  private long clustersToDate;
  private long clustersAtDamage;
  private int firstInstall = Integer.MAX_VALUE;

  BenefitSums(int resamples) {
    for (BenefitMeasure measure : BenefitMeasure.values()) {
      totals[measure.ordinal()] = new ExactSum();
      draws[measure.ordinal()] = new long[measure.resampled() ? resamples : 0];
    }
  }

  /** Adds a cluster with its weight in each resample. */
  void add(BenefitAmounts amounts, byte[] weights, boolean anyCounted) {
    for (BenefitMeasure measure : BenefitMeasure.values()) {
      double amount = amounts.get(measure);
      if (amount == 0) {
        continue;
      }
      totals[measure.ordinal()].add(amount);
      long[] own = draws[measure.ordinal()];
      long millionths = Math.round(amount * MILLION);
      for (int i = 0; millionths != 0 && i < own.length; i++) {
        own[i] += weights[i] * millionths;
      }
    }
    if (anyCounted) {
      clustersToDate++;
      moments.add(amounts.get(BenefitMeasure.BENEFIT_USD), amounts.get(BenefitMeasure.COST_USD));
    }
    clustersAtDamage += amounts.get(BenefitMeasure.AT_DAMAGE) > 0 ? 1 : 0;
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
      for (int i = 0; i < draws[m].length; i++) {
        draws[m][i] += other.draws[m][i];
      }
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
