package pondtally.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pondtally.record.Action;
import pondtally.record.ClusterRecords;
import pondtally.record.Condition;
import pondtally.record.Install;
import pondtally.record.Origin;
import pondtally.record.Sourced;
import pondtally.record.Visit;

/** Whatever the rows, each ends in one place, and in the same one in whatever order they come. */
class BalanceTest {

  private static final CheckSettings SETTINGS =
      new CheckSettings(RandomRows.FIRST_DAY + 30, RandomRows.FIRST_DAY + 35);

  @Test
  void everyRowIsKeptOrHasOneVerdict() {
    Set<RowFate> seen = new TreeSet<>();
    Set<String> rules = new TreeSet<>();
    for (int seed = 0; seed < 1000; seed++) {
      List<Sourced> rows = RandomRows.of(new Random(seed));
      CheckedCluster checked = ClusterChecks.check(TestCluster.raw(rows), SETTINGS);
      assertBalanced(rows, checked);
      checked.verdicts().forEach(v -> seen.add(v.fate()));
      checked.findings().forEach(f -> rules.add(f.rule()));
    }
    assertEquals(Set.of(RowFate.CHANGED, RowFate.SET_ASIDE, RowFate.DUPLICATE), seen);
    Set<String> all =
        Stream.of(CheckRule.values()).map(CheckRule::code).collect(Collectors.toSet());
    all.remove(CheckRule.MANY_ROWS_SET_ASIDE.code());
    all.remove(CheckRule.LIKELY_DUPLICATE.code());
    assertEquals(all, rules, "rules that the random rows reach");
  }

  private static void assertBalanced(List<Sourced> rows, CheckedCluster checked) {
    List<Origin> ended = new ArrayList<>(origins(checked.kept()));
    Set<Origin> changed = new TreeSet<>();
    for (Verdict verdict : checked.verdicts()) {
      if (verdict.fate() == RowFate.CHANGED) {
        changed.add(verdict.origin());
      } else {
        ended.add(verdict.origin());
      }
    }
    assertEquals(rows.stream().map(Sourced::origin).sorted().toList(), sorted(ended));
    assertTrue(origins(checked.kept()).containsAll(changed), "changed rows are kept");
    Set<Origin> reported =
        checked.findings().stream().map(Finding::origin).collect(Collectors.toSet());
    checked.verdicts().forEach(v -> assertTrue(reported.contains(v.origin()), "a reason for " + v));
  }

  @Test
  void theOrderOfTheListsDoesNotMatter() {
    for (int seed = 0; seed < 1000; seed++) {
      Random random = new Random(seed);
      List<Sourced> rows = RandomRows.of(random);
      CheckedCluster inOrder = ClusterChecks.check(TestCluster.raw(rows), SETTINGS);
      List<Sourced> shuffled = new ArrayList<>(rows);
      Collections.shuffle(shuffled, random);
      assertEquals(inOrder, ClusterChecks.check(TestCluster.raw(shuffled), SETTINGS));
    }
  }

  /** No install or visit that is kept leans on one that was taken out. */
  @Test
  void keptDevicesPassAgain() {
    for (int seed = 0; seed < 1000; seed++) {
      List<Sourced> rows = RandomRows.of(new Random(seed));
      ClusterRecords kept = ClusterChecks.check(TestCluster.raw(rows), SETTINGS).kept();
      List<Verdict> again =
          ClusterChecks.check(kept, SETTINGS).verdicts().stream()
              .filter(v -> v.table().equals("installs") || v.table().equals("revisits"))
              .toList();
      assertEquals(List.of(), again, "seed " + seed);
    }
  }

  /** What histories may rely on, stated without the rules that bring it about. */
  @Test
  void keptDevicesAreInOrder() {
    for (int seed = 0; seed < 1000; seed++) {
      List<Sourced> rows = RandomRows.of(new Random(seed));
      ClusterRecords kept = ClusterChecks.check(TestCluster.raw(rows), SETTINGS).kept();
      kept.visits().forEach(visit -> assertVisitFits(kept, visit));
      for (Install install : kept.installs()) {
        assertTrue(kept.sites().stream().anyMatch(s -> s.siteId().equals(install.siteId())));
        kept.installs().forEach(other -> assertLivesApart(kept, install, other));
      }
    }
  }

  private static void assertVisitFits(ClusterRecords kept, Visit visit) {
    assertTrue(visit.visitedOn() <= SETTINGS.asOf());
    assertTrue(
        kept.installs().stream()
            .anyMatch(
                i ->
                    i.deviceId().equals(visit.deviceId()) && i.installedOn() <= visit.visitedOn()));
    long sameDay =
        kept.visits().stream()
            .filter(v -> v.deviceId().equals(visit.deviceId()))
            .filter(v -> v.visitedOn() == visit.visitedOn())
            .filter(
                v ->
                    (v.condition() == Condition.RETIRED)
                        == (visit.condition() == Condition.RETIRED))
            .count();
    assertEquals(1, sameDay);
  }

  /** Of two install rows of a device, the later one follows an end or a replacement. */
  private static void assertLivesApart(ClusterRecords kept, Install first, Install second) {
    if (first.equals(second)
        || !first.deviceId().equals(second.deviceId())
        || first.installedOn() > second.installedOn()) {
      return;
    }
    assertEquals(first.siteId(), second.siteId());
    Stream<Integer> ends =
        Stream.concat(
            kept.installs().stream()
                .filter(i -> i.deviceId().equals(first.deviceId()))
                .map(Install::retiredOn),
            kept.visits().stream()
                .filter(v -> v.deviceId().equals(first.deviceId()))
                .filter(
                    v ->
                        v.condition() == Condition.RETIRED
                            || v.action() == Action.REMOVED
                            || v.action() == Action.REPLACED)
                .map(Visit::visitedOn));
    assertTrue(
        ends.anyMatch(
            day -> day != null && first.installedOn() < day && day <= second.installedOn()));
  }

  private static List<Origin> origins(ClusterRecords kept) {
    return Stream.of(
            kept.sites(),
            kept.installs(),
            kept.materials(),
            kept.visits(),
            kept.removals(),
            kept.properties(),
            kept.areas(),
            kept.requests())
        .flatMap(List::stream)
        .map(Sourced::origin)
        .toList();
  }

  private static List<Origin> sorted(List<Origin> origins) {
    return origins.stream().sorted().toList();
  }
}
