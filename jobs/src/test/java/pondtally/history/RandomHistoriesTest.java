package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pondtally.history.Rows.RULES;
import static pondtally.history.Rows.STRICT;

import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import pondtally.record.Condition;
import pondtally.record.Install;
import pondtally.record.Visit;

/** What must hold of every history, over thousands of invented clusters. */
class RandomHistoriesTest {

  private static final int CLUSTERS = 1000;

  private static void forEveryDevice(Consumer<DeviceHistory> check) {
    for (long seed = 0; seed < CLUSTERS; seed++) {
      Rows rows = RandomRows.of(seed);
      for (HistoryRules rules : List.of(RULES, STRICT)) {
        devices(rows.history(rules)).forEach(check);
      }
    }
  }

  private static List<DeviceHistory> devices(ClusterHistory cluster) {
    return cluster.sites().stream().flatMap(site -> site.devices().stream()).toList();
  }

  private static boolean covers(Stretches whole, Stretches part) {
    return part.minus(whole).isEmpty();
  }

  @Test
  void thereIsSomethingToCheckOfEveryKind() {
    int[] seen = new int[7];
    forEveryDevice(
        d -> {
          seen[0] += d.failures().isEmpty() ? 0 : 1;
          seen[1] += d.lives().size() > 1 ? 1 : 0;
          seen[2] += d.endedOn() == null ? 0 : 1;
          seen[3] += d.failedAtEnd() ? 1 : 0;
          seen[4] += d.lives().stream().anyMatch(life -> life.retired() != null) ? 1 : 0;
          seen[5] += d.entryOn() > 2 * d.install().installedOn() ? 1 : 0;
          seen[6] +=
              d.failures().stream().anyMatch(f -> f.foundOn() == f.knownGoodOn() + 2) ? 1 : 0;
        });
    for (int kind : seen) {
      assertTrue(kind > 100, Arrays.toString(seen));
    }
  }

  @Test
  void functionalTimeLiesWithinVerifiedTimeAndThatBetweenEntryAndTheLastVisit() {
    forEveryDevice(
        d -> {
          assertTrue(covers(d.verified(), d.functional()));
          int to = d.lastVisitOn() == null ? d.entryOn() : d.lastVisitOn();
          assertTrue(covers(Stretches.between(d.entryOn(), to), d.verified()));
          assertTrue(covers(d.exposure(), d.functional()));
        });
  }

  @Test
  void failuresFollowEachOtherAndAreCountedOnce() {
    forEveryDevice(
        d -> {
          int from = d.entryOn();
          for (Failure failure : d.failures()) {
            assertTrue(failure.knownGoodOn() >= from);
            assertTrue(failure.foundOn() > failure.knownGoodOn());
            assertTrue(failure.midpoint() > failure.knownGoodOn());
            assertTrue(failure.midpoint() < failure.foundOn());
            if (failure.restartedOn() != null) {
              assertTrue(failure.restartedOn() >= failure.foundOn());
            }
            from = failure.restartedOn() == null ? failure.foundOn() : failure.restartedOn();
          }
        });
  }

  @Test
  void noMoreFailuresThanDaysOnWhichTheDeviceWasFoundFailed() {
    for (long seed = 0; seed < CLUSTERS; seed++) {
      Rows rows = RandomRows.of(seed);
      for (DeviceHistory d : devices(rows.history())) {
        Set<Integer> days = new HashSet<>();
        for (Visit visit : rows.visits) {
          if (visit.deviceId().equals(d.deviceId()) && visit.condition() == Condition.FAILED) {
            days.add(visit.visitedOn());
          }
        }
        assertTrue(d.failures().size() <= days.size());
      }
    }
  }

  @Test
  void everyFailureHasTimeAtRisk() {
    forEveryDevice(
        d -> {
          for (Life life : d.lives()) {
            boolean failed = d.failures().stream().anyMatch(f -> f.life() == life.number());
            assertEquals(failed, life.failed());
            assertTrue(!failed || d.exposure(life).halfDays() > 0);
          }
        });
  }

  @Test
  void livesCoverDisjointTimesThatAddUp() {
    forEveryDevice(
        d -> {
          int from = Integer.MIN_VALUE;
          long halfDays = 0;
          for (Life life : d.lives()) {
            assertTrue(life.openedOn() >= from);
            assertTrue(life.entryOn() >= life.openedOn());
            assertTrue(life.leftOn() >= life.entryOn());
            assertFalse(life.failed() && life.retired() != null);
            from = life.leftOn();
            halfDays += d.exposure(life).halfDays();
          }
          assertEquals(d.exposure().halfDays(), halfDays);
        });
  }

