package pondtally.history;

import java.io.Serializable;
import pondtally.record.Cause;

/**
 * One failure of a device: however many visits found it failed before it was restarted. Times are
 * half days since 1970-01-01 (a date is the start of its day).
 *
 * @param life index of the service life in which it happened, from 0
 * @param knownGoodOn last day the device was known not failed: a visit, a restart or entry
 * @param foundOn the visit that found it failed; for a failure found on the day of entry, the day
 *     after
 * @param restartedOn the visit that put it back to work; null while it stays failed
 * @param cause cause given at the first of its visits; {@link Cause#UNKNOWN} where none was
 */
public record Failure(int life, int knownGoodOn, int foundOn, Integer restartedOn, Cause cause)
    implements Serializable {

  /**
   * Halfway between the last good day and the day it was found, in half days (rounded down to a
   * half day).
   */
  public int midpoint() {
    return knownGoodOn + (foundOn - knownGoodOn) / 2;
  }

  /** The one day that stands for the failure, in half days; {@code interval} gives the midpoint. */
  public int datedOn(FailureDating dating) {
    return dating == FailureDating.DISCOVERY ? foundOn : midpoint();
  }
}
