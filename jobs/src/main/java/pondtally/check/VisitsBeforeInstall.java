package pondtally.check;

import java.util.List;
import java.util.SortedMap;
import pondtally.record.Install;
import pondtally.record.Visit;

/** A device cannot be visited before it was first installed. */
final class VisitsBeforeInstall {

  private VisitsBeforeInstall() {}

  static void apply(OpenCluster cluster) {
    SortedMap<String, List<Install>> lives = cluster.lives();
    for (Visit row : cluster.visits.list()) {
      Install first = lives.get(row.deviceId()).get(0);
      if (row.visitedOn() < first.installedOn()) {
        cluster.visits.setAside(row, remark(first, row));
      }
    }
  }

  private static Remark remark(Install first, Visit row) {
    String value = Words.date(row.visitedOn());
    return Remark.cell(
        CheckRule.VISIT_BEFORE_INSTALL,
        "visited_on",
        value,
        """
            The visit on %s is before the install of device %s on %s (%s). The row \
            was set aside. Correct whichever date is wrong."""
            .formatted(
                value,
                Words.quote(row.deviceId()),
                Words.date(first.installedOn()),
                Words.row(first.origin())));
  }
}
