package pondtally.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The invented region is of the size it should be, and its records hold no fault but the planted
 * ones.
 */
class SampleWorldTest {
  private final SampleProgram program = new SampleProgram();
  private final World world = program.world();

  @Test
  void hasTheSizeOfARegionalProgram() {
    assertEquals(182, world.sites().size());
    assertEquals(300, world.histories().size());
    assertEquals(8, world.sites().stream().map(Site::watershed).distinct().count());
    between(2400, 2700, visits(visit -> true));
    between(100, 160, visits(visit -> visit.condition().equals("failed")));
    between(8, 16, visits(visit -> visit.condition().equals("reduced")));
    between(
        12,
        30,
        world.histories().stream()
            .filter(history -> history.device().trackedFrom() != null)
            .count());
  }

  @Test
  void liesInTheOceanUnderAnUnusedRegion() {
    rows(Table.SITES)
        .filter(row -> !row.isTouched())
        .forEach(
            row -> {
              assertTrue(row.text("latitude").startsWith("44."), row.values().toString());
              assertTrue(row.text("longitude").startsWith("-37."));
              assertTrue(row.text("watershed").matches("99[0-9]{10}"));
            });
  }

  @Test
  void hasEveryEndAndEveryCause() {
    Set<String> causes = new HashSet<>(SampleTruth.PIPE_CAUSES.keySet());
    causes.removeAll(rows(Table.REVISITS).map(row -> row.text("cause")).toList());
    assertTrue(causes.size() <= 2, "never seen: " + causes);
    Set<String> reasons =
        new HashSet<>(rows(Table.INSTALLS).map(row -> row.text("retired_reason")).toList());
    assertTrue(reasons.containsAll(Set.of("dam-abandoned", "owner-removed")), reasons.toString());
    assertTrue(visits(visit -> visit.action().equals("replaced")) > 10);
    assertTrue(visits(visit -> visit.design() != null) >= 5);
    assertTrue(visits(visit -> visit.action().equals("removed")) >= 3);
  }

  @Test
  void hasPermitsThatLapsedAndSitesWithoutDamage() {
    long lapsed =
        rows(Table.SITES)
            .filter(
                row ->
                    row.has("permit_until") && !row.day("permit_until").isAfter(SampleTruth.AS_OF))
            .count();
    assertTrue(lapsed >= 10, "lapsed: " + lapsed);
    Set<String> damaged = new HashSet<>();
    rows(Table.SITES)
        .filter(r -> r.has("damage_cost_per_year_before_usd"))
        .forEach(r -> damaged.add(r.text("site_id")));
    rows(Table.PROPERTIES)
        .filter(r -> r.has("damage_per_year_usd"))
        .forEach(r -> damaged.add(r.text("site_id")));
    long without =
        world.sites().stream()
            .filter(Site::hasDevice)
            .filter(site -> !damaged.contains(site.id()))
            .count();
    between(5, 40, without);
  }

  @Test
  void causeSharesAddUpToOne() {
    for (SampleTruth.Pipe pipe : SampleTruth.Pipe.values()) {
      double sum =
          SampleTruth.causes(pipe).values().stream().mapToDouble(Double::doubleValue).sum();
      assertEquals(1.0, sum, 1e-9, pipe.name());
    }
  }

  /**
   * Failures seen against the hazard summed over the time watched (a martingale, whatever the
   * visits): a check of the generator itself. Within two standard errors of a Poisson count, by
   * pipe type and by watershed.
   */
  @Test
  void failuresAgreeWithTheTrueHazards() {
    Map<String, double[]> seenAndExpected = new TreeMap<>();
    for (History history : world.histories()) {
      addLives(history, seenAndExpected);
    }
    assertEquals(14, seenAndExpected.size());
    seenAndExpected.forEach(
        (group, sums) ->
            assertEquals(sums[1], sums[0], 2 * Math.sqrt(sums[1]), group + ": seen and expected"));
  }

