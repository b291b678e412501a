package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pondtally.history.DeviceHistory;
import pondtally.history.DeviceState;
import pondtally.history.Life;
import pondtally.history.PipeType;
import pondtally.history.PondHistory;
import pondtally.history.SiteHistory;

/**
 * What hangs on one device that is still in service, and what is known of it at the data cut. Dates
 * are days since 1970-01-01.
 *
 * @param lastVisitOn null: never visited
 * @param failed whether it stands failed
 * @param goodAgeDays age in its life when it was last known not failed; 0 where it stands failed
 * @param daysSinceGood days from then to the data cut; 0 where it stands failed
 * @param ageDays age in its present life at the data cut
 * @param watershedGroup its watershed at the level at which watersheds are compared
 * @param knownGoodOn day it was last known not failed; the day of entry where it stands failed
 * @param properties distinct properties at its site
 * @param acres area of its pond; null: never measured
 * @param damageUsd yearly damage of its site, dollars of the base year; null: unknown
 */
public record WorklistDevice(
    String deviceId,
    String siteId,
    String watershed,
    String pipe,
    String crew,
    String state,
    int entryOn,
    Integer lastVisitOn,
    boolean failed,
    double goodAgeDays,
    double daysSinceGood,
    double ageDays,
    String watershedGroup,
    int knownGoodOn,
    long properties,
    Double acres,
    Double damageUsd)
    implements Serializable {

  /** The devices of a cluster that have not ended. */
  public static List<WorklistDevice> of(ClusterView cluster, AnalysisSettings settings) {
    Map<String, Double> damage = DamageRules.yearlyUsd(cluster);
    List<WorklistDevice> devices = new ArrayList<>();
    for (SiteHistory site : cluster.history().sites()) {
      for (DeviceHistory device : site.devices()) {
        if (device.endedOn() == null) {
          devices.add(of(cluster, site, device, damage.get(site.site().siteId()), settings));
        }
      }
    }
    return devices;
  }

  private static WorklistDevice of(
      ClusterView cluster,
      SiteHistory site,
      DeviceHistory device,
      Double damageUsd,
      AnalysisSettings settings) {
    boolean failed = device.state() == DeviceState.FAILED || device.lastKnownGoodOn() == null;
    int good = failed ? device.entryOn() : device.lastKnownGoodOn();
    Life life = device.lives().get(device.lives().size() - 1);
    int cut = 2 * settings.rules().asOf();
    return new WorklistDevice(
        device.deviceId(),
        device.siteId(),
        site.site().watershed(),
        PipeType.of(life.design()),
        life.design().crew(),
        device.state().code(),
        Math.floorDiv(device.entryOn(), 2),
        device.lastVisitOn() == null ? null : (Integer) Math.floorDiv(device.lastVisitOn(), 2),
        failed,
        failed ? 0 : (good - life.openedOn()) / 2.0,
        failed ? 0 : Math.max(0, cut - good) / 2.0,
        Math.max(0, cut - life.openedOn()) / 2.0,
        cluster.groups().watershed(site.site()),
        Math.floorDiv(good, 2),
        cluster.history().properties().stream()
            .filter(property -> property.siteIds().contains(device.siteId()))
            .count(),
        acres(cluster, site, cut),
        damageUsd);
  }

  private static Double acres(ClusterView cluster, SiteHistory site, int at) {
    for (PondHistory pond : cluster.history().ponds()) {
      if (pond.pondId().equals(site.pondId()) && pond.area() != null) {
        return pond.area().acresAt(at);
      }
    }
    return null;
  }
}
