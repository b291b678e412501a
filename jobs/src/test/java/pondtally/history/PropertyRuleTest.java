package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static pondtally.history.Rows.days;
import static pondtally.record.Condition.FAILED;
import static pondtally.record.Condition.WORKING;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Protected time of properties. */
class PropertyRuleTest {

  /** A device at s1 that works from day 100 to day 200, followed from day 100. */
  private static Rows worksTo200() {
    return new Rows().site("s1").install("d1", "s1", 100).visit("d1", 200, WORKING);
  }

  private static Stretches time(Rows rows) {
    return rows.history().properties().get(0).protectedTime();
  }

  @Test
  void itIsProtectedWhileADeviceAtItsSiteWorks() {
    assertEquals(days(100, 200), time(worksTo200().property("p1", "s1", null, null)));
    Rows failed = new Rows().site("s1").install("d1", "s1", 100).visit("d1", 140, FAILED);
    assertEquals(days(100, 120), time(failed.property("p1", "s1", null, null)));
  }

  @Test
  void itsSpanCutsTheTime() {
    assertEquals(days(150, 200), time(worksTo200().property("p1", "s1", 150, null)));
    assertEquals(days(100, 200), time(worksTo200().property("p1", "s1", 50, null)));
  }

  @Test
  void theLastDayCounts() {
    assertEquals(days(100, 160), time(worksTo200().property("p1", "s1", null, 159)));
    assertEquals(days(150, 151), time(worksTo200().property("p1", "s1", 150, 150)));
  }

  @Test
  void aSpanBeforeTheFirstEntryProtectsNothing() {
    assertEquals(Stretches.NONE, time(worksTo200().property("p1", "s1", 10, 99)));
    assertEquals(Stretches.NONE, time(worksTo200().property("p1", "s1", null, 50)));
  }

  @Test
  void twoDevicesInOneDayProtectItOnce() {
    Rows rows = worksTo200().install("d2", "s1", 150).visit("d2", 250, WORKING);
    assertEquals(days(100, 250), time(rows.property("p1", "s1", null, null)));
  }

  @Test
  void namedAtTwoSitesItCountsOnceEachSpanAtItsOwnSite() {
    Rows rows =
        worksTo200()
            .site("s2")
            .install("d2", "s2", 180)
            .visit("d2", 300, WORKING)
            .property("p1", "s2", null, 249)
            .property("p1", "s1", 120, null);
    ClusterHistory cluster = rows.history();
    assertEquals(1, cluster.properties().size());
    PropertyHistory property = cluster.properties().get(0);
    assertSame(rows.properties.get(0), property.property());
    assertEquals(List.of("s1", "s2"), property.siteIds());
    assertEquals(days(120, 250), property.protectedTime());
  }

  @Test
  void atASiteWithoutDevicesItIsNotProtected() {
    assertEquals(Stretches.NONE, time(new Rows().site("s1").property("p1", "s1", null, null)));
  }
}