  private static void addLives(History history, Map<String, double[]> sums) {
    Device device = history.device();
    for (int i = 0; i < history.lives().size(); i++) {
      History.Life life = history.lives().get(i);
      LocalDate until =
          i + 1 < history.lives().size()
              ? history.lives().get(i + 1).startedOn()
              : lastVisit(history);
      double entryAge = i == 0 ? ChronoUnit.DAYS.between(device.installedOn(), device.entry()) : 0;
      double watched =
          Math.max(entryAge, (double) ChronoUnit.DAYS.between(life.startedOn(), until));
      boolean failed = life.failureAgeDays() <= watched;
      double left = Math.min(life.failureAgeDays(), watched);
      double expected =
          device.hazard() * (hazard(life.pipe(), left) - hazard(life.pipe(), entryAge));
      for (String group : List.of(life.pipe().name(), device.site().watershed().code())) {
        double[] sum = sums.computeIfAbsent(group, g -> new double[2]);
        sum[0] += failed ? 1 : 0;
        sum[1] += expected;
      }
    }
  }

  /**
   * Cumulative Weibull hazard at that age, for a device to specification in an ordinary watershed.
   */
  private static double hazard(SampleTruth.Pipe pipe, double ageDays) {
    return Math.pow(ageDays / pipe.scaleDays, pipe.shape);
  }

  private static LocalDate lastVisit(History history) {
    List<Visit> visits = history.visits();
    return visits.isEmpty() ? history.device().entry() : visits.get(visits.size() - 1).on();
  }

  @Test
  void someLateFollowedDevicesWereVisitedBefore() {
    long before =
        world.histories().stream()
            .filter(
                history ->
                    history.visits().stream()
                        .anyMatch(v -> v.on().isBefore(history.device().entry())))
            .count();
    assertTrue(before >= 3, "visited before entry: " + before);
  }

  @Test
  void countedRowsReferToWhatExists() {
    Set<String> sites =
        new HashSet<>(counted(Table.SITES).map(row -> row.text("site_id")).toList());
    Set<String> devices =
        new HashSet<>(counted(Table.INSTALLS).map(row -> row.text("device_id")).toList());
    for (Table table : List.of(Table.INSTALLS, Table.REMOVALS, Table.PROPERTIES, Table.REQUESTS)) {
      counted(table)
          .forEach(row -> assertTrue(sites.contains(row.text("site_id")), row.values().toString()));
    }
    for (Table table : List.of(Table.MATERIALS, Table.REVISITS)) {
      counted(table)
          .forEach(
              row -> assertTrue(devices.contains(row.text("device_id")), row.values().toString()));
    }
  }

  @Test
  void countedVisitsLieBetweenInstallAndEnd() {
    Map<String, LocalDate> ends = new HashMap<>();
    for (History history : world.histories()) {
      if (history.retiredOn() != null) {
        ends.put(history.device().id(), history.retiredOn());
      }
    }
    Map<String, LocalDate> installed = world.installDates();
    program.secondIds().forEach((second, id) -> installed.put(second, installed.get(id)));
    Set<String> days = new HashSet<>();
    counted(Table.REVISITS)
        .forEach(
            row -> {
              LocalDate day = row.day("visited_on");
              String id = row.text("device_id");
              assertTrue(day.isAfter(installed.get(id)), row.values().toString());
              assertFalse(
                  day.isAfter(ends.getOrDefault(id, SampleTruth.AS_OF)), row.values().toString());
              assertTrue(days.add(id + day), "two visits: " + row.values());
            });
  }

  @Test
  void removalsOfASiteAndYearCountOnce() {
    Set<String> siteYears = new HashSet<>();
    counted(Table.REMOVALS)
        .forEach(
            row ->
                assertTrue(
                    siteYears.add(row.text("site_id") + row.text("year")),
                    row.values().toString()));
  }

  private Stream<Row> rows(Table table) {
    return program.sheets().stream()
        .filter(sheet -> sheet.table() == table)
        .flatMap(sheet -> sheet.rows().stream())
        .filter(row -> !row.values().isEmpty());
  }

  private Stream<Row> counted(Table table) {
    return rows(table).filter(Row::counts);
  }

  private long visits(Predicate<Visit> which) {
    return world.histories().stream()
        .flatMap(history -> history.visits().stream())
        .filter(which)
        .count();
  }

  private static void between(long low, long high, long count) {
    assertTrue(count >= low && count <= high, count + " is not between " + low + " and " + high);
  }
}
