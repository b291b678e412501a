package pondtally.history;

import java.util.List;
import java.util.Set;
import pondtally.record.ClusterRecords;

/**
 * The part of a cluster that is about some of its sites and devices. What was measured at a pond
 * stays whole, whoever's visit measured it; when it was functional rests on the devices that are
 * left.
 */
public final class ClusterPortion {

  private ClusterPortion() {}

  /** Only these sites, and at them only these devices. */
  public static ClusterHistory of(
      ClusterHistory whole, Set<String> siteIds, Set<String> deviceIds) {
    List<DeviceHistory> devices =
        whole.sites().stream()
            .filter(site -> siteIds.contains(site.site().siteId()))
            .flatMap(site -> site.devices().stream())
            .filter(device -> deviceIds.contains(device.deviceId()))
            .toList();
    ClusterRecords records = records(whole.records(), siteIds, deviceIds);
    List<SiteHistory> sites = SiteRule.histories(records.sites(), devices);
    return new ClusterHistory(
        records,
        sites,
        whole.ponds().stream()
            .map(pond -> pond(pond, siteIds, sites))
            .filter(pond -> !pond.siteIds().isEmpty())
            .toList(),
        whole.properties().stream()
            .map(property -> property(property, siteIds))
            .filter(property -> !property.siteIds().isEmpty())
            .toList());
  }

  private static ClusterRecords records(
      ClusterRecords whole, Set<String> siteIds, Set<String> deviceIds) {
    return new ClusterRecords(
        whole.cluster(),
        whole.sites().stream().filter(row -> siteIds.contains(row.siteId())).toList(),
        whole.installs().stream().filter(row -> deviceIds.contains(row.deviceId())).toList(),
        whole.materials().stream().filter(row -> deviceIds.contains(row.deviceId())).toList(),
        whole.visits().stream().filter(row -> deviceIds.contains(row.deviceId())).toList(),
        whole.removals().stream().filter(row -> siteIds.contains(row.siteId())).toList(),
        whole.properties().stream().filter(row -> siteIds.contains(row.siteId())).toList(),
        whole.areas(),
        whole.requests().stream().filter(row -> siteIds.contains(row.siteId())).toList());
  }

  private static PondHistory pond(PondHistory whole, Set<String> siteIds, List<SiteHistory> sites) {
    List<SiteHistory> own =
        sites.stream().filter(site -> site.pondId().equals(whole.pondId())).toList();
    return new PondHistory(
        whole.pondId(),
        whole.siteIds().stream().filter(siteIds::contains).toList(),
        whole.area(),
        whole.acresBefore(),
        whole.acresLostToLowering(),
        own.stream()
            .map(SiteHistory::firstEntryOn)
            .filter(java.util.Objects::nonNull)
            .min(Integer::compare)
            .orElse(null),
        Stretches.union(own.stream().map(SiteHistory::functional).toList()));
  }

  private static PropertyHistory property(PropertyHistory whole, Set<String> siteIds) {
    return new PropertyHistory(
        whole.property(),
        whole.siteIds().stream().filter(siteIds::contains).toList(),
        whole.protectedTime());
  }
}
