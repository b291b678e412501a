package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import pondtally.history.DeviceHistory;
import pondtally.history.FailureDating;
import pondtally.history.Life;
import pondtally.history.SiteHistory;

/**
 * One service life as a second pass over the clusters needs it, ages in days.
 *
 * @param followUp with both ends of the interval in which it failed
 * @param exitDays age at failure, as dated, or at the end of follow-up
 */
record LifePart(Covariates covariates, FollowUp followUp, double exitDays, boolean failed)
    implements Serializable {

  /** The lives of a cluster that were followed. */
  static List<LifePart> of(ClusterView cluster, FailureDating dating) {
    List<LifePart> parts = new ArrayList<>();
    for (SiteHistory site : cluster.history().sites()) {
      for (DeviceHistory device : site.devices()) {
        for (Life life : device.lives()) {
          if (life.followed() && life.exitAge(dating) > life.entryAge()) {
            parts.add(of(cluster.groupsOf(device, life), life, dating));
          }
        }
      }
    }
    return parts;
  }

  private static LifePart of(List<GroupKey> groups, Life life, FailureDating dating) {
    return new LifePart(
        Covariates.of(groups), FollowUp.of(life), life.exitAge(dating) / 2.0, life.failed());
  }
}
