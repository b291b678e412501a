package pondtally.analysis;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.history.DeviceHistory;
import pondtally.history.PondHistory;
import pondtally.history.SiteHistory;

/**
 * The groups that a pond counts in, each with the devices that keep it there. A pond is in exactly
 * one watershed and one setting: those of its first site. In the other groupings it counts with the
 * group's own devices.
 */
final class PondGroups {

  private PondGroups() {}

  static Map<GroupKey, List<DeviceHistory>> of(ClusterView cluster, PondHistory pond) {
    Map<GroupKey, List<DeviceHistory>> groups = new LinkedHashMap<>();
    cluster
        .devicesByGroup()
        .forEach(
            (key, devices) -> {
              if (key.grouping() != Grouping.WATERSHED && key.grouping() != Grouping.SETTING) {
                List<DeviceHistory> here = ClusterView.at(devices, pond.siteIds());
                if (!here.isEmpty()) {
                  groups.put(key, here);
                }
              }
            });
    List<DeviceHistory> all = groups.get(GroupKey.ALL);
    if (all != null) {
      SiteHistory first = cluster.site(pond.siteIds().get(0));
      groups.put(
          cluster.groups().key(Grouping.WATERSHED, cluster.groups().watershed(first.site())), all);
      groups.put(cluster.groups().key(Grouping.SETTING, Groups.setting(first.site())), all);
    }
    return groups;
  }
}
