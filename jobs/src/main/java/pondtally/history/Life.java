package pondtally.history;

import java.io.Serializable;
import pondtally.record.Install;
import pondtally.record.RetiredReason;

/**
 * One service life of a device: from its installation, or from the visit that replaced it, to its
 * first failure or to the end of its follow-up. The unit of curves, tests, hazards and fits. Times
 * are half days since 1970-01-01.
 *
 * @param number from 0
 * @param design install record whose design the life has
 * @param openedOn day of installation or replacement: age 0
 * @param entryOn from when it was followed; not before {@code openedOn}
 * @param firstFailure its first failure after entry; null where none was found
 * @param leftOn end of follow-up: last visit, replacement or retirement (also of a life that
 *     failed, where later failures and repairs belong to its follow-up); {@code entryOn} where it
 *     was not followed
 * @param retired reason of retirement where that ended the life without failure (a competing end);
 *     else null
 */
public record Life(
    int number,
    Install design,
    int openedOn,
    int entryOn,
    Failure firstFailure,
    int leftOn,
    RetiredReason retired)
    implements Serializable {

  /** Whether its first failure was found. */
  public boolean failed() {
    return firstFailure != null;
  }

  /** Age at entry, half days; at risk for ages above it. */
  public int entryAge() {
    return entryOn - openedOn;
  }

  /** Age at which its follow-up ends, by failure (as dated) or without one, half days. */
  public int exitAge(FailureDating dating) {
    return (failed() ? firstFailure.datedOn(dating) : leftOn) - openedOn;
  }

  /** Age at which it was last known not failed, half days. */
  public int knownGoodAge() {
    return (failed() ? firstFailure.knownGoodOn() : leftOn) - openedOn;
  }

  /** Age at which its first failure was found, half days; null where none was. */
  public Integer foundAge() {
    return failed() ? firstFailure.foundOn() - openedOn : null;
  }

  /** From entry to the end of follow-up, repeated failures and the time between them included. */
  public Stretches followUp() {
    return Stretches.between(entryOn, leftOn);
  }

  /** Whether there is any follow-up at all: lives without it are in no curve. */
  public boolean followed() {
    return failed() || leftOn > entryOn;
  }
}
