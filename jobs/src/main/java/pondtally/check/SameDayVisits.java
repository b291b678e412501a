package pondtally.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import pondtally.record.Action;
import pondtally.record.Condition;
import pondtally.record.Visit;

/**
 * One visit counts for a device and day: the worst condition, then the row with most fields filled
 * in, then the first in file order. A retirement is kept beside it.
 */
final class SameDayVisits {

  private static final Comparator<Visit> BEST_FIRST =
      Comparator.comparingInt(SameDayVisits::harm)
          .thenComparingInt(Fields::filled)
          .reversed()
          .thenComparing(Visit::origin);

  private SameDayVisits() {}

  static void apply(OpenCluster cluster) {
    for (List<Visit> ofDevice : cluster.visits.by(Visit::deviceId).values()) {
      if (ofDevice.size() > 1) {
        for (List<Visit> sameDay : byDay(ofDevice)) {
          if (sameDay.size() > 1) {
            settle(cluster, sameDay);
          }
        }
      }
    }
  }

  private static List<List<Visit>> byDay(List<Visit> ofDevice) {
    List<Visit> sorted = new ArrayList<>(ofDevice);
    sorted.sort(Comparator.comparingInt(Visit::visitedOn).thenComparing(Visit::origin));
    List<List<Visit>> days = new ArrayList<>();
    for (Visit visit : sorted) {
      boolean newDay =
          days.isEmpty() || days.get(days.size() - 1).get(0).visitedOn() != visit.visitedOn();
      if (newDay) {
        days.add(new ArrayList<>());
      }
      days.get(days.size() - 1).add(visit);
    }
    return days;
  }

  private static void settle(OpenCluster cluster, List<Visit> sameDay) {
    keepOne(cluster, sameDay.stream().filter(v -> v.condition() == Condition.RETIRED).toList());
    keepOne(cluster, sameDay.stream().filter(v -> v.condition() != Condition.RETIRED).toList());
  }

  private static void keepOne(OpenCluster cluster, List<Visit> rows) {
    List<Visit> order = rows.stream().sorted(BEST_FIRST).toList();
    for (Visit row : order.subList(Math.min(1, order.size()), order.size())) {
      Remark remark =
          Remark.cell(
              CheckRule.SAME_DAY_VISITS,
              "condition",
              row.condition().code(),
              message(order.get(0), row));
      cluster.visits.duplicate(row, remark);
    }
  }

  private static int harm(Visit visit) {
    return switch (visit.condition()) {
      case WORKING -> 0;
      case REDUCED -> 1;
      case FAILED -> 2;
      case RETIRED -> 3;
    };
  }

  private static String message(Visit kept, Visit row) {
    String what =
        kept.condition() == row.condition()
            ? """
                Another row about device %s on %s (%s) differs in %s. One row a day is \
                counted, the one with more filled in, so that row is used and this one \
                is not."""
                .formatted(
                    Words.quote(row.deviceId()),
                    Words.date(row.visitedOn()),
                    Words.row(kept.origin()),
                    Differences.between(kept, row))
            : """
                Two rows about device %s on %s disagree: %s there (%s), %s here. The \
                worse condition counts, so that row is used and this one is not. Correct \
                the row that is wrong, or delete it."""
                .formatted(
                    Words.quote(row.deviceId()),
                    Words.date(row.visitedOn()),
                    kept.condition().code(),
                    Words.row(kept.origin()),
                    row.condition().code());
    return what + lost(kept, row);
  }

  /** What goes uncounted with the row although the kept one does not say it. */
  private static String lost(Visit kept, Visit row) {
    List<String> parts = new ArrayList<>();
    if (row.action() != Action.NONE) {
      add(parts, "action", kept.action(), row.action());
    }
    add(parts, "hours", kept.hours(), row.hours());
    add(parts, "volunteer_hours", kept.volunteerHours(), row.volunteerHours());
    add(parts, "cost_usd", kept.costUsd(), row.costUsd());
    add(parts, "wetland_acres", kept.wetlandAcres(), row.wetlandAcres());
    return parts.isEmpty()
        ? ""
        : " Not counted with it: %s. If that belongs to the day, write it in the row that is used."
            .formatted(Words.list(parts));
  }

  private static void add(List<String> parts, String field, Object kept, Object here) {
    if (here != null && !Objects.equals(kept, here)) {
      parts.add(field + " " + Words.plain(field, here));
    }
  }
}
