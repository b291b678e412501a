package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static pondtally.history.Rows.days;
import static pondtally.history.Rows.installed;
import static pondtally.history.Rows.retired;
import static pondtally.history.Rows.tracked;
import static pondtally.record.Action.REPAIRED;
import static pondtally.record.Action.REPLACED;
import static pondtally.record.Condition.FAILED;
import static pondtally.record.Condition.RETIRED;
import static pondtally.record.Condition.WORKING;

import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.Cause;
import pondtally.record.RetiredReason;

/** How a device's records are cut into service lives, tested on whole histories. */
class ServiceRuleTest {

  private static final RetiredReason REDESIGN = RetiredReason.REDESIGN;

  @Test
  void replacementOfAFailedDeviceOpensANewLifeThatDay() {
    DeviceHistory d =
        installed(100).visit("d1", 140, FAILED, REPLACED).visit("d1", 200, FAILED).device();
    assertEquals(2, d.lives().size());
    assertEquals(280, d.lives().get(1).openedOn());
    assertEquals(1, d.lives().get(1).number());
    assertEquals(List.of(0, 1), d.failures().stream().map(Failure::life).toList());
    assertEquals(new Failure(1, 280, 400, null, Cause.UNKNOWN), d.lives().get(1).firstFailure());
    assertEquals(120, d.lives().get(1).foundAge());
  }

  @Test
  void replacementOfADeviceNotFailedCensorsItAndOpensTheNext() {
    DeviceHistory d =
        installed(100).visit("d1", 140, WORKING, REPLACED).visit("d1", 200, WORKING).device();
    assertEquals(2, d.lives().size());
    assertFalse(d.lives().get(0).failed());
    assertEquals(280, d.lives().get(0).leftOn());
    assertNull(d.lives().get(0).retired());
    assertEquals(0, d.lives().get(1).entryAge());
    assertEquals(400, d.lives().get(1).leftOn());
    assertEquals(days(100, 200), d.functional());
  }

  @Test
  void repairContinuesTheLife() {
    DeviceHistory d =
        installed(100).visit("d1", 140, FAILED, REPAIRED).visit("d1", 200, WORKING).device();
    assertEquals(1, d.lives().size());
    assertEquals(400, d.lives().get(0).leftOn());
  }

  @Test
  void theNewLifeOfALastVisitHasNoFollowUpYet() {
    DeviceHistory d = installed(100).visit("d1", 900, FAILED, REPLACED).device();
    assertEquals(2, d.lives().size());
    assertFalse(d.lives().get(1).followed());
    assertEquals(DeviceState.WORKING, d.state());
    assertEquals(1800, d.lastKnownGoodOn());
  }

  @Test
  void withoutANewInstallRowTheNewLifeHasTheOldDesign() {
    DeviceHistory d = installed(100).visit("d1", 140, FAILED, REPLACED).device();
    assertSame(d.install(), d.lives().get(1).design());
  }

  @Test
  void anInstallRowOnOrAfterTheReplacementIsTheNextLifesDesign() {
    for (int dated : new int[] {140, 145}) {
      Rows rows = installed(100).visit("d1", 140, FAILED, REPLACED).install("d1", "s1", dated);
      DeviceHistory d = rows.device();
      assertEquals(2, d.lives().size());
      assertSame(rows.installs.get(0), d.lives().get(0).design());
      assertSame(rows.installs.get(1), d.lives().get(1).design());
      assertSame(rows.installs.get(0), d.install());
      assertEquals(280, d.lives().get(1).openedOn()); // the visit that replaced it
    }
  }

  @Test
  void anInstallRowBelongsToTheLastReplacementBeforeIt() {
    Rows rows =
        installed(100)
            .visit("d1", 140, FAILED, REPLACED)
            .visit("d1", 240, FAILED, REPLACED)
            .install("d1", "s1", 240);
    DeviceHistory d = rows.device();
    assertSame(rows.installs.get(0), d.lives().get(1).design());
    assertSame(rows.installs.get(1), d.lives().get(2).design());
  }

