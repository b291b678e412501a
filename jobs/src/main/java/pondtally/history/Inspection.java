package pondtally.history;

import pondtally.record.Action;
import pondtally.record.Cause;
import pondtally.record.Condition;

/**
 * What was found and done at a device on one day.
 *
 * @param at start of the day, half days
 * @param condition the worst found; {@link Condition#RETIRED} where nothing else was
 * @param action what was done about it
 * @param cause null: not recorded
 * @param ends whether the device was found retired or was removed
 */
record Inspection(int at, Condition condition, Action action, Cause cause, boolean ends) {

  /** Whether the day tells the condition the device was in, beyond that it was retired. */
  boolean tellsCondition() {
    return condition != Condition.RETIRED;
  }

  boolean replaced() {
    return action == Action.REPLACED && tellsCondition();
  }
}
