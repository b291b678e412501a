package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pondtally.history.Rows.RULES;
import static pondtally.history.Rows.STRICT;
import static pondtally.history.Rows.days;
import static pondtally.history.Rows.installed;
import static pondtally.history.Rows.retired;
import static pondtally.record.Action.REMOVED;
import static pondtally.record.Action.REPAIRED;
import static pondtally.record.Condition.FAILED;
import static pondtally.record.Condition.REDUCED;
import static pondtally.record.Condition.RETIRED;
import static pondtally.record.Condition.WORKING;

import org.junit.jupiter.api.Test;
import pondtally.record.Cause;
import pondtally.record.RetiredReason;

/** Ends without failure, tested on whole histories. */
class EndRuleTest {

  @Test
  void theInstallRowsRetirementCensorsOnThatDateAndCompetes() {
    DeviceHistory d =
        retired(100, 500, RetiredReason.OWNER_REMOVED).visit("d1", 300, WORKING).device();
    Life life = d.lives().get(0);
    assertEquals(1000, life.leftOn());
    assertEquals(RetiredReason.OWNER_REMOVED, life.retired());
    assertEquals(1000, d.endedOn());
    assertEquals(RetiredReason.OWNER_REMOVED, d.endReason());
    assertEquals(DeviceState.RETIRED, d.state());
    assertNull(d.lastKnownGoodOn());
    assertFalse(d.failedAtEnd());
  }

  @Test
  void aRetirementAfterTheLastVisitIsFollowUpButNotVerified() {
    DeviceHistory d = retired(100, 500, RetiredReason.OTHER).visit("d1", 300, WORKING).device();
    assertEquals(days(100, 300), d.verified());
    assertEquals(days(100, 300), d.functional());
    assertEquals(days(100, 500), d.exposure());
  }

  @Test
  void aRetiredVisitCensorsOnThatDateAndCompetes() {
    DeviceHistory d = installed(100).visit("d1", 300, RETIRED).device();
    assertEquals(600, d.lives().get(0).leftOn());
    assertEquals(RetiredReason.OTHER, d.lives().get(0).retired());
    assertNull(d.endReason()); // not recorded
    assertEquals(days(100, 300), d.verified());
  }

  @Test
  void aRetiredVisitTakesTheInstallRowsReason() {
    Rows rows =
        new Rows().site("s1").install("d1", "s1", 100, null, null, RetiredReason.DAM_ABANDONED);
    assertEquals(
        RetiredReason.DAM_ABANDONED,
        rows.visit("d1", 300, RETIRED).device().lives().get(0).retired());
  }

  @Test
  void removalCensorsOnThatDateAndCompetes() {
    DeviceHistory d = installed(100).visit("d1", 300, WORKING, REMOVED).device();
    assertEquals(600, d.endedOn());
    assertEquals(RetiredReason.OTHER, d.lives().get(0).retired());
    assertEquals(DeviceState.RETIRED, d.state());
  }

  @Test
  void theEarliestEndCounts() {
    Rows rows = retired(100, 500, RetiredReason.SITE_WORKS);
    assertEquals(600, rows.visit("d1", 300, WORKING, REMOVED).device().endedOn());
    Rows later = retired(100, 200, RetiredReason.SITE_WORKS).visit("d1", 300, RETIRED);
    assertEquals(400, later.device().endedOn());
    assertNull(later.device().lastVisitOn()); // a visit after the end tells nothing
  }

  @Test
  void foundFailedThatDayTheFailureCountsAndNothingCompetes() {
    DeviceHistory d =
        retired(100, 300, RetiredReason.OWNER_REMOVED).visit("d1", 300, FAILED).device();
    assertEquals(1, d.failures().size());
    assertTrue(d.failedAtEnd());
    assertNull(d.lives().get(0).retired());
    assertEquals(DeviceState.RETIRED, d.state());
    assertEquals(600, d.endedOn());
  }

  @Test
  void removedBecauseItFailedTheFailureCounts() {
    DeviceHistory d = installed(100).visit("d1", 300, FAILED, REMOVED).device();
    assertEquals(new Failure(0, 200, 600, null, Cause.UNKNOWN), d.lives().get(0).firstFailure());
    assertTrue(d.failedAtEnd());
  }

  @Test
  void failedAndNotRestartedTheFailureCountsAndNothingCompetes() {
    DeviceHistory d = installed(100).visit("d1", 200, FAILED).visit("d1", 300, RETIRED).device();
    assertEquals(1, d.failures().size());
    assertTrue(d.failedAtEnd());
    assertNull(d.lives().get(0).retired());
    assertEquals(days(100, 150), d.functional());
    assertEquals(days(100, 150), d.exposure());
  }

  @Test
  void failedAndRestartedTheEndIsNoFailureButTheLifesEventStays() {
    DeviceHistory d =
        installed(100).visit("d1", 200, FAILED, REPAIRED).visit("d1", 300, RETIRED).device();
    assertFalse(d.failedAtEnd());
    assertTrue(d.lives().get(0).failed());
    assertNull(d.lives().get(0).retired());
    assertEquals(days(100, 150).union(days(200, 300)), d.exposure());
  }

  @Test
  void retiredAndRepairedOnOneDayAfterFailureStillFailedThatDay() {
    DeviceHistory d =
        retired(100, 300, RetiredReason.OTHER).visit("d1", 300, FAILED, REPAIRED).device();
    assertTrue(d.failedAtEnd());
  }

  @Test
  void reducedOnTheDayOfItsEndItFailedOnlyWhereReducedIsFailure() {
    Rows rows = installed(100).visit("d1", 300, REDUCED, REMOVED);
    assertFalse(rows.device(RULES).failedAtEnd());
    assertEquals(RetiredReason.OTHER, rows.device(RULES).lives().get(0).retired());
    assertTrue(rows.device(STRICT).failedAtEnd());
    assertNull(rows.device(STRICT).lives().get(0).retired());
  }

  @Test
  void retiredOnTheDayItWasPutInItHasNoFollowUp() {
    DeviceHistory d = retired(100, 100, RetiredReason.OTHER).device();
    assertFalse(d.lives().get(0).followed());
    assertNull(d.lives().get(0).retired());
    assertEquals(DeviceState.RETIRED, d.state());
  }

  @Test
  void neverVisitedButRetiredItIsFollowedToThatDateAndNothingIsVerified() {
    DeviceHistory d = retired(100, 300, RetiredReason.SITE_WORKS).device();
    assertTrue(d.lives().get(0).followed());
    assertEquals(RetiredReason.SITE_WORKS, d.lives().get(0).retired());
    assertEquals(Stretches.NONE, d.verified());
    assertEquals(DeviceState.RETIRED, d.state());
  }
}
