package pondtally.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pondtally.record.Action;
import pondtally.record.Cause;
import pondtally.record.Condition;
import pondtally.record.Visit;

/**
 * One finding a day: of several visits on a day the worst condition counts (failed, then reduced,
 * then working), with the farthest-reaching action taken at that condition; a milder row counts for
 * nothing, and {@code retired} is kept beside the worst. Common practice, no source.
 */
final class SameDayRule {

  private static final Comparator<Visit> BY_DAY =
      Comparator.comparingInt(Visit::visitedOn).thenComparing(Visit::origin);

  private SameDayRule() {}

  /** The findings about one device, by day, whatever the order of its visits. */
  static List<Inspection> inspections(List<Visit> visits) {
    List<Visit> sorted = new ArrayList<>(visits);
    sorted.sort(BY_DAY);
    List<Inspection> days = new ArrayList<>(sorted.size());
    for (int from = 0, to; from < sorted.size(); from = to) {
      to = from + 1;
      while (to < sorted.size() && sorted.get(to).visitedOn() == sorted.get(from).visitedOn()) {
        to++;
      }
      days.add(oneDay(sorted.subList(from, to)));
    }
    return days;
  }

  private static Inspection oneDay(List<Visit> visits) {
    Condition worst = visits.get(0).condition();
    boolean retired = false;
    for (Visit visit : visits) {
      worst = harm(visit.condition()) > harm(worst) ? visit.condition() : worst;
      retired |= visit.condition() == Condition.RETIRED;
    }
    Action action = Action.NONE;
    Cause cause = null;
    for (Visit visit : visits) {
      if (visit.condition() == worst) {
        action = farther(action, visit.action());
        cause = cause == null ? visit.cause() : cause;
      }
    }
    int at = HalfDays.startOf(visits.get(0).visitedOn());
    return new Inspection(at, worst, action, cause, retired || action == Action.REMOVED);
  }

  private static int harm(Condition condition) {
    return switch (condition) {
      case RETIRED -> 0;
      case WORKING -> 1;
      case REDUCED -> 2;
      case FAILED -> 3;
    };
  }

  /** Actions are declared from nothing to removal. */
  private static Action farther(Action a, Action b) {
    return b == null || a.compareTo(b) >= 0 ? a : b;
  }
}
