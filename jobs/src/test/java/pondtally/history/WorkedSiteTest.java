package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static pondtally.record.Action.NONE;
import static pondtally.record.Action.REPAIRED;
import static pondtally.record.Condition.FAILED;
import static pondtally.record.Condition.WORKING;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.AreaMethod;
import pondtally.record.Cause;

/**
 * Two sites on one pond, worked by hand to the day and the acre; all invented. Day 0 is 11 April
 * 2023, the day device a1 came under observation.
 *
 * <pre>
 * day   -1  pond 8 acres (flooded: 12)
 *        0  a1 put in at site A
 *      100  a1 working, 6 acres
 *      170  b1 put in at site B
 *      200  a1 failed
 *      210  b1 working
 *      220  a1 failed, repaired
 *      260  b1 working
 *      265  1 January 2024
 *      300  survey of the pond, 10 acres
 *      400  a1 working
 *      500  data cut
 * </pre>
 */
class WorkedSiteTest {

  private static final int DAY_0 = (int) LocalDate.of(2023, 4, 11).toEpochDay();

  private static final ClusterHistory CLUSTER =
      new Rows()
          .site("A", "P", 8.0, 12.0)
          .site("B", "P", null, null)
          .install("a1", "A", DAY_0)
          .install("b1", "B", DAY_0 + 170)
          .visit("a1", DAY_0 + 100, WORKING, NONE, null, 6.0)
          .visit("a1", DAY_0 + 200, FAILED, NONE, Cause.FENCE_DAMMED, null)
          .visit("a1", DAY_0 + 220, FAILED, REPAIRED, Cause.UNKNOWN, null)
          .visit("a1", DAY_0 + 400, WORKING)
          .visit("b1", DAY_0 + 210, WORKING)
          .visit("b1", DAY_0 + 260, WORKING)
          .area(null, "P", DAY_0 + 300, 10, AreaMethod.SURVEY)
          .property("road", "A", null, DAY_0 + 249)
          .property("road", "B", null, null)
          .property("home", "A", DAY_0 + 100, null)
          .history(
              new HistoryRules(FailureDefinition.FAILED, FailureDating.INTERVAL, DAY_0 + 500, 180));

  private static final DeviceHistory A1 = CLUSTER.sites().get(0).devices().get(0);
  private static final DeviceHistory B1 = CLUSTER.sites().get(1).devices().get(0);
  private static final PondHistory POND = CLUSTER.ponds().get(0);

  private static int at(int day) {
    return 2 * (DAY_0 + day);
  }

  @Test
  void theFailureHappenedBetweenDay100AndDay200AndIsDatedDay150() {
    Failure failure = new Failure(0, at(100), at(200), at(220), Cause.FENCE_DAMMED);
    assertEquals(List.of(failure), A1.failures());
    assertEquals(at(150), failure.midpoint());
    assertEquals(List.of(), B1.failures());
  }

  @Test
  void a1Worked330DaysOf400AndB1All90() {
    // a1 was down from day 150 to day 220: 70 days.
    assertEquals(400, A1.verified().days());
    assertEquals(330, A1.functional().days());
    assertEquals(90, B1.verified().days());
    assertEquals(90, B1.functional().days());
  }

  @Test
  void atTheCutA1WorksAndSoDoesB1() {
    // Last seen 100 and 240 days before the cut; unverified only beyond 360.
    assertEquals(DeviceState.WORKING, A1.state());
    assertEquals(DeviceState.WORKING, B1.state());
    assertEquals(at(400), A1.lastKnownGoodOn());
    assertNull(A1.endedOn());
  }

  @Test
  void thePondWorked380Days() {
    // a1 to day 150; nothing for 20 days; b1 from day 170, a1 again from day 220 to day 400.
    Stretches expected =
        Stretches.of(List.of(new Stretch(at(0), at(150)), new Stretch(at(170), at(400))));
    assertEquals(expected, POND.functional());
    assertEquals(380, POND.functional().days());
  }

  @Test
  void itsAcreDaysAddUp() {
    // Day 0: 8 acres less 2/101 (one of the 101 days from 8 to 6 acres has passed).
    // Days 0 to 100: mean (8 - 2/101 + 6)/2 = 7 - 1/101 acres → 700 - 100/101 acre-days.
    // Days 100 to 150: 6 to 7 acres, mean 6.5 → 325.
    // Days 170 to 300: 7.4 to 10 acres, mean 8.7 → 1,131.
    // Days 300 to 400: 10 acres, past the last measurement → 1,000, extrapolated.
    double acreDays = 700 - 100 / 101.0 + 325 + 1131 + 1000;
    assertEquals(acreDays, POND.area().acreDays(POND.functional()), 1e-9);
    assertEquals(1000, POND.area().acreDaysExtrapolated(POND.functional()), 1e-9);
    assertEquals(10, POND.area().acresAt(at(500)));
  }

  @Test
  void loweringTheWaterLost6Acres() {
    assertEquals(6, POND.acresLostToLowering()); // 12 flooded, 6 at the first visit
    assertEquals(8, POND.acresBefore());
  }

  @Test
  void theRoadWasProtected240DaysAndTheHome230() {
    // Road: at A days 0 to 150 and 220 to 250, at B days 170 to 260; together 150 + 90.
    // Home: at A days 100 to 150 and 220 to 400; 50 + 180.
    PropertyHistory home = CLUSTER.properties().get(0);
    PropertyHistory road = CLUSTER.properties().get(1);
    assertEquals("home", home.property().propertyId());
    assertEquals(230, home.protectedTime().days());
    assertEquals(240, road.protectedTime().days());
    assertEquals(List.of("A", "B"), road.siteIds());
  }

  @Test
  void siteAWorked195DaysOf2023And135Of2024() {
    // 2023 ends on day 265: 150 + 45 days of 365; of 2024, 135 days of 366.
    Stretches functional = CLUSTER.sites().get(0).functional();
    assertEquals(195 / 365.0, new CalendarYear(2023).share(functional), 1e-15);
    assertEquals(135 / 366.0, new CalendarYear(2024).share(functional), 1e-15);
    assertEquals(265 / 365.0, new CalendarYear(2023).shareAfter(at(0)), 1e-15);
  }

  @Test
  void oneFailureOver420DaysAtRisk() {
    // a1: 150 + 180 days, b1: 90 days.
    assertEquals(420, A1.exposure().days() + B1.exposure().days());
  }
}
