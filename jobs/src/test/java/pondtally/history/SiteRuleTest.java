package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static pondtally.history.Rows.days;
import static pondtally.record.Condition.FAILED;
import static pondtally.record.Condition.WORKING;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A site and its devices. */
class SiteRuleTest {

  @Test
  void itIsFunctionalWhileAnyOfItsDevicesIsAndNeverCountsADayTwice() {
    SiteHistory site =
        new Rows()
            .site("s1")
            .install("d1", "s1", 100)
            .install("d2", "s1", 120)
            .visit("d1", 140, FAILED)
            .visit("d2", 200, WORKING)
            .history()
            .sites()
            .get(0);
    assertEquals(days(100, 200), site.functional()); // d1 to day 120, d2 from day 120
    assertEquals(days(100, 200), site.verified());
  }

  @Test
  void aGapBetweenItsDevicesStaysAGap() {
    SiteHistory site =
        new Rows()
            .site("s1")
            .install("d1", "s1", 100)
            .install("d2", "s1", 180)
            .visit("d1", 140, WORKING)
            .visit("d2", 200, WORKING)
            .history()
            .sites()
            .get(0);
    assertEquals(60, site.functional().days());
    assertEquals(60, site.verified().days());
  }

  @Test
  void itsDevicesAreInOrderOfInstallationAndItsEntryIsTheEarliest() {
    SiteHistory site =
        new Rows()
            .site("s1")
            .install("d2", "s1", 150)
            .install("d9", "s1", 100, 170, null, null)
            .install("d1", "s1", 150)
            .history()
            .sites()
            .get(0);
    assertEquals(
        List.of("d9", "d1", "d2"), site.devices().stream().map(DeviceHistory::deviceId).toList());
    assertEquals(300, site.firstEntryOn());
  }

  @Test
  void withoutDevicesItHasNoEntryAndNoTime() {
    SiteHistory site = new Rows().site("s1").history().sites().get(0);
    assertNull(site.firstEntryOn());
    assertEquals(Stretches.NONE, site.functional());
    assertEquals(List.of(), site.devices());
  }

  @Test
  void sitesComeById() {
    ClusterHistory cluster = new Rows().site("s2").site("s1").site("s10").history();
    assertEquals(
        List.of("s1", "s10", "s2"),
        cluster.sites().stream().map(site -> site.site().siteId()).toList());
  }

  @Test
  void withoutAPondIdItsPondIsItsOwn() {
    ClusterHistory cluster = new Rows().site("s1").site("s2", "p9", null, null).history();
    assertEquals("s1", cluster.sites().get(0).pondId());
    assertEquals("p9", cluster.sites().get(1).pondId());
  }
}
