package pondtally.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pondtally.record.Site;

/**
 * A site is functional while at least one of its devices is: a union, so that a second device never
 * counts the same day twice. Common practice, no source.
 */
final class SiteRule {

  private static final Comparator<DeviceHistory> BY_INSTALLATION =
      Comparator.<DeviceHistory>comparingInt(d -> d.install().installedOn())
          .thenComparing(DeviceHistory::deviceId);

  private SiteRule() {}

  /**
   * The sites of one cluster with their devices.
   *
   * @param sites one row a site, in any order
   * @return by site id
   */
  static List<SiteHistory> histories(List<Site> sites, List<DeviceHistory> devices) {
    Map<String, List<DeviceHistory>> bySite =
        Histories.by(devices, DeviceHistory::siteId, new HashMap<>());
    List<SiteHistory> histories = new ArrayList<>(sites.size());
    for (Site site : sites) {
      histories.add(history(site, bySite.getOrDefault(site.siteId(), List.of())));
    }
    histories.sort(Comparator.comparing(h -> h.site().siteId()));
    return List.copyOf(histories);
  }

  private static SiteHistory history(Site site, List<DeviceHistory> devices) {
    List<DeviceHistory> ordered = devices.stream().sorted(BY_INSTALLATION).toList();
    return new SiteHistory(
        site,
        site.pondId() == null ? site.siteId() : site.pondId(),
        ordered,
        firstEntryOn(ordered),
        Stretches.union(ordered.stream().map(DeviceHistory::functional).toList()),
        Stretches.union(ordered.stream().map(DeviceHistory::verified).toList()));
  }

  private static Integer firstEntryOn(List<DeviceHistory> devices) {
    Integer first = null;
    for (DeviceHistory device : devices) {
      first = first == null || device.entryOn() < first ? (Integer) device.entryOn() : first;
    }
    return first;
  }
}
