package pondtally.history;

import java.util.List;
import pondtally.record.Action;

/**
 * What puts a failed device back to work: cleaning, repair or replacement on the visit that finds
 * it failed, that day; else the first later visit that finds it not failed or does one of these.
 * Common practice, no source.
 */
final class RestartRule {

  private RestartRule() {}

  /** Whether a device that had failed is back at work after the finding. */
  static boolean restarts(Inspection found, FailureDefinition failure) {
    return found.tellsCondition()
        && (!failure.isFailure(found.condition()) || putsRight(found.action()));
  }

  /** Whether a device is failed, and not restarted, after the findings. */
  static boolean standsFailed(List<Inspection> findings, FailureDefinition failure) {
    for (int i = findings.size() - 1; i >= 0; i--) {
      if (findings.get(i).tellsCondition()) {
        return !restarts(findings.get(i), failure);
      }
    }
    return false;
  }

  static boolean putsRight(Action action) {
    return switch (action) {
      case CLEANED, REPAIRED, REPLACED -> true;
      case NONE, REMOVED -> false;
    };
  }
}
