package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pondtally.stats.RepeatHistory;
import pondtally.stats.RepeatSpread;

/** How far each cluster's failures lie from the mean of its groups: the second pass. */
final class RepeatSpreads implements Serializable {

  private static final long serialVersionUID = 1;

  private final Map<GroupKey, RepeatSpread> spreads = new HashMap<>();

  static RepeatSpreads of(RepeatTally tally) {
    RepeatSpreads all = new RepeatSpreads();
    tally.means().forEach((key, mean) -> all.spreads.put(key, mean.spread()));
    return all;
  }

  void add(List<RepeatPart> devices) {
    Map<GroupKey, List<RepeatHistory>> byGroup = new HashMap<>();
    for (RepeatPart device : devices) {
      for (GroupKey key : device.groups()) {
        byGroup.computeIfAbsent(key, k -> new ArrayList<>()).add(device.history());
      }
    }
    byGroup.forEach((key, histories) -> spreads.get(key).add(histories));
  }

  void merge(RepeatSpreads other) {
    spreads.forEach((key, spread) -> spread.merge(other.spreads.get(key)));
  }

  /** Robust variance of each group's mean at its rows. */
  double[] variances(GroupKey key) {
    return spreads.get(key).variances();
  }
}
