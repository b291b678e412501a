package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.IntFunction;

/**
 * Plausible tables of an invented program, the same on every run. The figures are made up with
 * simple formulas; only their form matters here.
 */
final class InventedProgram {

  private final TestTables tables;
  private final List<InventedLife> lives = new ArrayList<>();
  private final List<String> watersheds = new ArrayList<>();
  private final Random random = new Random(20260331);

  private InventedProgram() throws Exception {
    tables =
        new TestTables()
            .fact("region", "Ninebark Uplands")
            .fact("as_of", "2026-03-31")
            .fact("period_from", "2025-01-01")
            .fact("period_to", "2025-12-31")
            .fact("base_year", "2025")
            .fact("failure", "failed")
            .fact("failure_dated", "midpoint")
            .fact("groups_below", "5")
            .fact("watershed_digits", "8")
            .column("failure_rates", "funnel_lower_95")
            .column("failure_rates", "funnel_upper_95");
  }

  /** Five pipe types, eight watersheds, one withheld, one without failures, one tiny. */
  static TestTables usual() throws Exception {
    InventedProgram program = new InventedProgram();
    program.watersheds(8, i -> "990102%02d".formatted(i + 1));
    program.pipe("dual 12 in", 96, 14, true);
    program.pipe("dual 15 in", 41, 18, true);
    program.pipe("single 10 in", 78, 4.2, true);
    program.pipe("smooth 8 in", 9, 30, false);
    program.pipe("unknown", 4, 9, true);
    program.all();
    return program.tables;
  }

  /** As many devices, but every one still works. */
  static TestTables withoutFailures() throws Exception {
    InventedProgram program = new InventedProgram();
    program.watersheds(3, i -> "990102%02d".formatted(i + 1));
    program.pipe("dual 12 in", 30, 14, false);
    program.pipe("single 10 in", 12, 14, false);
    program.all();
    return program.tables;
  }

  /** Four pipe types, the most that share a plot. */
  static TestTables fourPipes() throws Exception {
    InventedProgram program = new InventedProgram();
    program.watersheds(8, i -> "990102%02d".formatted(i + 1));
    program.pipe("dual 12 in", 96, 14, true);
    program.pipe("dual 15 in", 41, 9, true);
    program.pipe("single 10 in", 78, 4.2, true);
    program.pipe("smooth 8 in", 19, 6, true);
    program.all();
    return program.tables;
  }

  /** One pipe type in one watershed. */
  static TestTables oneGroup() throws Exception {
    InventedProgram program = new InventedProgram();
    program.watersheds(1, i -> "99010201");
    program.pipe("dual 12 in", 58, 11, true);
    program.all();
    return program.tables;
  }

  /** Forty watersheds with names of sixty letters, some in other scripts, and twelve pipe types. */
  static TestTables large() throws Exception {
    InventedProgram program = new InventedProgram();
    program.watersheds(40, InventedProgram::longName);
    int[] inches = {6, 8, 10, 12, 15, 18};
    for (int inch : inches) {
      program.pipe("dual " + inch + " in", 12_000 / inch, 15, true);
      program.pipe("single " + inch + " in", 9_000 / inch, 6, true);
    }
    program.all();
    return program.tables;
  }

  private static String longName(int i) {
    String number = "%02d".formatted(i + 1);
    if (i == 7) {
      return number + " Верхний приток Рябиновой реки выше старого каменного моста";
    }
    if (i == 11) {
      return number + " 花楸川上流域の石橋より上の北側支流とその湿地一帯の流域名";
    }
    if (i == 13) {
      return number + "Unbrokenwatershednameofsixtylettersinarowwithoutanyspaceinit";
    }
    return number + " Upper North Fork of Ninebark Creek above the Old Stone Bridge";
  }

  private void watersheds(int count, IntFunction<String> name) {
    for (int i = 0; i < count; i++) {
      watersheds.add(name.apply(i));
    }
  }

  private void pipe(String pipe, int count, double meanYears, boolean fails) {
    for (int i = 0; i < count; i++) {
      int end = 60 + random.nextInt(2500);
      int fail = (int) (-Math.log(1 - random.nextDouble()) * meanYears * 365.25) + 20;
      boolean failed = fails && fail < end;
      int w = (int) (watersheds.size() * Math.pow(random.nextDouble(), 1.6));
      String cause =
          failed
              ? InventedLife.CAUSES[
                  (int) (InventedLife.CAUSES.length * Math.pow(random.nextDouble(), 2))]
              : "";
      boolean retired = !failed && random.nextInt(9) == 0;
      lives.add(new InventedLife(pipe, watersheds.get(w), failed ? fail : end, cause, retired));
    }
  }

  private void all() {
    InventedSurvival survival = new InventedSurvival(tables);
    survival.survival("all", grouped(life -> "all"));
    survival.survival("pipe", grouped(InventedLife::pipe));
    InventedRates rates = new InventedRates(tables, lives);
    rates.rates("all", grouped(life -> "all"));
    rates.rates("pipe", grouped(InventedLife::pipe));
    rates.rates("watershed", grouped(InventedLife::watershed));
    InventedCauses causes = new InventedCauses(tables, lives);
    causes.causes();
    causes.incidence();
    causes.repeats();
    new InventedHazards(tables).hazards(lives.stream().anyMatch(InventedLife::failed));
    InventedMoney money = new InventedMoney(tables);
    money.costs(grouped(InventedLife::watershed).keySet());
    InventedGains gains = new InventedGains(tables);
    gains.wetland(watersheds);
    gains.removals();
    money.sensitivity();
    money.season();
  }

  private Map<String, List<InventedLife>> grouped(Function<InventedLife, String> key) {
    Map<String, List<InventedLife>> groups = new TreeMap<>();
    lives.forEach(
        life -> groups.computeIfAbsent(key.apply(life), k -> new ArrayList<>()).add(life));
    return groups;
  }
}
