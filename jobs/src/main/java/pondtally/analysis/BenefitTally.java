package pondtally.analysis;

import java.io.Serializable;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.analysis.GroupKey.Grouping;

/**
 * Benefit and cost of devices by group, with the sums of every bootstrap resample of the clusters.
 */
public final class BenefitTally implements Serializable {

  private static final long serialVersionUID = 1;

  private static final Set<Grouping> GROUPINGS =
      EnumSet.of(Grouping.ALL, Grouping.WATERSHED, Grouping.SETTING, Grouping.KIND);

  private final AnalysisSettings settings;
  private final Map<GroupKey, BenefitSums> sums = new HashMap<>();
  private final BenefitLives lives;
  private final SeasonTally season;

  public BenefitTally(AnalysisSettings settings) {
    this.settings = settings;
    this.lives = new BenefitLives(settings.rules().dating());
    this.season = new SeasonTally(settings.rules().dating());
  }

  /** Adds a cluster. */
  public void add(ClusterView cluster) {
    double[] weights = cluster.weights(settings.seed(), settings.resamples());
    lives.add(cluster);
    BenefitCluster amounts = BenefitCluster.of(cluster, settings);
    season.add(cluster);
    for (ClusterView.Subset subset : cluster.subsets()) {
      add(subset, amounts, weights);
    }
  }

  /** What several groups have in common is summed up once. */
  private void add(ClusterView.Subset subset, BenefitCluster amounts, double[] weights) {
    BenefitAmounts sum = amounts.sum(subset.devices());
    season.add(subset, sum);
    BenefitPart part = null;
    for (GroupKey key : subset.keys()) {
      if (GROUPINGS.contains(key.grouping())) {
        part = part == null ? BenefitPart.of(subset.devices(), amounts, sum, weights) : part;
        part.addTo(sums(key));
      }
    }
  }

  private BenefitSums sums(GroupKey key) {
    return sums.computeIfAbsent(key, k -> new BenefitSums(settings.resamples()));
  }

  /** Adds what another tally summed. */
  public void merge(BenefitTally other) {
    other.sums.forEach((key, more) -> sums(key).merge(more));
    lives.merge(other.lives);
    season.merge(other.season);
  }

  SortedMap<GroupKey, BenefitSums> sums() {
    return new TreeMap<>(sums);
  }

  /** What looking ahead to the next seasons rests on. */
  SeasonTally season() {
    return season;
  }

  /** The lives from which survival is fitted. */
  BenefitLives lives() {
    return lives;
  }
}