  @Test
  void theOrderOfTheRowsDoesNotMatter() {
    for (long seed = 0; seed < CLUSTERS; seed++) {
      Rows rows = RandomRows.of(seed);
      ClusterHistory inOrder = rows.history();
      Random random = new Random(seed);
      for (List<?> list :
          List.of(rows.sites, rows.installs, rows.visits, rows.properties, rows.areas)) {
        Collections.shuffle(list, random);
      }
      ClusterHistory shuffled = rows.history();
      assertEquals(inOrder.sites(), shuffled.sites());
      assertEquals(inOrder.ponds(), shuffled.ponds());
      assertEquals(inOrder.properties(), shuffled.properties());
    }
  }

  @Test
  void aLaterTrackedFromNeverAddsTimeOrFailures() {
    for (long seed = 0; seed < CLUSTERS; seed++) {
      Rows rows = RandomRows.of(seed);
      List<DeviceHistory> whole = devices(rows.history());
      Random random = new Random(seed);
      rows.installs.replaceAll(row -> trackedFrom(row, row.installedOn() + random.nextInt(400)));
      List<DeviceHistory> part = devices(rows.history());
      for (int i = 0; i < whole.size(); i++) {
        assertTrue(part.get(i).verified().halfDays() <= whole.get(i).verified().halfDays());
        assertTrue(part.get(i).functional().halfDays() <= whole.get(i).functional().halfDays());
        assertTrue(part.get(i).exposure().halfDays() <= whole.get(i).exposure().halfDays());
        assertTrue(part.get(i).failures().size() <= whole.get(i).failures().size());
      }
    }
  }

  private static Install trackedFrom(Install row, int day) {
    int later = row.trackedFrom() == null ? day : Math.max(day, row.trackedFrom());
    return Designs.device(
        row.origin(),
        row.deviceId(),
        row.siteId(),
        row.installedOn(),
        later,
        row.retiredOn(),
        row.retiredReason());
  }

  @Test
  void aUnionIsNoShorterThanAnyOfItsDevicesAndNoLongerThanTheirSumOrSpan() {
    for (long seed = 0; seed < CLUSTERS; seed++) {
      for (SiteHistory site : RandomRows.of(seed).history().sites()) {
        long sum = 0;
        for (DeviceHistory d : site.devices()) {
          assertTrue(covers(site.functional(), d.functional()));
          assertTrue(covers(site.verified(), d.verified()));
          sum += d.functional().halfDays();
        }
        assertTrue(site.functional().halfDays() <= sum);
        assertTrue(covers(site.verified(), site.functional()));
        if (site.firstEntryOn() != null) {
          assertTrue(covers(Stretches.between(site.firstEntryOn(), 2000), site.functional()));
        }
      }
    }
  }

  @Test
  void aPondNeverCountsMoreThanItsLargestAreaOverItsFunctionalTime() {
    for (long seed = 0; seed < CLUSTERS; seed++) {
      ClusterHistory cluster = RandomRows.of(seed).history();
      for (PondHistory pond : cluster.ponds()) {
        if (pond.area() != null) {
          double largest = Collections.max(pond.area().measurements().values());
          double acreDays = pond.area().acreDays(pond.functional());
          assertTrue(acreDays <= largest * pond.functional().days() + 1e-9);
          assertTrue(acreDays >= 0);
          assertTrue(pond.area().acreDaysExtrapolated(pond.functional()) <= acreDays + 1e-9);
        }
      }
    }
  }

  @Test
  void anotherDeviceNeverLowersAPondsAcreDays() {
    for (long seed = 0; seed < CLUSTERS; seed++) {
      Rows rows = RandomRows.of(seed);
      List<PondHistory> before = rows.history().ponds();
      SiteHistory site = rows.history().sites().get(0);
      if (site.firstEntryOn() == null) {
        continue; // its first device would date the area before
      }
      int day = site.firstEntryOn() / 2;
      rows.install("extra", site.site().siteId(), day);
      rows.visit("extra", day + (int) (seed % 300), Condition.WORKING);
      List<PondHistory> after = rows.history().ponds();
      for (int i = 0; i < before.size(); i++) {
        assertTrue(acreDays(after.get(i)) >= acreDays(before.get(i)) - 1e-9);
      }
    }
  }

  private static double acreDays(PondHistory pond) {
    return pond.area() == null ? 0 : pond.area().acreDays(pond.functional());
  }

  @Test
  void protectedTimeLiesWithinTheFunctionalTimeOfThePropertysSites() {
    for (long seed = 0; seed < CLUSTERS; seed++) {
      ClusterHistory cluster = RandomRows.of(seed).history();
      for (PropertyHistory property : cluster.properties()) {
        List<Stretches> functional =
            cluster.sites().stream()
                .filter(site -> property.siteIds().contains(site.site().siteId()))
                .map(SiteHistory::functional)
                .toList();
        assertTrue(covers(Stretches.union(functional), property.protectedTime()));
      }
    }
  }
}
