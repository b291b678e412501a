package pondtally.history;

import java.util.ArrayList;
import java.util.List;
import pondtally.record.Cause;

/**
 * A failure happened somewhere in (L, R]: R the visit that found it, L the last day the device was
 * known not failed: a visit, its last restart, or entry. Failed visits before a restart are one
 * failure, with the first one's cause. One found on the day L itself, for instance on the day of
 * entry, is (L, L + 1 day]. Interval censoring as in Turnbull 1976; the rest common practice, no
 * source.
 */
final class FailureRule {

  private final int life;
  private final FailureDefinition definition;
  private final List<Failure> failures = new ArrayList<>(2);
  private int knownGoodOn;
  private int foundOn;
  private Cause cause;

  private FailureRule(int life, int entryOn, FailureDefinition definition) {
    this.life = life;
    this.definition = definition;
    this.knownGoodOn = entryOn;
  }

  /**
   * What followed entry.
   *
   * @param failures in order; only the last may not have been restarted
   * @param knownGoodOn last day the device was known not failed, half days
   */
  record Course(List<Failure> failures, int knownGoodOn) {}

  /**
   * @param life index of the service life
   * @param findings those after entry, by day
   */
  static Course of(int life, int entryOn, List<Inspection> findings, FailureDefinition definition) {
    FailureRule rule = new FailureRule(life, entryOn, definition);
    findings.forEach(rule::take);
    if (rule.cause != null) {
      rule.close(null);
    }
    return new Course(List.copyOf(rule.failures), rule.knownGoodOn);
  }

  private void take(Inspection found) {
    if (cause == null && definition.isFailure(found.condition())) {
      foundOn = Math.max(found.at(), knownGoodOn + HalfDays.DAY);
      cause = found.cause() == null ? Cause.UNKNOWN : found.cause();
    }
    if (!RestartRule.restarts(found, definition)) {
      return;
    }
    if (cause == null) {
      knownGoodOn = Math.max(knownGoodOn, found.at());
    } else {
      int restartedOn = Math.max(foundOn, found.at());
      close(restartedOn);
      knownGoodOn = restartedOn;
    }
  }

  private void close(Integer restartedOn) {
    failures.add(new Failure(life, knownGoodOn, foundOn, restartedOn, cause));
    cause = null;
  }
}
