package pondtally.history;

import java.util.List;
import pondtally.record.Install;

/**
 * When a life comes under observation: its opening or {@code tracked_from}, whichever is later
 * (left truncation). Visits before that give no time and no event; where the last of them left the
 * device failed, entry is the restart. The first install row's {@code tracked_from} holds for all
 * its lives, a later row's for the life it designs. Source for counting time only from entry: Klein
 * and Moeschberger 2003, section 3.4 (from memory).
 */
final class EntryRule {

  /**
   * @param on half day of entry; where the life never came under observation, the day it would
   *     have, but not after it closed
   * @param next index of the first finding after entry
   * @param made whether it came under observation at all
   */
  record Entry(int on, int next, boolean made) {}

  private EntryRule() {}

  /**
   * @param openedOn age 0 of the life, half days
   * @param first the device's first install record
   */
  static Entry of(Service life, int openedOn, Install first, FailureDefinition failure) {
    int from = followedFrom(life, openedOn, first);
    if (life.closedOn() != null && life.closedOn() < from) {
      return new Entry(Math.max(openedOn, life.closedOn()), life.findings().size(), false);
    }
    List<Inspection> findings = life.findings();
    int next = 0;
    while (next < findings.size() && findings.get(next).at() < from) {
      next++;
    }
    return RestartRule.standsFailed(findings.subList(0, next), failure)
        ? atRestart(findings, next, from, failure)
        : new Entry(from, next, true);
  }

  private static int followedFrom(Service life, int openedOn, Install first) {
    int from = openedOn;
    if (first.trackedFrom() != null) {
      from = Math.max(from, HalfDays.startOf((int) first.trackedFrom()));
    }
    if (life.design().trackedFrom() != null) {
      from = Math.max(from, HalfDays.startOf((int) life.design().trackedFrom()));
    }
    return from;
  }

  private static Entry atRestart(
      List<Inspection> findings, int next, int from, FailureDefinition failure) {
    for (int i = next; i < findings.size(); i++) {
      if (RestartRule.restarts(findings.get(i), failure)) {
        return new Entry(findings.get(i).at(), i + 1, true);
      }
    }
    return new Entry(from, findings.size(), false);
  }
}
