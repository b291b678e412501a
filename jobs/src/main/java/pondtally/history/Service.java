package pondtally.history;

import java.util.List;
import pondtally.record.Install;
import pondtally.record.RetiredReason;

/**
 * The records of one service life, before anything is concluded from them. Times are half days.
 *
 * @param design install record whose design the life has
 * @param openedOn day of installation or replacement
 * @param findings what was found in it, by day; the visit that replaced or ended it included
 * @param replacedOn the visit that replaced it; null where none did
 * @param endedOn when it was retired or removed; null where it was not
 * @param endReason why, where recorded; else null
 */
record Service(
    Install design,
    int openedOn,
    List<Inspection> findings,
    Integer replacedOn,
    Integer endedOn,
    RetiredReason endReason) {

  /** When the life closed, by replacement or end; null while it is open. */
  Integer closedOn() {
    return endedOn != null ? endedOn : replacedOn;
  }

  /** Day of the last visit in this life; null where there was none. */
  Integer lastVisitOn() {
    return findings.isEmpty() ? null : (Integer) findings.get(findings.size() - 1).at();
  }
}
