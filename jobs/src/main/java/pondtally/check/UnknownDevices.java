package pondtally.check;

import java.util.Set;
import java.util.function.Function;
import pondtally.record.MaterialLine;
import pondtally.record.Origin;
import pondtally.record.Sourced;
import pondtally.record.Visit;

/** Visits and cost lines of a device that no install row names, or whose install was set aside. */
final class UnknownDevices {

  private UnknownDevices() {}

  static void apply(OpenCluster cluster) {
    Set<String> known = cluster.lives().keySet();
    setAside(cluster, cluster.visits, Visit::deviceId, known, "visit");
    setAside(cluster, cluster.materials, MaterialLine::deviceId, known, "cost line");
  }

  private static <T extends Sourced> void setAside(
      OpenCluster cluster,
      Rows<T> rows,
      Function<T, String> deviceId,
      Set<String> known,
      String what) {
    for (T row : rows.list()) {
      String id = deviceId.apply(row);
      if (!known.contains(id)) {
        rows.setAside(row, remark(cluster.firstInstallSent(id), id, what));
      }
    }
  }

  private static Remark remark(Origin install, String id, String what) {
    return install == null
        ? Remark.cell(
            CheckRule.UNKNOWN_DEVICE,
            "device_id",
            id,
            """
                The %s has no device: no install row that counts has the id %s. \
                The row was set aside. Correct the id, or add the install (or correct \
                its row, if that was set aside)."""
                .formatted(what, Words.quote(id)))
        : Remark.cell(
            CheckRule.DEVICE_SET_ASIDE,
            "device_id",
            id,
            """
                The install of device %s (%s) was set aside, so this %s has no device \
                and was set aside too. Correct the install row; this one may be right."""
                .formatted(Words.quote(id), Words.row(install), what));
  }
}
