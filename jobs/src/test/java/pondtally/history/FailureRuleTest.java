package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pondtally.history.Rows.RULES;
import static pondtally.history.Rows.STRICT;
import static pondtally.history.Rows.days;
import static pondtally.history.Rows.installed;
import static pondtally.history.Rows.tracked;
import static pondtally.record.Action.CLEANED;
import static pondtally.record.Action.NONE;
import static pondtally.record.Action.REPAIRED;
import static pondtally.record.Condition.FAILED;
import static pondtally.record.Condition.REDUCED;
import static pondtally.record.Condition.WORKING;

import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.Cause;

/**
 * When a failure happened, tested on whole histories. Days from 1970-01-01; day 100 is half day
 * 200.
 */
class FailureRuleTest {

  @Test
  void aDeviceNeverFoundFailedIsCensoredAtItsLastVisit() {
    DeviceHistory d = installed(100).visit("d1", 150, WORKING).visit("d1", 400, WORKING).device();
    assertEquals(List.of(), d.failures());
    assertFalse(d.lives().get(0).failed());
    assertEquals(800, d.lives().get(0).leftOn());
    assertEquals(600, d.lives().get(0).exitAge(FailureDating.INTERVAL));
    assertEquals(days(100, 400), d.verified());
    assertEquals(days(100, 400), d.functional());
    assertEquals(days(100, 400), d.exposure());
  }

  @Test
  void itLiesBetweenTheLastGoodVisitAndTheOneThatFoundIt() {
    DeviceHistory d =
        installed(100)
            .visit("d1", 150, WORKING)
            .visit("d1", 201, FAILED, NONE, Cause.PIPE_PLUGGED, null)
            .device();
    assertEquals(List.of(new Failure(0, 300, 402, null, Cause.PIPE_PLUGGED)), d.failures());
    assertEquals(d.failures().get(0), d.lives().get(0).firstFailure());
    assertEquals(100, d.lives().get(0).knownGoodAge());
    assertEquals(202, d.lives().get(0).foundAge());
  }

  @Test
  void itsMidpointMayFallOnAHalfDay() {
    DeviceHistory d = installed(100).visit("d1", 150, WORKING).visit("d1", 201, FAILED).device();
    assertEquals(351, d.failures().get(0).midpoint()); // day 175.5
    assertEquals(151, d.lives().get(0).exitAge(FailureDating.MIDPOINT)); // 75.5 days old
    assertEquals(151, d.lives().get(0).exitAge(FailureDating.INTERVAL));
    assertEquals(202, d.lives().get(0).exitAge(FailureDating.DISCOVERY)); // 101 days old
  }

  @Test
  void withoutAnEarlierVisitItLiesBetweenEntryAndTheVisitThatFoundIt() {
    DeviceHistory d = installed(100).visit("d1", 140, FAILED).device();
    assertEquals(List.of(new Failure(0, 200, 280, null, Cause.UNKNOWN)), d.failures());
  }

  @Test
  void functionEndsAtTheMidpointWhateverDayStandsForTheFailure() {
    for (FailureDating dating : FailureDating.values()) {
      HistoryRules rules = new HistoryRules(FailureDefinition.FAILED, dating, 1000, 180);
      DeviceHistory d =
          installed(100).visit("d1", 140, FAILED).visit("d1", 200, FAILED).device(rules);
      assertEquals(days(100, 120), d.functional(), dating.code());
      assertEquals(days(100, 200), d.verified(), dating.code());
    }
  }

  @Test
  void foundOnTheDayOfEntryItTakesThatDay() {
    DeviceHistory d = installed(100).visit("d1", 100, FAILED).visit("d1", 110, FAILED).device();
    assertEquals(List.of(new Failure(0, 200, 202, null, Cause.UNKNOWN)), d.failures());
    assertEquals(1, d.lives().get(0).exitAge(FailureDating.MIDPOINT)); // half a day
    assertEquals(2, d.lives().get(0).exitAge(FailureDating.DISCOVERY)); // one day
    assertEquals(Stretches.between(200, 201), d.functional());
  }

