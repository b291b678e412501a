package pondtally.history;

import pondtally.record.RetiredReason;

/**
 * An end is a competing end only of a device that had not failed: where it was found failed that
 * day, or had failed and was not restarted, the failure counts and there is no competing end. A
 * reason that was not recorded counts as {@code other}. Source for ends that compete with failure:
 * Aalen and Johansen 1978; the rest common practice, no source.
 */
final class EndRule {

  private EndRule() {}

  /** Whether the life ended while its device stood failed, or on a day it was found failed. */
  static boolean failedAtEnd(Service life, FailureDefinition failure) {
    return life.endedOn() != null
        && (foundFailedThatDay(life, failure)
            || RestartRule.standsFailed(life.findings(), failure));
  }

  private static boolean foundFailedThatDay(Service life, FailureDefinition failure) {
    return life.endedOn().equals(life.lastVisitOn())
        && failure.isFailure(life.findings().get(life.findings().size() - 1).condition());
  }

  /**
   * The reason as a competing end of a life without failure; null where the life did not end. A
   * device that had failed by its end has a first failure, so its life is never asked.
   */
  static RetiredReason competing(Service life) {
    if (life.endedOn() == null) {
      return null;
    }
    return life.endReason() == null ? RetiredReason.OTHER : life.endReason();
  }
}
