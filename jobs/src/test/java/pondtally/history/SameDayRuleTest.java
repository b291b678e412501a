package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pondtally.history.Rows.STRICT;
import static pondtally.history.Rows.installed;
import static pondtally.record.Action.CLEANED;
import static pondtally.record.Action.NONE;
import static pondtally.record.Action.REPAIRED;
import static pondtally.record.Action.REPLACED;
import static pondtally.record.Condition.FAILED;
import static pondtally.record.Condition.REDUCED;
import static pondtally.record.Condition.RETIRED;
import static pondtally.record.Condition.WORKING;

import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.Cause;
import pondtally.record.RetiredReason;

/** Several visits on one day: the worst counts, whatever the order of the rows. */
class SameDayRuleTest {

  @Test
  void failedCountsBeforeReducedBeforeWorking() {
    Rows rows =
        installed(100).visit("d1", 200, WORKING).visit("d1", 200, FAILED).visit("d1", 200, REDUCED);
    assertEquals(List.of(new Failure(0, 200, 400, null, Cause.UNKNOWN)), rows.device().failures());
    Rows milder = installed(100).visit("d1", 200, WORKING).visit("d1", 200, REDUCED);
    assertEquals(1, milder.device(STRICT).failures().size());
  }

  @Test
  void theMilderRowsActionCountsForNothing() {
    DeviceHistory d =
        installed(100).visit("d1", 200, FAILED).visit("d1", 200, WORKING, REPAIRED).device();
    assertNull(d.failures().get(0).restartedOn());
  }

  @Test
  void ofEqualRowsTheFarthestReachingActionAndTheFirstCauseCount() {
    DeviceHistory d =
        installed(100)
            .visit("d1", 200, FAILED, CLEANED)
            .visit("d1", 200, FAILED, REPLACED, Cause.ICE, null)
            .visit("d1", 200, FAILED, NONE, Cause.VANDALISM, null)
            .device();
    assertEquals(2, d.lives().size());
    assertEquals(Cause.ICE, d.failures().get(0).cause());
  }

  @Test
  void retiredIsKeptBesideTheWorst() {
    DeviceHistory d = installed(100).visit("d1", 200, RETIRED).visit("d1", 200, FAILED).device();
    assertEquals(1, d.failures().size());
    assertEquals(400, d.endedOn());
    assertTrue(d.failedAtEnd());
    DeviceHistory good =
        installed(100).visit("d1", 200, WORKING).visit("d1", 200, RETIRED).device();
    assertEquals(RetiredReason.OTHER, good.lives().get(0).retired());
    assertEquals(400, good.lives().get(0).leftOn());
  }
}