  @Test
  void foundOnTheDayOfEntryAndNeverSeenAgainItStillHasHalfADayAtRisk() {
    DeviceHistory d = installed(100).visit("d1", 100, FAILED).device();
    assertTrue(d.lives().get(0).followed());
    assertEquals(1, d.failures().size());
    assertEquals(Stretches.between(200, 201), d.exposure());
    assertEquals(Stretches.NONE, d.verified());
    assertEquals(Stretches.NONE, d.functional());
  }

  @Test
  void failuresAreObservedFromEntryToTheLastVisitAndEachWithinThatTime() {
    assertEquals(400, installed(100).visit("d1", 200, WORKING).device().observedTo());
    assertEquals(202, installed(100).visit("d1", 100, FAILED).device().observedTo());
    assertEquals(200, installed(100).device().observedTo());
    assertEquals(500, tracked(100, 250).visit("d1", 200, WORKING).device().observedTo());
  }

  @Test
  void failedVisitsBeforeARestartAreOneFailureWithTheFirstOnesCause() {
    DeviceHistory d =
        installed(100)
            .visit("d1", 140, FAILED, NONE, Cause.ICE, null)
            .visit("d1", 160, FAILED, NONE, Cause.VANDALISM, null)
            .visit("d1", 180, FAILED, REPAIRED, Cause.WASHED_OUT, null)
            .device();
    assertEquals(List.of(new Failure(0, 200, 280, 360, Cause.ICE)), d.failures());
  }

  @Test
  void anUnrecordedCauseIsUnknownEvenWhereALaterVisitNamesOne() {
    DeviceHistory d =
        installed(100)
            .visit("d1", 140, FAILED)
            .visit("d1", 160, FAILED, NONE, Cause.ICE, null)
            .device();
    assertEquals(Cause.UNKNOWN, d.failures().get(0).cause());
  }

  @Test
  void reducedIsNotFailureUnlessSoSet() {
    Rows rows = installed(100).visit("d1", 140, REDUCED).visit("d1", 200, FAILED);
    assertEquals(280, rows.device(RULES).failures().get(0).knownGoodOn());
    assertEquals(400, rows.device(RULES).failures().get(0).foundOn());
    assertEquals(days(100, 170), rows.device(RULES).functional());
    assertEquals(
        List.of(new Failure(0, 200, 280, null, Cause.UNKNOWN)), rows.device(STRICT).failures());
    assertEquals(days(100, 120), rows.device(STRICT).functional());
  }

  @Test
  void everyFailureAfterEntryIsKeptAndTheLifeHasTheFirst() {
    DeviceHistory d =
        installed(100)
            .visit("d1", 140, FAILED, CLEANED)
            .visit("d1", 180, FAILED, REPAIRED)
            .visit("d1", 200, WORKING)
            .device();
    assertEquals(
        List.of(
            new Failure(0, 200, 280, 280, Cause.UNKNOWN),
            new Failure(0, 280, 360, 360, Cause.UNKNOWN)),
        d.failures());
    assertEquals(1, d.lives().size());
    assertEquals(280, d.lives().get(0).firstFailure().foundOn());
    // Down from 120 to 140 and from 160 to 180.
    assertEquals(60, d.functional().days());
    assertEquals(100, d.verified().days());
  }

  @Test
  void failuresFoundOnTwoDaysRunningEachTakeADay() {
    DeviceHistory d =
        installed(100)
            .visit("d1", 100, FAILED, CLEANED)
            .visit("d1", 101, FAILED, CLEANED)
            .visit("d1", 110, WORKING)
            .device();
    assertEquals(
        List.of(
            new Failure(0, 200, 202, 202, Cause.UNKNOWN),
            new Failure(0, 202, 204, 204, Cause.UNKNOWN)),
        d.failures());
    assertEquals(9, d.functional().days()); // 10 days less two halves
  }
}