  @Test
  void anInstallRowOnTheDayOfALaterRetirementIsNotTheEarlierReplacementsDesign() {
    Rows rows =
        retired(100, 300, REDESIGN).visit("d1", 140, FAILED, REPLACED).install("d1", "s1", 300);
    DeviceHistory d = rows.device();
    assertEquals(3, d.lives().size());
    assertSame(rows.installs.get(0), d.lives().get(1).design());
    assertEquals(REDESIGN, d.lives().get(1).retired());
    assertSame(rows.installs.get(1), d.lives().get(2).design());
  }

  @Test
  void anInstallRowAfterRetirementPutsTheDeviceInAgainOnItsOwnDate() {
    Rows rows =
        installed(100).visit("d1", 200, RETIRED).install("d1", "s1", 300).visit("d1", 700, WORKING);
    DeviceHistory d = rows.device();
    assertEquals(2, d.lives().size());
    assertEquals(RetiredReason.OTHER, d.lives().get(0).retired());
    assertEquals(600, d.lives().get(1).openedOn());
    assertSame(rows.installs.get(1), d.lives().get(1).design());
    assertNull(d.endedOn());
    assertEquals(DeviceState.WORKING, d.state());
    assertEquals(
        Stretches.of(List.of(new Stretch(200, 400), new Stretch(600, 1400))), d.verified());
  }

  @Test
  void putInAgainOnTheDayOfItsRetirementItHasTwoLives() {
    Rows rows = retired(100, 200, REDESIGN).install("d1", "s1", 200).visit("d1", 250, FAILED);
    DeviceHistory d = rows.device();
    assertEquals(2, d.lives().size());
    assertEquals(REDESIGN, d.lives().get(0).retired());
    assertEquals(400, d.lives().get(0).leftOn());
    assertEquals(400, d.lives().get(1).openedOn());
    assertEquals(1, d.failures().size());
    assertEquals(1, d.failures().get(0).life());
  }

  @Test
  void aFailureBeforeTheEndDoesNotDarkenTheNextInstallation() {
    DeviceHistory d =
        installed(100)
            .visit("d1", 150, FAILED)
            .visit("d1", 200, RETIRED)
            .install("d1", "s1", 300)
            .visit("d1", 400, WORKING)
            .device();
    assertEquals(
        Stretches.of(List.of(new Stretch(200, 250), new Stretch(600, 800))), d.functional());
  }

  @Test
  void putInAgainAndNotVisitedSinceItIsUnverified() {
    DeviceHistory d = installed(100).visit("d1", 940, RETIRED).install("d1", "s1", 950).device();
    assertEquals(DeviceState.UNVERIFIED, d.state());
    assertEquals(1880, d.lastVisitOn());
    assertEquals(1900, d.lastKnownGoodOn());
  }

  @Test
  void whatWasSeenBetweenAnEndAndTheNextInstallationBelongsToNoLife() {
    DeviceHistory d =
        installed(100)
            .visit("d1", 200, RETIRED)
            .visit("d1", 250, FAILED)
            .install("d1", "s1", 300)
            .visit("d1", 400, WORKING)
            .device();
    assertEquals(List.of(), d.failures());
  }

  @Test
  void anEndOnTheDayOfAReplacementEndsTheDevice() {
    DeviceHistory d = retired(100, 200, REDESIGN).visit("d1", 200, WORKING, REPLACED).device();
    assertEquals(1, d.lives().size());
    assertEquals(400, d.endedOn());
    assertEquals(REDESIGN, d.lives().get(0).retired());
  }

  @Test
  void replacedOnTheDayOfEntryTheLivesDoNotOverlap() {
    DeviceHistory d =
        installed(100).visit("d1", 100, FAILED, REPLACED).visit("d1", 150, WORKING).device();
    assertEquals(202, d.lives().get(1).openedOn());
    assertEquals(49.5, d.exposure().days());
  }

  @Test
  void trackedFromOfTheFirstRowHoldsForLaterLivesAndALaterRowMaySetItsOwn() {
    Rows rows =
        tracked(100, 350)
            .visit("d1", 200, FAILED, REPLACED)
            .install("d1", "s1", 200)
            .visit("d1", 400, WORKING);
    assertEquals(700, rows.device().entryOn());
    Rows own =
        installed(100)
            .visit("d1", 200, FAILED, REPLACED)
            .install("d1", "s1", 200, 350, null, null)
            .visit("d1", 400, WORKING);
    assertEquals(700, own.device().lives().get(1).entryOn());
    assertEquals(400, own.device().lives().get(1).openedOn());
  }
}
