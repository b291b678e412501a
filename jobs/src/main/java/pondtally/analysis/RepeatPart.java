package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import pondtally.history.DeviceHistory;
import pondtally.history.FailureDating;
import pondtally.history.SiteHistory;
import pondtally.stats.RepeatHistory;

/**
 * One device's follow-up and all its failures, days since it was first installed. Repairs and
 * replacements do not interrupt it, nor does the time it stood failed.
 *
 * @param groups its groups as first installed
 * @param exitDays last visit
 * @param failureDays as dated
 */
record RepeatPart(List<GroupKey> groups, double entryDays, double exitDays, double[] failureDays)
    implements Serializable {

  /** The devices of a cluster that were visited after entry. */
  static List<RepeatPart> of(ClusterView cluster, FailureDating dating) {
    List<RepeatPart> parts = new ArrayList<>();
    for (SiteHistory site : cluster.history().sites()) {
      for (DeviceHistory device : site.devices()) {
        if (device.observedTo() > device.entryOn()) {
          parts.add(of(cluster, device, dating));
        }
      }
    }
    return parts;
  }

  private static RepeatPart of(ClusterView cluster, DeviceHistory device, FailureDating dating) {
    int start = 2 * device.install().installedOn();
    List<GroupKey> groups = new ArrayList<>(GroupKey.MAIN.size());
    for (GroupKey key : cluster.groupsOf(device)) {
      if (GroupKey.MAIN.contains(key.grouping())) {
        groups.add(key);
      }
    }
    double[] failureDays = new double[device.failures().size()];
    for (int i = 0; i < failureDays.length; i++) {
      failureDays[i] = (device.failures().get(i).datedOn(dating) - start) / 2.0;
    }
    return new RepeatPart(
        groups, (device.entryOn() - start) / 2.0, (device.observedTo() - start) / 2.0, failureDays);
  }

  RepeatHistory history() {
    return RepeatHistory.of(entryDays, exitDays, failureDays);
  }
}
