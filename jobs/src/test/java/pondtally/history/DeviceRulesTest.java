package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static pondtally.record.Action.NONE;
import static pondtally.record.Condition.FAILED;
import static pondtally.record.Condition.WORKING;

import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.Cause;
import pondtally.record.RetiredReason;

/**
 * One test a rule: a device, its visits on numbered days, and what must follow. Days are counted
 * from 1970-01-01; histories count half days, so day 100 is 200. The rules are common practice, no
 * source.
 */
class DeviceRulesTest {

  private static final HistoryRules RULES =
      new HistoryRules(FailureDefinition.FAILED, FailureDating.INTERVAL, 1000, 180);
  private static final HistoryRules STRICT =
      new HistoryRules(FailureDefinition.FAILED_OR_REDUCED, FailureDating.INTERVAL, 1000, 180);

  private static Rows installed(int day) {
    return new Rows().site("s1").install("d1", "s1", day);
  }

  private static Rows tracked(int day, int from) {
    return new Rows().site("s1").install("d1", "s1", day, from, null, null);
  }

  private static Rows retired(int day, int retiredOn, RetiredReason reason) {
    return new Rows().site("s1").install("d1", "s1", day, null, retiredOn, reason);
  }

  private static Stretches days(int from, int to) {
    return Stretches.between(2 * from, 2 * to);
  }

  @Test
  void aDeviceNeverFoundFailedIsCensoredAtItsLastVisit() {
    DeviceHistory d =
        installed(100).visit("d1", 150, WORKING).visit("d1", 400, WORKING).device(RULES);
    assertEquals(List.of(), d.failures());
    assertEquals(800, d.lives().get(0).leftOn());
    assertEquals(600, d.lives().get(0).exitAge(FailureDating.INTERVAL));
    assertEquals(days(100, 400), d.verified());
    assertEquals(days(100, 400), d.functional());
    assertEquals(days(100, 400), d.exposure());
  }

  @Test
  void aFailureLiesBetweenTheLastGoodVisitAndTheOneThatFoundIt() {
    DeviceHistory d =
        installed(100)
            .visit("d1", 150, WORKING)
            .visit("d1", 201, FAILED, NONE, Cause.PIPE_PLUGGED, null)
            .device(RULES);
    assertEquals(List.of(new Failure(0, 300, 402, null, Cause.PIPE_PLUGGED)), d.failures());
    assertEquals(351, d.failures().get(0).midpoint()); // day 175.5
    assertEquals(d.failures().get(0), d.lives().get(0).firstFailure());
    assertEquals(151, d.lives().get(0).exitAge(FailureDating.MIDPOINT));
    assertEquals(202, d.lives().get(0).exitAge(FailureDating.DISCOVERY));
    assertEquals(days(100, 201), d.verified());
    assertEquals(Stretches.between(200, 351), d.functional());
    assertEquals(DeviceState.FAILED, d.state());
    assertNull(d.lastKnownGoodOn());
  }
}
