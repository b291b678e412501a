package pondtally.analysis;

import java.io.Serializable;
import java.util.HashSet;
import java.util.Set;
import pondtally.history.ClusterPortion;
import pondtally.history.DeviceHistory;
import pondtally.history.SiteHistory;

/**
 * What a report is about: the whole program, the devices with cash from one funder, or one
 * watershed, or what both have in common.
 *
 * @param funder null: all
 * @param watershed beginning of a hydrologic unit code: every watershed within it; null: all
 */
public record Scope(String funder, String watershed) implements Serializable {

  /** The whole program. */
  public static final Scope ALL = new Scope(null, null);

  /** Whether nothing is left out. */
  public boolean isAll() {
    return funder == null && watershed == null;
  }

  /**
   * The part of a cluster that is within the scope: with a funder, the devices with cash from it
   * and their sites; with a watershed, its sites and their devices. Null where there is none.
   */
  public ClusterView of(ClusterView whole, Groups groups, CostRules costs) {
    if (isAll()) {
      return whole;
    }
    Set<String> sites = new HashSet<>();
    Set<String> devices = new HashSet<>();
    for (SiteHistory site : whole.history().sites()) {
      if (isHere(site)) {
        boolean any = false;
        for (DeviceHistory device : site.devices()) {
          if (hasCash(whole.costOf(device))) {
            any |= devices.add(device.deviceId());
          }
        }
        if (any || funder == null) {
          sites.add(site.site().siteId());
        }
      }
    }
    return sites.isEmpty()
        ? null
        : new ClusterView(ClusterPortion.of(whole.history(), sites, devices), groups, costs);
  }

  private boolean isHere(SiteHistory site) {
    String code = site.site().watershed();
    return watershed == null || (code != null && code.startsWith(watershed));
  }

  private boolean hasCash(DeviceCost cost) {
    return funder == null
        || cost.lines().stream()
            .anyMatch(
                line ->
                    line.payment() == CostLine.Payment.CASH
                        && line.nominalUsd() > 0
                        && funder.equals(line.payer()));
  }
}
