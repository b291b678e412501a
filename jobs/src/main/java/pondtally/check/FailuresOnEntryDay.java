package pondtally.check;

import java.util.List;
import java.util.SortedMap;
import pondtally.record.Condition;
import pondtally.record.Install;
import pondtally.record.Visit;

/** A failure on the day a device came under observation counts as found within that day. */
final class FailuresOnEntryDay {

  private FailuresOnEntryDay() {}

  static void apply(OpenCluster cluster) {
    SortedMap<String, List<Install>> lives = cluster.lives();
    for (Visit row : cluster.visits.list()) {
      int entry = entryOn(lives.get(row.deviceId()).get(0));
      if (row.condition() == Condition.FAILED && row.visitedOn() == entry) {
        cluster.visits.notice(row, remark(row));
      }
    }
  }

  private static int entryOn(Install first) {
    return first.trackedFrom() == null
        ? first.installedOn()
        : Math.max(first.installedOn(), first.trackedFrom());
  }

  private static Remark remark(Visit row) {
    String value = Words.date(row.visitedOn());
    return Remark.cell(
        CheckRule.FAILED_ON_ENTRY_DAY,
        "visited_on",
        value,
        """
            Device %s was found failed on %s, the first day it was followed. The \
            failure counts as one on that day. Check both dates."""
            .formatted(Words.quote(row.deviceId()), value));
  }
}
