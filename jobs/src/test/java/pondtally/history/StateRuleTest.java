package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static pondtally.history.Rows.STRICT;
import static pondtally.history.Rows.installed;
import static pondtally.record.Action.CLEANED;
import static pondtally.record.Action.NONE;
import static pondtally.record.Action.REMOVED;
import static pondtally.record.Action.REPAIRED;
import static pondtally.record.Action.REPLACED;
import static pondtally.record.Condition.FAILED;
import static pondtally.record.Condition.REDUCED;
import static pondtally.record.Condition.RETIRED;
import static pondtally.record.Condition.WORKING;

import org.junit.jupiter.api.Test;
import pondtally.record.Action;
import pondtally.record.Condition;

/** State at the data cut, day 1000, with visits planned every 180 days. */
class StateRuleTest {

  private static DeviceState state(Condition condition, Action action) {
    return installed(100).visit("d1", 900, condition, action).device().state();
  }

  @Test
  void itIsTheLastVisitsConditionAfterItsAction() {
    assertEquals(DeviceState.WORKING, state(WORKING, NONE));
    assertEquals(DeviceState.REDUCED, state(REDUCED, NONE));
    assertEquals(DeviceState.WORKING, state(REDUCED, CLEANED));
    assertEquals(DeviceState.FAILED, state(FAILED, NONE));
    assertEquals(DeviceState.FAILED, state(FAILED, null));
    assertEquals(DeviceState.WORKING, state(FAILED, REPAIRED));
    assertEquals(DeviceState.WORKING, state(FAILED, REPLACED));
    assertEquals(DeviceState.RETIRED, state(FAILED, REMOVED));
    assertEquals(DeviceState.RETIRED, state(WORKING, REMOVED));
    assertEquals(DeviceState.RETIRED, state(RETIRED, NONE));
  }

  @Test
  void beyondTwiceTheIntervalADeviceNotFailedIsUnverified() {
    assertEquals(DeviceState.WORKING, installed(100).visit("d1", 640, WORKING).device().state());
    assertEquals(DeviceState.UNVERIFIED, installed(100).visit("d1", 639, WORKING).device().state());
    assertEquals(DeviceState.UNVERIFIED, installed(100).visit("d1", 639, REDUCED).device().state());
    assertEquals(1278, installed(100).visit("d1", 639, WORKING).device().lastKnownGoodOn());
  }

  @Test
  void failedStaysFailed() {
    assertEquals(DeviceState.FAILED, installed(100).visit("d1", 150, FAILED).device().state());
  }

  @Test
  void neverVisitedItIsUnverifiedHoweverNew() {
    DeviceHistory d = installed(990).device();
    assertEquals(DeviceState.UNVERIFIED, d.state());
    assertEquals(Stretches.NONE, d.verified());
    assertFalse(d.lives().get(0).followed());
    assertNull(d.lastVisitOn());
    assertEquals(1980, d.lastKnownGoodOn());
  }

  @Test
  void whereReducedIsFailureADeviceLeftReducedIsFailed() {
    assertEquals(
        DeviceState.FAILED, installed(100).visit("d1", 900, REDUCED).device(STRICT).state());
  }
}
