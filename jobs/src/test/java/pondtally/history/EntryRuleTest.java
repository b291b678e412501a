package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static pondtally.history.Rows.days;
import static pondtally.history.Rows.installed;
import static pondtally.history.Rows.tracked;
import static pondtally.record.Action.CLEANED;
import static pondtally.record.Action.REPAIRED;
import static pondtally.record.Action.REPLACED;
import static pondtally.record.Condition.FAILED;
import static pondtally.record.Condition.WORKING;

import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.Cause;
import pondtally.record.RetiredReason;

/** When a device comes under observation, tested on whole histories. */
class EntryRuleTest {

  @Test
  void entryIsTheInstallDay() {
    DeviceHistory d = installed(100).visit("d1", 300, WORKING).device();
    assertEquals(200, d.entryOn());
    assertEquals(0, d.lives().get(0).entryAge());
  }

  @Test
  void trackedFromEntersTheDeviceAtThatAge() {
    DeviceHistory d = tracked(100, 250).visit("d1", 300, FAILED).device();
    assertEquals(500, d.entryOn());
    assertEquals(300, d.lives().get(0).entryAge()); // 150 days
    assertEquals(new Failure(0, 500, 600, null, Cause.UNKNOWN), d.failures().get(0));
    assertEquals(days(250, 275), d.functional());
  }

  @Test
  void trackedFromBeforeTheInstallIsAgeZero() {
    DeviceHistory d = tracked(100, 50).visit("d1", 300, WORKING).device();
    assertEquals(200, d.entryOn());
    assertEquals(0, d.lives().get(0).entryAge());
  }

  @Test
  void visitsAndFailuresBeforeEntryGiveNoTimeAndNoEvent() {
    DeviceHistory d =
        tracked(100, 250)
            .visit("d1", 150, FAILED, REPAIRED)
            .visit("d1", 200, WORKING)
            .visit("d1", 400, WORKING)
            .device();
    assertEquals(List.of(), d.failures());
    assertEquals(500, d.entryOn());
    assertEquals(days(250, 400), d.verified());
  }

  @Test
  void aFailureFoundOnTheDayOfEntryIsAnEvent() {
    DeviceHistory d = tracked(100, 250).visit("d1", 250, FAILED).device();
    assertEquals(List.of(new Failure(0, 500, 502, null, Cause.UNKNOWN)), d.failures());
  }

  @Test
  void aDeviceThatStoodFailedEntersAtItsRestart() {
    DeviceHistory d =
        tracked(100, 250)
            .visit("d1", 200, FAILED)
            .visit("d1", 300, FAILED)
            .visit("d1", 340, FAILED, CLEANED)
            .visit("d1", 400, WORKING)
            .device();
    assertEquals(680, d.entryOn());
    assertEquals(480, d.lives().get(0).entryAge());
    assertEquals(List.of(), d.failures());
    assertEquals(days(340, 400), d.verified());
    assertEquals(days(340, 400), d.functional());
  }

  @Test
  void foundWorkingAfterTrackedFromItEntersThatDay() {
    DeviceHistory d =
        tracked(100, 250)
            .visit("d1", 200, FAILED)
            .visit("d1", 300, WORKING)
            .visit("d1", 320, FAILED)
            .device();
    assertEquals(600, d.entryOn());
    assertEquals(List.of(new Failure(0, 600, 640, null, Cause.UNKNOWN)), d.failures());
  }

  @Test
  void aRestartBeforeTrackedFromLeavesEntryAsItIs() {
    DeviceHistory d =
        tracked(100, 250)
            .visit("d1", 200, FAILED)
            .visit("d1", 220, WORKING)
            .visit("d1", 320, WORKING)
            .device();
    assertEquals(500, d.entryOn());
    assertEquals(days(250, 320), d.verified());
  }

  @Test
  void neverRestartedItNeverEnters() {
    DeviceHistory d = tracked(100, 250).visit("d1", 200, FAILED).visit("d1", 300, FAILED).device();
    assertFalse(d.lives().get(0).followed());
    assertEquals(List.of(), d.failures());
    assertEquals(Stretches.NONE, d.verified());
    assertEquals(Stretches.NONE, d.exposure());
    assertEquals(DeviceState.FAILED, d.state());
    assertEquals(500, d.entryOn());
    assertEquals(600, d.lastVisitOn());
  }

  @Test
  void aLifeReplacedBeforeTrackedFromIsNotFollowedAndTheNextEntersAtItsAge() {
    DeviceHistory d =
        tracked(100, 250).visit("d1", 200, FAILED, REPLACED).visit("d1", 300, WORKING).device();
    assertEquals(2, d.lives().size());
    assertFalse(d.lives().get(0).followed());
    assertEquals(400, d.lives().get(1).openedOn());
    assertEquals(100, d.lives().get(1).entryAge()); // 50 days after the replacement
    assertEquals(500, d.entryOn());
    assertEquals(days(250, 300), d.exposure());
  }

  @Test
  void replacedAsItsRestartItEntersAtAgeZeroOfTheNextLife() {
    DeviceHistory d =
        tracked(100, 250)
            .visit("d1", 200, FAILED)
            .visit("d1", 300, FAILED, REPLACED)
            .visit("d1", 350, WORKING)
            .device();
    assertFalse(d.lives().get(0).followed());
    assertEquals(600, d.lives().get(1).entryOn());
    assertEquals(0, d.lives().get(1).entryAge());
    assertEquals(600, d.entryOn());
    assertEquals(List.of(), d.failures());
  }

  @Test
  void retiredBeforeTrackedFromItWasNeverFollowed() {
    DeviceHistory d =
        new Rows()
            .site("s1")
            .install("d1", "s1", 100, 400, 300, RetiredReason.SITE_WORKS)
            .visit("d1", 200, WORKING)
            .device();
    assertFalse(d.lives().get(0).followed());
    assertNull(d.lives().get(0).retired());
    assertEquals(DeviceState.RETIRED, d.state());
    assertEquals(Stretches.NONE, d.verified());
  }

  @Test
  void trackedFromAfterTheDataCutAddsNothingYet() {
    DeviceHistory d = tracked(100, 1100).visit("d1", 900, WORKING).device();
    assertEquals(Stretches.NONE, d.verified());
    assertFalse(d.lives().get(0).followed());
    assertEquals(2000, d.lastKnownGoodOn()); // not after the data cut
  }
}
