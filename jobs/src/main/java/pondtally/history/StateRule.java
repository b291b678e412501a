package pondtally.history;

import java.util.List;
import pondtally.record.Condition;

/**
 * State at the data cut: retired once ended; else as the last visit left it, after its action. A
 * device not failed whose last visit lies more than twice the planned interval back is unverified,
 * and so is one not visited since it was installed; a failed one stays failed. Where reduced counts
 * as failure, a device left reduced is failed. Common practice, no source.
 */
final class StateRule {

  private StateRule() {}

  /**
   * @param lives the device's service lives in order
   */
  static DeviceState of(List<Service> lives, HistoryRules rules) {
    Service last = lives.get(lives.size() - 1);
    if (last.endedOn() != null) {
      return DeviceState.RETIRED;
    }
    if (RestartRule.standsFailed(last.findings(), rules.failure())) {
      return DeviceState.FAILED;
    }
    Integer seenOn = seenOn(lives, last);
    if (seenOn == null || stale(seenOn, rules)) {
      return DeviceState.UNVERIFIED;
    }
    return leftReduced(last.findings()) ? DeviceState.REDUCED : DeviceState.WORKING;
  }

  /** Last visit since the device was last installed: the one that replaced it counts. */
  private static Integer seenOn(List<Service> lives, Service last) {
    if (last.lastVisitOn() != null || lives.size() == 1) {
      return last.lastVisitOn();
    }
    return lives.get(lives.size() - 2).replacedOn();
  }

  private static boolean stale(int seenOn, HistoryRules rules) {
    long days = (long) rules.asOf() - seenOn / HalfDays.DAY;
    return days > 2L * rules.revisitEveryDays();
  }

  private static boolean leftReduced(List<Inspection> findings) {
    if (findings.isEmpty()) {
      return false;
    }
    Inspection found = findings.get(findings.size() - 1);
    return found.condition() == Condition.REDUCED && !RestartRule.putsRight(found.action());
  }
}
