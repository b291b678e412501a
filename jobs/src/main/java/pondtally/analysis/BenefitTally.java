package pondtally.analysis;

import java.io.Serializable;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.history.DeviceHistory;
import pondtally.stats.PoissonWeights;

/**
 * Benefit and cost of devices by group, with the sums of every bootstrap resample of the clusters.
 */
public final class BenefitTally implements Serializable {

  private static final long serialVersionUID = 1;

  private static final Set<Grouping> GROUPINGS =
      EnumSet.of(Grouping.ALL, Grouping.WATERSHED, Grouping.SETTING, Grouping.KIND);

  private final AnalysisSettings settings;
  private final SortedMap<GroupKey, BenefitSums> sums = new TreeMap<>();
  private final BenefitLives lives;
  private final SeasonTally season;

  public BenefitTally(AnalysisSettings settings) {
    this.settings = settings;
    this.lives = new BenefitLives(settings.rules().dating());
    this.season = new SeasonTally(settings.rules().dating());
  }

  /** Adds a cluster. */
  public void add(ClusterView cluster) {
    lives.add(cluster);
    BenefitCluster amounts = BenefitCluster.of(cluster, settings);
    season.add(cluster, amounts);
    byte[] weights = new byte[settings.resamples()];
    PoissonWeights.of(settings.seed(), cluster.history().records().cluster()).fill(weights);
    cluster
        .devicesByGroup()
        .forEach(
            (key, devices) -> {
              if (GROUPINGS.contains(key.grouping())) {
                add(key, devices, amounts, weights);
              }
            });
  }

  private void add(
      GroupKey key, List<DeviceHistory> devices, BenefitCluster amounts, byte[] weights) {
    BenefitSums s = sums(key);
    TreeSet<String> sites = new TreeSet<>();
    devices.forEach(device -> sites.add(device.siteId()));
    boolean any = false;
    for (String site : sites) {
      int first =
          devices.stream()
              .filter(device -> device.siteId().equals(site))
              .mapToInt(device -> device.install().installedOn())
              .min()
              .orElseThrow();
      s.addSite(amounts.damageKnown(site), amounts.costKnown(site), first);
      any |= amounts.counts(site);
    }
    s.add(amounts.sum(devices), weights, any);
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
    return sums;
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
