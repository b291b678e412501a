package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static pondtally.history.Rows.days;
import static pondtally.record.Action.NONE;
import static pondtally.record.Condition.FAILED;
import static pondtally.record.Condition.RETIRED;
import static pondtally.record.Condition.WORKING;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pondtally.record.AreaMethod;
import pondtally.record.RetiredReason;

/** Ponds: their measurements, their abandonment, their devices' union. */
class PondRuleTest {

  private static PondHistory pond(Rows rows) {
    return rows.history().ponds().get(0);
  }

  private static Rows measured(double acresBefore, Double flooded) {
    return new Rows().site("s1", "p1", acresBefore, flooded).install("d1", "s1", 100);
  }

  private static Rows visited(Rows rows, int day, Double acres) {
    return rows.visit("d1", day, WORKING, NONE, null, acres);
  }

  @Test
  void theAreaBeforeIsDatedTheDayBeforeTheSitesFirstEntry() {
    assertEquals(Map.of(198, 8.0), pond(measured(8, null)).area().measurements());
    Rows tracked = new Rows().site("s1", null, 8.0, null).install("d1", "s1", 100, 250, null, null);
    assertEquals(Map.of(498, 8.0), pond(tracked).area().measurements());
  }

  @Test
  void revisitsSurveysAndTheAreaBeforeMakeOneLine() {
    Rows rows =
        visited(measured(8, null), 150, 6.0)
            .area("s1", null, 200, 7, AreaMethod.IMAGERY)
            .area(null, "p1", 250, 9, null);
    assertEquals(Map.of(198, 8.0, 300, 6.0, 400, 7.0, 500, 9.0), pond(rows).area().measurements());
  }

  @Test
  void onOneDaySurveyCountsBeforeWalkedBeforeImageryBeforeEstimate() {
    Rows rows = measured(8, null);
    AreaMethod[] worstFirst = {
      AreaMethod.ESTIMATE, AreaMethod.IMAGERY, AreaMethod.WALKED, AreaMethod.SURVEY
    };
    for (int i = 0; i < worstFirst.length; i++) {
      rows.area("s1", null, 150, i + 1, worstFirst[i]);
      assertEquals(i + 1, pond(rows).area().acresAt(300), worstFirst[i].code());
    }
  }

  @Test
  void onOneDayARevisitsAreaCountsAsWalked() {
    Rows rows = visited(measured(8, null), 150, 6.0);
    assertEquals(6, pond(rows.area("s1", null, 150, 5, AreaMethod.IMAGERY)).area().acresAt(300));
    assertEquals(4, pond(rows.area("s1", null, 150, 4, AreaMethod.SURVEY)).area().acresAt(300));
  }

  @Test
  void ofEqualMethodsOnOneDayTheFirstInFileOrderCounts() {
    Rows rows =
        measured(8, null)
            .area("s1", null, 150, 6, AreaMethod.SURVEY)
            .area("s1", null, 150, 7, AreaMethod.SURVEY);
    assertEquals(6, pond(rows).area().acresAt(300));
  }

  @Test
  void aPondNeverMeasuredHasNoAreaRatherThanZero() {
    PondHistory pond =
        pond(new Rows().site("s1").install("d1", "s1", 100).visit("d1", 200, WORKING));
    assertNull(pond.area());
    assertNull(pond.acresBefore());
    assertNull(pond.acresLostToLowering());
  }

  @Test
  void loweringLosesTheFloodedExtentLessTheFirstAreaAfterEntry() {
    Rows rows = visited(visited(measured(8, 12.0), 150, 6.5), 200, 9.0);
    assertEquals(5.5, pond(rows).acresLostToLowering());
    assertEquals(8, pond(rows).acresBefore());
  }

  @Test
  void anAreaOfTheDayOfEntryIsNotYetAfterIt() {
    Rows rows = visited(visited(measured(8, 12.0), 100, 11.0), 150, 6.5);
    assertEquals(5.5, pond(rows).acresLostToLowering());
  }

