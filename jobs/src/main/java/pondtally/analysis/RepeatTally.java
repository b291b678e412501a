package pondtally.analysis;

import java.io.Serializable;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.stats.MeanCumulative;
import pondtally.stats.RepeatCounts;
import pondtally.stats.RepeatHistory;

/** Follow-up and all failures of devices by time in service, for each group. */
public final class RepeatTally implements Serializable {

  private static final long serialVersionUID = 1;

  private final Map<GroupKey, Group> groups = new HashMap<>();

  /** Devices of one group, and the clusters that they stand in. */
  private static final class Group implements Serializable {
    private static final long serialVersionUID = 1;
    private final RepeatCounts counts = new RepeatCounts();
    private long clusters;
  }

  /** Counts the devices of a cluster. */
  void add(List<RepeatPart> devices) {
    Set<GroupKey> seen = new HashSet<>();
    for (RepeatPart device : devices) {
      RepeatHistory history = device.history();
      for (GroupKey key : device.groups()) {
        Group group = groups.computeIfAbsent(key, k -> new Group());
        group.counts.add(history);
        group.clusters += seen.add(key) ? 1 : 0;
      }
    }
  }

  /** Adds what another tally counted. */
  void merge(RepeatTally other) {
    other.groups.forEach(
        (key, more) -> {
          Group group = groups.computeIfAbsent(key, k -> new Group());
          group.counts.merge(more.counts);
          group.clusters += more.clusters;
        });
  }

  /** The mean cumulative number of failures of each group. */
  SortedMap<GroupKey, MeanCumulative> means() {
    SortedMap<GroupKey, MeanCumulative> means = new TreeMap<>();
    groups.forEach((key, group) -> means.put(key, MeanCumulative.of(group.counts)));
    return means;
  }

  /** Clusters that a group's devices stand in. */
  long clusters(GroupKey key) {
    return groups.get(key).clusters;
  }
}
