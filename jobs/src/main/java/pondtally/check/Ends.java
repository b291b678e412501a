package pondtally.check;

import pondtally.record.Action;
import pondtally.record.Condition;
import pondtally.record.Visit;

/** What ends a device's service, and what opens its next life. */
final class Ends {

  private Ends() {}

  static boolean ends(Visit visit) {
    return visit.condition() == Condition.RETIRED || visit.action() == Action.REMOVED;
  }

  static boolean opensNextLife(Visit visit) {
    return ends(visit) || visit.action() == Action.REPLACED;
  }
}
