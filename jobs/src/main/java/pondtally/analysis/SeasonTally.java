package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.history.DeviceHistory;
import pondtally.history.Failure;
import pondtally.history.FailureDating;
import pondtally.history.Life;
import pondtally.history.SiteHistory;
import pondtally.stats.ExactSum;
import pondtally.stats.IntervalCounts;

/**
 * What the plan for the next seasons rests on, by pipe type and over all: every stretch at risk,
 * from entry or a restart to the next failure, and what visits, repairs and replacements took. A
 * repair does not make a device young: its stretches go on at the age it has. So the failures that
 * follow a first one count as well, because the plan has to meet those too.
 */
final class SeasonTally implements Serializable {

  private static final long serialVersionUID = 1;
  private static final Set<Grouping> GROUPINGS = EnumSet.of(Grouping.ALL, Grouping.PIPE);

  private final FailureDating dating;
  private final SortedMap<GroupKey, IntervalCounts> stretches = new TreeMap<>();
  private final SortedMap<GroupKey, ExactSum[]> sums = new TreeMap<>();

  SeasonTally(FailureDating dating) {
    this.dating = dating;
  }

  /** Adds the stretches at risk of a cluster. */
  void add(ClusterView cluster) {
    for (SiteHistory site : cluster.history().sites()) {
      for (DeviceHistory device : site.devices()) {
        for (Life life : device.lives()) {
          add(cluster, device, life);
        }
      }
    }
  }

  /** Adds what events at some devices of a cluster took. */
  void add(ClusterView.Subset subset, BenefitAmounts sum) {
    for (GroupKey key : subset.keys()) {
      if (GROUPINGS.contains(key.grouping())) {
        add(key, sum);
      }
    }
  }

  private void add(GroupKey key, BenefitAmounts amounts) {
    ExactSum[] own = sums.computeIfAbsent(key, k -> zeros());
    for (int measure = 0; measure < own.length; measure++) {
      if (amounts.get(measure) != 0) {
        own[measure].add(amounts.get(measure));
      }
    }
  }

  private static ExactSum[] zeros() {
    ExactSum[] zeros = new ExactSum[BenefitMeasure.ALL.size()];
    for (int i = 0; i < zeros.length; i++) {
      zeros[i] = new ExactSum();
    }
    return zeros;
  }

  private void add(ClusterView cluster, DeviceHistory device, Life life) {
    List<IntervalCounts> counts = new ArrayList<>(GROUPINGS.size());
    for (GroupKey key : cluster.groupsOf(device, life)) {
      if (GROUPINGS.contains(key.grouping())) {
        counts.add(stretches.computeIfAbsent(key, k -> IntervalCounts.empty()));
      }
    }
    Integer from = life.entryOn();
    for (Failure failure : device.failures()) {
      if (failure.life() == life.number()) {
        addFailure(counts, life, from, failure);
        from = failure.restartedOn();
      }
    }
    if (from != null && life.leftOn() > from) {
      addStretch(counts, life, from, life.leftOn(), Double.POSITIVE_INFINITY);
    }
  }

  private void addFailure(List<IntervalCounts> counts, Life life, int from, Failure failure) {
    if (dating == FailureDating.INTERVAL) {
      double found = (failure.foundOn() - life.openedOn()) / 2.0;
      addStretch(counts, life, from, failure.knownGoodOn(), found);
      return;
    }
    int on = failure.datedOn(dating);
    if (on > from) {
      addStretch(counts, life, from, on, (on - life.openedOn()) / 2.0);
    }
  }

  private static void addStretch(
      List<IntervalCounts> counts, Life life, int from, int left, double rightDays) {
    for (IntervalCounts own : counts) {
      own.add(
          (from - life.openedOn()) / 2.0,
          (Math.max(from, left) - life.openedOn()) / 2.0,
          rightDays,
          1);
    }
  }

  void merge(SeasonTally other) {
    other.stretches.forEach(
        (key, more) -> stretches.computeIfAbsent(key, k -> IntervalCounts.empty()).merge(more));
    other.sums.forEach(
        (key, more) -> {
          ExactSum[] own = sums.computeIfAbsent(key, k -> zeros());
          for (int i = 0; i < own.length; i++) {
            own[i].merge(more[i]);
          }
        });
  }

  /** Pipe types of any device. */
  List<GroupKey> groups() {
    return List.copyOf(sums.keySet());
  }

  /** Stretches at risk of a group, ages in days; none for a group that has none. */
  IntervalCounts stretches(GroupKey key) {
    return stretches.getOrDefault(key, IntervalCounts.empty());
  }

  /** Sum over the devices of a group. */
  double total(GroupKey key, BenefitMeasure measure) {
    ExactSum[] own = sums.get(key);
    return own == null ? 0 : own[measure.ordinal()].result();
  }
}
