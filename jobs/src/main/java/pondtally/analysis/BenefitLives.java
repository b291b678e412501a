package pondtally.analysis;

import java.io.Serializable;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.history.DeviceHistory;
import pondtally.history.FailureDating;
import pondtally.history.Life;
import pondtally.history.SiteHistory;
import pondtally.stats.IntervalCounts;

/**
 * Service lives by group with the interval in which each failed, or its day where failures are
 * dated by one: what survival is fitted to for looking ahead. Ages are days.
 */
final class BenefitLives implements Serializable {

  private static final long serialVersionUID = 1;
  private static final Set<Grouping> GROUPINGS =
      EnumSet.of(Grouping.ALL, Grouping.PIPE, Grouping.WATERSHED, Grouping.SETTING, Grouping.KIND);

  private final FailureDating dating;
  private final Map<GroupKey, IntervalCounts> counts = new HashMap<>();

  BenefitLives(FailureDating dating) {
    this.dating = dating;
  }

  void add(ClusterView cluster) {
    for (SiteHistory site : cluster.history().sites()) {
      for (DeviceHistory device : site.devices()) {
        for (Life life : device.lives()) {
          if (life.followed()) {
            add(cluster.groupsOf(device, life), life);
          }
        }
      }
    }
  }

  private void add(List<GroupKey> groups, Life life) {
    double entry = life.entryAge() / 2.0;
    double left = life.knownGoodAge() / 2.0;
    double right = life.failed() ? life.foundAge() / 2.0 : Double.POSITIVE_INFINITY;
    if (life.failed() && dating != FailureDating.INTERVAL) {
      left = life.exitAge(dating) / 2.0;
      right = left;
    }
    if (left == right && left <= entry) {
      return;
    }
    for (GroupKey key : groups) {
      if (GROUPINGS.contains(key.grouping())) {
        counts.computeIfAbsent(key, k -> IntervalCounts.empty()).add(entry, left, right, 1);
      }
    }
  }

  void merge(BenefitLives other) {
    other.counts.forEach(
        (key, more) -> counts.computeIfAbsent(key, k -> IntervalCounts.empty()).merge(more));
  }

  /** Lives of a group; none for a group that has none. */
  IntervalCounts of(GroupKey key) {
    return counts.getOrDefault(key, IntervalCounts.empty());
  }
}
