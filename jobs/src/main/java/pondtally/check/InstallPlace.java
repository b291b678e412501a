package pondtally.check;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pondtally.record.ClusterRecords;
import pondtally.record.DeviceKind;
import pondtally.record.Install;
import pondtally.record.Origin;
import pondtally.record.Site;

/**
 * What is needed of a device to find the same one under another id.
 *
 * @param origin row of its first install
 * @param partner who sent that row
 * @param installedOn days since 1970-01-01
 * @param kind null: not recorded
 * @param pipeDiameterIn inches; null: not recorded
 * @param latitude degrees north of its site, WGS 84; null: not recorded
 * @param longitude degrees east of its site, WGS 84; null: not recorded
 */
public record InstallPlace(
    Origin origin,
    String partner,
    String deviceId,
    String siteId,
    int installedOn,
    DeviceKind kind,
    Double pipeDiameterIn,
    Double latitude,
    Double longitude)
    implements Serializable {

  /** One for each device of a cluster. */
  public static List<InstallPlace> of(ClusterRecords cluster) {
    Map<String, Site> sites = new HashMap<>();
    cluster.sites().forEach(site -> sites.putIfAbsent(site.siteId(), site));
    Map<String, Install> firsts = new HashMap<>();
    cluster.installs().forEach(row -> firsts.merge(row.deviceId(), row, InstallPlace::earlier));
    List<InstallPlace> places = new ArrayList<>(firsts.size());
    firsts.values().forEach(row -> places.add(of(row, sites.get(row.siteId()))));
    return places;
  }

  private static Install earlier(Install a, Install b) {
    return b.installedOn() < a.installedOn() ? b : a;
  }

  private static InstallPlace of(Install row, Site site) {
    boolean located = site != null && site.latitude() != null && site.longitude() != null;
    return new InstallPlace(
        row.origin(),
        row.partner(),
        row.deviceId(),
        row.siteId(),
        row.installedOn(),
        row.deviceKind(),
        row.pipeDiameterIn(),
        located ? site.latitude() : null,
        located ? site.longitude() : null);
  }

  boolean isLocated() {
    return latitude != null;
  }
}
