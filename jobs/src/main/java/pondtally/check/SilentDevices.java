package pondtally.check;

import java.util.List;
import java.util.SortedMap;
import pondtally.record.Install;
import pondtally.record.MaterialLine;
import pondtally.record.Visit;

/** Devices that nobody visited, and devices that seem to have cost nothing. */
final class SilentDevices {

  private SilentDevices() {}

  static void apply(OpenCluster cluster) {
    SortedMap<String, List<Visit>> visits = cluster.visits.by(Visit::deviceId);
    SortedMap<String, List<MaterialLine>> lines = cluster.materials.by(MaterialLine::deviceId);
    for (List<Install> lives : cluster.lives().values()) {
      String id = lives.get(0).deviceId();
      List<Visit> ofDevice = visits.getOrDefault(id, List.of());
      if (ofDevice.isEmpty()) {
        noticeUnvisited(cluster, lives.get(0));
      }
      boolean costed =
          lines.containsKey(id)
              || lives.stream().anyMatch(SilentDevices::hasCost)
              || ofDevice.stream().anyMatch(SilentDevices::hasCost);
      if (!costed) {
        noticeUncosted(cluster, lives.get(0));
      }
    }
  }

  private static boolean hasCost(Install row) {
    return row.installCostUsd() != null || row.laborHours() != null || row.volunteerHours() != null;
  }

  private static boolean hasCost(Visit row) {
    return row.costUsd() != null || row.hours() != null || row.volunteerHours() != null;
  }

  private static void noticeUnvisited(OpenCluster cluster, Install row) {
    int sent = cluster.visitsSent(row.deviceId());
    String because =
        sent == 0 ? "" : " Of its visits, " + Words.count(sent, "row") + " could not be used.";
    String message =
        """
            Device %s, installed on %s, has no visit that counts, so its state is not \
            known.%s Add its visits, or plan one."""
            .formatted(Words.quote(row.deviceId()), Words.date(row.installedOn()), because);
    notice(cluster, row, CheckRule.DEVICE_NEVER_VISITED, message);
  }

  private static void noticeUncosted(OpenCluster cluster, Install row) {
    String message =
        """
            No cost of any kind is recorded for device %s: no lines, hours or lump \
            sum, and none at its visits. It is left out of real cost figures. Add \
            what is known."""
            .formatted(Words.quote(row.deviceId()));
    notice(cluster, row, CheckRule.DEVICE_WITHOUT_COST, message);
  }

  private static void notice(OpenCluster cluster, Install row, CheckRule rule, String message) {
    cluster.installs.notice(row, Remark.cell(rule, "device_id", row.deviceId(), message));
  }
}
