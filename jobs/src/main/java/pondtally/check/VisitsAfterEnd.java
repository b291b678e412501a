package pondtally.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import pondtally.record.Condition;
import pondtally.record.Install;
import pondtally.record.Origin;
import pondtally.record.Visit;

/**
 * A device that was retired or removed is visited no more, unless a later install row put it in
 * again. A visit on the very day of the end still counts.
 */
final class VisitsAfterEnd {

  private static final Comparator<Visit> BY_DAY =
      Comparator.comparingInt(Visit::visitedOn).thenComparing(Visit::origin);

  private VisitsAfterEnd() {}

  private record End(int day, Origin origin, String word) {}

  static void apply(OpenCluster cluster) {
    SortedMap<String, List<Install>> lives = cluster.lives();
    for (Map.Entry<String, List<Visit>> device : cluster.visits.by(Visit::deviceId).entrySet()) {
      List<Visit> visits = device.getValue();
      visits.sort(BY_DAY);
      walk(cluster, lives.get(device.getKey()), visits);
    }
  }

  private static void walk(OpenCluster cluster, List<Install> lives, List<Visit> visits) {
    List<End> ends = retirements(lives);
    for (Visit row : visits) {
      Optional<End> end = standing(ends, lives, row.visitedOn());
      if (end.isPresent()) {
        cluster.visits.setAside(row, remark(row, end.get()));
      } else if (Ends.ends(row)) {
        String word = row.condition() == Condition.RETIRED ? "retired" : "removed";
        ends.add(new End(row.visitedOn(), row.origin(), word));
      }
    }
  }

  private static List<End> retirements(List<Install> lives) {
    List<End> ends = new ArrayList<>();
    for (Install life : lives) {
      if (life.retiredOn() != null) {
        ends.add(new End(life.retiredOn(), life.origin(), "retired"));
      }
    }
    return ends;
  }

  /** The earliest end before the day that no install row has undone by then. */
  private static Optional<End> standing(List<End> ends, List<Install> lives, int day) {
    return ends.stream()
        .filter(end -> end.day() < day && !reopened(end, lives, day))
        .min(Comparator.comparingInt(End::day).thenComparing(End::origin));
  }

  private static boolean reopened(End end, List<Install> lives, int day) {
    return lives.stream()
        .skip(1) // the first install opens the first life, even where it ended the same day
        .filter(life -> !life.origin().equals(end.origin()))
        .anyMatch(life -> end.day() <= life.installedOn() && life.installedOn() <= day);
  }

  private static Remark remark(Visit row, End end) {
    String value = Words.date(row.visitedOn());
    return Remark.cell(
        CheckRule.VISIT_AFTER_END,
        "visited_on",
        value,
        """
            The visit on %s is after device %s was %s on %s (%s). The row was set \
            aside. If the device was put in again, add an install row dated %s or \
            later; if a date is wrong, correct it."""
            .formatted(
                value,
                Words.quote(row.deviceId()),
                end.word(),
                Words.date(end.day()),
                Words.row(end.origin()),
                Words.date(end.day())));
  }
}
