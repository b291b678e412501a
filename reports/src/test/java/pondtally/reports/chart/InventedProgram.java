package pondtally.reports.chart;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
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

  private static final String[] CAUSES = {
    "fence-dammed", "pipe-plugged", "washed-out", "pipe-chewed", "pipe-separated", "ice", "unknown"
  };

  /** One service life: which pipe and watershed, until when, and how it ended. */
  private record Life(String pipe, String watershed, int days, String cause, boolean retired) {
    boolean failed() {
      return !cause.isEmpty();
    }
  }

  private final TestTables tables;
  private final List<Life> lives = new ArrayList<>();
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
      String cause = failed ? CAUSES[(int) (CAUSES.length * Math.pow(random.nextDouble(), 2))] : "";
      boolean retired = !failed && random.nextInt(9) == 0;
      lives.add(new Life(pipe, watersheds.get(w), failed ? fail : end, cause, retired));
    }
  }

  private void all() {
    survival("all", grouped(life -> "all"));
    survival("pipe", grouped(Life::pipe));
    rates("all", grouped(life -> "all"));
    rates("pipe", grouped(Life::pipe));
    rates("watershed", grouped(Life::watershed));
    causes();
    incidence();
    repeats();
    hazards();
    costs();
    wetland();
    removals();
    sensitivity();
    season();
  }

  private Map<String, List<Life>> grouped(Function<Life, String> key) {
    Map<String, List<Life>> groups = new TreeMap<>();
    lives.forEach(
        life -> groups.computeIfAbsent(key.apply(life), k -> new ArrayList<>()).add(life));
    return groups;
  }

  private void survival(String grouping, Map<String, List<Life>> groups) {
    groups.forEach(
        (group, members) -> {
          TreeMap<Integer, int[]> days = new TreeMap<>();
          members.forEach(
              life -> days.computeIfAbsent(life.days, d -> new int[2])[life.failed() ? 0 : 1]++);
          int atRisk = members.size();
          double s = 1;
          double sum = 0;
          int supported = -1;
          Map<Integer, double[]> at = new LinkedHashMap<>();
          for (var day : days.entrySet()) {
            int events = day.getValue()[0];
            int censored = day.getValue()[1];
            s *= 1 - (double) events / atRisk;
            sum += atRisk > events ? (double) events / (atRisk * (double) (atRisk - events)) : 0;
            double[] limits = limits(s, sum, atRisk);
            tables.row(
                "survival_curves",
                "grouping",
                grouping,
                "group",
                group,
                "method",
                "product-limit",
                "time_days",
                (double) day.getKey(),
                "at_risk",
                atRisk,
                "events",
                events,
                "censored",
                censored,
                "survival",
                s,
                "std_error",
                s * Math.sqrt(sum),
                "lower",
                s == 0 ? null : limits[0],
                "upper",
                s == 0 ? null : limits[1]);
            at.put(day.getKey(), new double[] {s, limits[0], limits[1]});
            supported = atRisk >= 5 ? day.getKey() : supported;
            atRisk -= events + censored;
          }
          summary(grouping, group, members, at, supported);
        });
  }

  private static double[] limits(double s, double sum, int atRisk) {
    if (s >= 1 || s <= 0) {
      return new double[] {Math.pow(0.025, 1.0 / atRisk), 1};
    }
    double width = 1.96 * Math.sqrt(sum) / Math.abs(Math.log(s));
    return new double[] {Math.pow(s, Math.exp(width)), Math.pow(s, Math.exp(-width))};
  }

  private void summary(
      String grouping, String group, List<Life> members, Map<Integer, double[]> at, int supported) {
    List<Object> cells =
        new ArrayList<>(
            List.of(
                "grouping",
                grouping,
                "group",
                group,
                "method",
                "product-limit",
                "devices",
                members.size(),
                "lives",
                members.size(),
                "failures",
                members.stream().filter(Life::failed).count()));
    if (supported >= 0) {
      Collections.addAll(cells, "supported_days", (double) supported);
    }
    for (int years : new int[] {1, 3, 5}) {
      double[] last = null;
      for (var entry : at.entrySet()) {
        last = entry.getKey() <= years * 365.25 ? entry.getValue() : last;
      }
      if (last != null && supported >= years * 365.25) {
        String column = "survival_" + years + "y";
        Collections.addAll(
            cells, column, last[0], column + "_lower", last[1], column + "_upper", last[2]);
      }
    }
    tables.row("survival_summary", cells.toArray());
  }

  private double rate() {
    double years = lives.stream().mapToInt(Life::days).sum() / 365.25;
    return lives.stream().filter(Life::failed).count() / years;
  }

  private void rates(String grouping, Map<String, List<Life>> groups) {
    int number = 0;
    for (var entry : groups.entrySet()) {
      number++;
      boolean withheld = grouping.equals("watershed") && groups.size() == 8 && number == 6;
      if (withheld) {
        tables.row(
            "failure_rates",
            "grouping",
            grouping,
            "group",
            entry.getKey(),
            "year",
            "all",
            "withheld_reason",
            "fewer than 5 sites");
        continue;
      }
      long failures = entry.getValue().stream().filter(Life::failed).count();
      if (grouping.equals("watershed") && number == 2 && failures > 0) {
        failures *= 3;
      }
      double years = entry.getValue().stream().mapToInt(Life::days).sum() / 365.25;
      double expected = rate() * years;
      boolean isWatershed = grouping.equals("watershed") && expected > 0;
      double[] wide = byar(expected, 3.09);
      double[] narrow = byar(expected, 1.96);
      double[] exact = byar((double) failures, 1.96);
      tables.row(
          "failure_rates",
          "grouping",
          grouping,
          "group",
          entry.getKey(),
          "year",
          "all",
          "devices",
          entry.getValue().size(),
          "failures",
          failures,
          "device_years",
          years,
          "per_100_device_years",
          100 * failures / years,
          "lower",
          100 * exact[0] / years,
          "upper",
          100 * exact[1] / years,
          "expected",
          isWatershed ? expected : null,
          "funnel_lower",
          isWatershed ? 100 * wide[0] / years : null,
          "funnel_upper",
          isWatershed ? 100 * wide[1] / years : null,
          "funnel_lower_95",
          isWatershed ? 100 * narrow[0] / years : null,
          "funnel_upper_95",
          isWatershed ? 100 * narrow[1] / years : null,
          "outside_funnel",
          isWatershed ? failures < wide[0] || failures > wide[1] : null);
    }
  }

  /** Byar's approximation to Poisson limits. */
  private static double[] byar(double count, double z) {
    double up = count + 1;
    double lower =
        count <= 0
            ? 0
            : Math.max(0, count * Math.pow(1 - 1 / (9 * count) - z / (3 * Math.sqrt(count)), 3));
    return new double[] {lower, up * Math.pow(1 - 1 / (9 * up) + z / (3 * Math.sqrt(up)), 3)};
  }

  private void causes() {
    long all = lives.stream().filter(Life::failed).count();
    tables.table("failure_causes");
    for (String cause : CAUSES) {
      long count = lives.stream().filter(life -> life.cause.equals(cause)).count();
      double p = all == 0 ? 0 : (double) count / all;
      double z = 1.96;
      double half =
          z
              * Math.sqrt(p * (1 - p) / Math.max(1, all) + z * z / (4.0 * all * all))
              / (1 + z * z / all);
      double mid = (p + z * z / (2 * all)) / (1 + z * z / all);
      tables.row(
          "failure_causes",
          "grouping",
          "all",
          "group",
          "all",
          "cause",
          cause,
          "failures",
          count,
          "share",
          all == 0 ? null : p,
          "lower",
          all == 0 ? null : mid - half,
          "upper",
          all == 0 ? null : mid + half);
    }
  }

  private void incidence() {
    List<Life> sorted = new ArrayList<>(lives);
    sorted.sort((a, b) -> Integer.compare(a.days, b.days));
    Map<String, Double> incidence = new TreeMap<>();
    double s = 1;
    int atRisk = sorted.size();
    for (Life life : sorted) {
      String cause = life.failed() ? life.cause : life.retired ? "retired" : "";
      if (!cause.isEmpty()) {
        double now = incidence.merge(cause, s / atRisk, Double::sum);
        s *= 1 - 1.0 / atRisk;
        tables.row(
            "cumulative_incidence",
            "grouping",
            "all",
            "group",
            "all",
            "cause",
            cause,
            "time_days",
            (double) life.days,
            "at_risk",
            atRisk,
            "incidence",
            now,
            "lower",
            now * 0.75,
            "upper",
            Math.min(1, now * 1.3));
      }
      atRisk--;
    }
  }

  private void repeats() {
    for (String group : List.of("all")) {
      List<Life> sorted = new ArrayList<>(lives);
      sorted.sort((a, b) -> Integer.compare(a.days, b.days));
      double mean = 0;
      double variance = 0;
      int atRisk = sorted.size();
      for (Life life : sorted) {
        if (life.failed()) {
          mean += 1.6 / atRisk;
          variance += 3.0 / atRisk / atRisk;
          double half = 1.96 * Math.sqrt(variance);
          tables.row(
              "repeat_failures",
              "grouping",
              "all",
              "group",
              group,
              "time_days",
              (double) life.days,
              "at_risk",
              atRisk,
              "mean_failures",
              mean,
              "lower",
              Math.max(0, mean - half),
              "upper",
              mean + half);
        }
        atRisk--;
      }
    }
  }

  private void hazards() {
    if (lives.stream().noneMatch(Life::failed)) {
      tables.row(
          "hazard_ratios",
          "model",
          "pipe",
          "term",
          "pipe",
          "level",
          "single 10 in",
          "reference",
          "dual 12 in",
          "devices",
          12,
          "failures",
          0,
          "reason",
          "no failure at any level");
      return;
    }
    Object[][] levels = {
      {"pipe", "pipe", "single 10 in", "dual 12 in", 78, 38, 2.9, 1.6, 5.2, 0.0004},
      {"pipe", "pipe", "dual 15 in", "dual 12 in", 41, 7, 0.8, 0.34, 1.9, 0.6},
      {"pipe", "pipe", "smooth 8 in", "dual 12 in", 9, 0, null, null, null, null},
      {"adjusted", "pipe", "single 10 in", "dual 12 in", 78, 38, 2.4, 1.2, 4.7, 0.01},
      {"adjusted", "build", "not-met", "met", 60, 26, 1.7, 0.9, 3.3, 0.1},
      {"adjusted", "kind", "culvert-fence", "pond-leveler", 4, 1, 1.1, 0.01, 80.0, 0.9},
      {"adjusted", "cohort", "2022", "2018", 30, 9, 1.05, 0.6, 1.9, 0.8}
    };
    for (Object[] level : levels) {
      tables.row(
          "hazard_ratios",
          "model",
          level[0],
          "term",
          level[1],
          "level",
          level[2],
          "reference",
          level[3],
          "devices",
          level[4],
          "failures",
          level[5],
          "hazard_ratio",
          level[6],
          "lower",
          level[7],
          "upper",
          level[8],
          "p_value",
          level[9],
          "reason",
          level[6] == null ? "no failure at this level" : "");
    }
  }

  private void costs() {
    Map<String, List<Life>> groups = grouped(Life::watershed);
    cost("all", "all", 4310, 3105.0, 6240.0, 141);
    int number = 0;
    for (String group : groups.keySet()) {
      number++;
      if (groups.size() == 8 && number == 5) {
        tables.row(
            "cost_effectiveness",
            "grouping",
            "watershed",
            "group",
            group,
            "year",
            "all",
            "measure",
            "per-property",
            "basis",
            "cash-and-in-kind",
            "denominator",
            0.0);
        continue;
      }
      double value = 2500 + 900 * ((number * 7) % 6);
      boolean noLimits = number % 8 == 3;
      cost(
          "watershed",
          group,
          value,
          noLimits ? null : value * 0.55,
          noLimits ? null : value * (number % 8 == 4 ? 6 : 1.7),
          3 + number * 5 % 31);
    }
  }

  private void cost(
      String grouping, String group, double value, Double lower, Double upper, double properties) {
    tables.row(
        "cost_effectiveness",
        "grouping",
        grouping,
        "group",
        group,
        "year",
        "all",
        "measure",
        "per-property",
        "basis",
        "cash-and-in-kind",
        "numerator_usd",
        value * properties,
        "denominator",
        properties,
        "value_usd",
        value,
        "lower",
        lower,
        "upper",
        upper,
        "clusters",
        88,
        "clusters_left_out",
        12);
  }

  private void wetland() {
    for (int year = 2019; year <= 2026; year++) {
      double sum = 0;
      int number = 0;
      for (String group : watersheds) {
        number++;
        boolean measured = number % 8 != 7;
        double acreYears = (year - 2018) * (2 + (number * 5) % 7);
        sum += measured ? acreYears : 0;
        tables.row(
            "wetland",
            "grouping",
            "watershed",
            "group",
            group,
            "year",
            year,
            "sites",
            10 + number,
            "sites_measured",
            measured ? 7 + number : 0,
            "acre_years",
            measured ? acreYears : null,
            "acre_years_extrapolated",
            measured ? acreYears * (year > 2023 ? 0.5 : 0.1) : null);
      }
      tables.row(
          "wetland",
          "grouping",
          "all",
          "group",
          "all",
          "year",
          year,
          "acre_years",
          sum,
          "sites",
          120,
          "sites_measured",
          96);
    }
    tables.row("wetland", "grouping", "all", "group", "all", "year", "all", "acre_years", 999.0);
  }

  private void removals() {
    double[] computed = {-2.5, 6, 14.2, 18.9, 25.1, 27.6};
    for (int i = 0; i < computed.length; i++) {
      int year = 2020 + i;
      tables.row(
          "removals_avoided",
          "grouping",
          "all",
          "group",
          "all",
          "year",
          year,
          "evidence",
          "",
          "sites",
          30 + 4 * i,
          "sites_left_out",
          11,
          "avoided_computed",
          computed[i]);
      claim(year, "estimate", 20 + 3.0 * i);
      claim(year, "log", 5 + 2.0 * i);
      if (i > 2) {
        claim(year, "permit", 4.0 + i);
      }
    }
  }

  private void claim(int year, String evidence, double claimed) {
    tables.row(
        "removals_avoided",
        "grouping",
        "all",
        "group",
        "all",
        "year",
        year,
        "evidence",
        evidence,
        "sites",
        9,
        "avoided_claimed",
        claimed);
  }

  private void sensitivity() {
    Object[][] rows = {
      {"yearly damage", 0.5, 1.0, 1.5, 1.05, 2.1, 3.2},
      {"discount rate", 0.0, 0.03, 0.07, 2.5, 2.1, 1.7},
      {"working share", 0.72, 0.84, 0.92, 1.8, 2.1, 2.3},
      {"labor rate", 20.0, 28.0, 40.0, 2.3, 2.1, 1.8},
      {"horizon years", 5.0, 10.0, 20.0, 1.4, 2.1, 2.8}
    };
    for (Object[] row : rows) {
      tables.row(
          "sensitivity",
          "assumption",
          row[0],
          "low",
          row[1],
          "base",
          row[2],
          "high",
          row[3],
          "ratio_low",
          row[4],
          "ratio_base",
          row[5],
          "ratio_high",
          row[6]);
    }
  }

  private void season() {
    for (int year = 2026; year <= 2028; year++) {
      double expected = 12.4 + (year - 2026) * 1.7;
      tables.row(
          "season_forecast",
          "grouping",
          "all",
          "group",
          "all",
          "year",
          year - 2025,
          "first_day",
          LocalDate.of(year, 1, 1),
          "last_day",
          LocalDate.of(year, 12, 31),
          "expected_failures",
          expected,
          "lower",
          expected - 5.6,
          "upper",
          expected + 6.9,
          "visits",
          310.0,
          "hours",
          742.0,
          "cost_usd",
          41250.0);
    }
  }
}
