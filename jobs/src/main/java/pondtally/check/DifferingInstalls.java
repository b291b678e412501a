package pondtally.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.SortedMap;
import java.util.TreeSet;
import pondtally.record.Install;
import pondtally.record.Visit;

/**
 * One install row counts for each life of a device: the first in file order. A life begins with the
 * install, and again on the day the device was replaced, retired or removed; an install row dated
 * on or after such a day is the next life's design. A device stays at its site: one that was put in
 * elsewhere is another device.
 */
final class DifferingInstalls {

  private DifferingInstalls() {}

  static void apply(OpenCluster cluster) {
    SortedMap<String, List<Visit>> visits = cluster.visits.by(Visit::deviceId);
    for (Map.Entry<String, List<Install>> device :
        cluster.installs.by(Install::deviceId).entrySet()) {
      if (device.getValue().size() > 1) {
        List<Visit> ofDevice = visits.getOrDefault(device.getKey(), List.of());
        keepOneALife(cluster, device.getValue(), openings(device.getValue(), ofDevice));
      }
    }
    cluster.lives().values().forEach(lives -> keepOneSite(cluster, lives));
  }

  private static NavigableSet<Integer> openings(List<Install> rows, List<Visit> visits) {
    NavigableSet<Integer> days = new TreeSet<>();
    for (Install row : rows) {
      if (row.retiredOn() != null) {
        days.add(row.retiredOn());
      }
    }
    visits.stream().filter(Ends::opensNextLife).forEach(visit -> days.add(visit.visitedOn()));
    return days;
  }

  private static void keepOneALife(
      OpenCluster cluster, List<Install> rows, NavigableSet<Integer> openings) {
    Map<Integer, Install> first = new HashMap<>();
    for (Install row : rows) {
      Integer opening = openings.floor(row.installedOn());
      Install earlier = first.putIfAbsent(opening, row);
      if (earlier != null) {
        setAside(cluster, row, CheckRule.INSTALL_DIFFERS, message(earlier, row));
      }
    }
  }

  private static void keepOneSite(OpenCluster cluster, List<Install> lives) {
    Install first = lives.get(0);
    for (Install row : lives.subList(1, lives.size())) {
      if (!row.siteId().equals(first.siteId())) {
        setAside(cluster, row, CheckRule.DEVICE_AT_TWO_SITES, movedMessage(first, row));
      }
    }
  }

  private static void setAside(OpenCluster cluster, Install row, CheckRule rule, String message) {
    cluster.installs.setAside(row, Remark.cell(rule, "device_id", row.deviceId(), message));
  }

  private static String message(Install first, Install row) {
    return """
        Another install row of device %s (%s) differs in %s. That row comes \
        first and is used; this one was set aside. If the device was rebuilt, \
        record the visit that replaced or retired it; if these are two devices, \
        give each an id of its own; if not, delete the wrong row."""
        .formatted(
            Words.quote(row.deviceId()),
            Words.row(first.origin()),
            Differences.between(first, row));
  }

  private static String movedMessage(Install first, Install row) {
    return """
        Device %s was first installed at site %s (%s), here it is at site %s. A \
        device put in at another site is a new device: give it an id of its own, \
        in its visits and cost lines too. The row was set aside."""
        .formatted(
            Words.quote(row.deviceId()),
            Words.quote(first.siteId()),
            Words.row(first.origin()),
            Words.quote(row.siteId()));
  }
}