  @Test
  void withoutBothAreasTheLossIsUnknown() {
    assertNull(pond(measured(8, 12.0)).acresLostToLowering());
    assertNull(pond(visited(measured(8, null), 150, 6.5)).acresLostToLowering());
  }

  @Test
  void anAbandonedDamHasNoAreaFromThatDay() {
    Rows rows =
        new Rows()
            .site("s1", null, 8.0, null)
            .install("d1", "s1", 100, null, 300, RetiredReason.DAM_ABANDONED)
            .visit("d1", 200, WORKING);
    assertEquals(8, pond(rows).area().acresAt(599));
    assertEquals(0, pond(rows).area().acresAt(600));
  }

  @Test
  void anAreaMeasuredAfterAbandonmentIsNoEffectOfLowering() {
    Rows rows =
        new Rows()
            .site("s1", null, 8.0, 12.0)
            .install("d1", "s1", 100, null, 300, RetiredReason.DAM_ABANDONED)
            .area("s1", null, 350, 1, AreaMethod.SURVEY);
    assertNull(pond(rows).acresLostToLowering());
  }

  @Test
  void anotherReasonForRetirementLeavesTheArea() {
    Rows rows =
        new Rows()
            .site("s1", null, 8.0, null)
            .install("d1", "s1", 100, null, 300, RetiredReason.OWNER_REMOVED);
    assertEquals(8, pond(rows).area().acresAt(700));
  }

  @Test
  void aRetiredVisitAbandonsTheDamOnItsDay() {
    Rows rows =
        new Rows()
            .site("s1", null, 8.0, null)
            .install("d1", "s1", 100, null, null, RetiredReason.DAM_ABANDONED)
            .visit("d1", 250, RETIRED);
    assertEquals(0, pond(rows).area().acresAt(500));
  }

  @Test
  void aDamThatAnotherDeviceWasStillVisitedAtIsNotAbandoned() {
    Rows rows =
        new Rows()
            .site("s1", null, 8.0, null)
            .install("d1", "s1", 100, null, 300, RetiredReason.DAM_ABANDONED)
            .install("d2", "s1", 120);
    assertEquals(0, pond(rows).area().acresAt(700));
    assertEquals(8, pond(rows.visit("d2", 350, WORKING)).area().acresAt(700));
  }

  @Test
  void aDamThatAnotherDeviceWasPutInAtLaterIsNotAbandoned() {
    Rows rows =
        new Rows()
            .site("s1", null, 8.0, null)
            .install("d1", "s1", 100, null, 300, RetiredReason.DAM_ABANDONED)
            .install("d2", "s1", 400);
    assertEquals(8, pond(rows).area().acresAt(900));
  }

  @Test
  void twoSitesOnOnePondAreOnePondWithTheUnionOfTheirDevices() {
    Rows rows =
        new Rows()
            .site("s2", "p1", 7.0, null)
            .site("s1", "p1", 8.0, 12.0)
            .install("d1", "s1", 150)
            .install("d2", "s2", 100)
            .visit("d1", 250, WORKING)
            .visit("d2", 200, FAILED);
    ClusterHistory cluster = rows.history();
    assertEquals(1, cluster.ponds().size());
    PondHistory pond = cluster.ponds().get(0);
    assertEquals(List.of("s1", "s2"), pond.siteIds());
    assertEquals(200, pond.firstEntryOn());
    assertEquals(days(100, 250), pond.functional()); // d2 to its midpoint, day 150, then d1
    assertEquals(7, pond.acresBefore()); // the site entered first
    assertEquals(Map.of(198, 7.0, 298, 8.0), pond.area().measurements());
    assertEquals(4, pond.acresLostToLowering()); // 12 less the 8 of day 149
  }

  @Test
  void withoutDevicesAPondHasItsAreaBeforeAndNoTime() {
    PondHistory pond = pond(new Rows().site("s1", null, 8.0, 12.0));
    assertEquals(8, pond.acresBefore());
    assertEquals(8, pond.area().acresAt(0));
    assertNull(pond.firstEntryOn());
    assertNull(pond.acresLostToLowering());
    assertEquals(Stretches.NONE, pond.functional());
  }
}
