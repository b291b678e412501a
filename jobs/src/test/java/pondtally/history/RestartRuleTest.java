package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static pondtally.history.Rows.RULES;
import static pondtally.history.Rows.STRICT;
import static pondtally.history.Rows.days;
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

import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.Action;
import pondtally.record.Cause;

/** What puts a failed device back to work, tested on whole histories. */
class RestartRuleTest {

  @Test
  void cleaningRepairAndReplacementRestartAFailedDeviceThatDay() {
    for (Action action : List.of(CLEANED, REPAIRED, REPLACED)) {
      DeviceHistory d =
          installed(100).visit("d1", 140, FAILED, action).visit("d1", 200, WORKING).device();
      assertEquals(280, d.failures().get(0).restartedOn(), action.code());
      assertEquals(80, d.functional().days(), action.code());
    }
  }

  @Test
  void withoutSuchAnActionTheFirstLaterVisitThatFindsItNotFailedRestartsIt() {
    DeviceHistory d =
        installed(100)
            .visit("d1", 140, FAILED, NONE)
            .visit("d1", 190, FAILED)
            .visit("d1", 230, WORKING)
            .device();
    assertEquals(460, d.failures().get(0).restartedOn());
    assertEquals(days(100, 120), d.functional());
    assertEquals(460, d.lastKnownGoodOn());
  }

  @Test
  void reducedRestartsItWhereReducedIsNotFailure() {
    Rows rows = installed(100).visit("d1", 140, FAILED).visit("d1", 190, REDUCED);
    assertEquals(380, rows.device(RULES).failures().get(0).restartedOn());
    assertNull(rows.device(STRICT).failures().get(0).restartedOn());
  }

  @Test
  void aLaterVisitThatStillFindsItFailedButRepairsItRestartsIt() {
    DeviceHistory d =
        installed(100).visit("d1", 140, FAILED).visit("d1", 190, FAILED, REPAIRED).device();
    assertEquals(List.of(new Failure(0, 200, 280, 380, Cause.UNKNOWN)), d.failures());
  }

  @Test
  void theRestartIsTheLastGoodDayOfTheNextFailure() {
    DeviceHistory d =
        installed(100).visit("d1", 140, FAILED, CLEANED).visit("d1", 240, FAILED).device();
    assertEquals(280, d.failures().get(1).knownGoodOn());
    assertEquals(380, d.failures().get(1).midpoint());
  }

  @Test
  void removalAndRetirementRestartNothing() {
    assertNull(
        installed(100)
            .visit("d1", 140, FAILED)
            .visit("d1", 190, FAILED, REMOVED)
            .device()
            .failures()
            .get(0)
            .restartedOn());
    assertNull(
        installed(100)
            .visit("d1", 140, FAILED)
            .visit("d1", 190, RETIRED)
            .device()
            .failures()
            .get(0)
            .restartedOn());
  }

  @Test
  void cleaningAndRepairOfADeviceNotFailedChangeNothing() {
    for (Action action : List.of(CLEANED, REPAIRED)) {
      DeviceHistory d =
          installed(100)
              .visit("d1", 140, WORKING, action)
              .visit("d1", 200, REDUCED, action)
              .device();
      assertEquals(List.of(), d.failures(), action.code());
      assertEquals(1, d.lives().size(), action.code());
      assertEquals(days(100, 200), d.functional(), action.code());
    }
  }

  @Test
  void aFailureOnTheDayOfEntryIsRestartedAtTheEndOfThatDayAtTheEarliest() {
    DeviceHistory d =
        installed(100).visit("d1", 100, FAILED, REPAIRED).visit("d1", 150, WORKING).device();
    assertEquals(List.of(new Failure(0, 200, 202, 202, Cause.UNKNOWN)), d.failures());
    assertEquals(49.5, d.functional().days());
  }
}
