package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Published survival data sent through the whole job as a program folder: units are devices
 * installed on one day, times are visits, {@code failure_dated: discovery} unless said otherwise.
 * The curves, tests, hazard ratios and fits that come out are those that R's survival package 3.5-3
 * gives (files and sources: {@code published/curves/README.md}, {@code
 * published/hazards/README.md}).
 */
class ForeignDataSparkTest {

  private static final Path PUBLISHED = Path.of("src", "test", "resources", "published", "curves");
  private static final Path HAZARDS = PUBLISHED.resolveSibling("hazards");
  private static final LocalDate START = LocalDate.of(1900, 1, 1);

  @TempDir private Path folder;

  /** One unit of a published data set; {@code good} is a visit that found it working, or 0. */
  private record Unit(
      String id, String wall, int inches, int entry, int good, int exit, boolean failed) {

    Unit(String id, String wall, int inches, int entry, int exit, boolean failed) {
      this(id, wall, inches, entry, 0, exit, failed);
    }
  }

  private JobResult run(List<Unit> units) throws IOException {
    return run(units, "discovery");
  }

  private JobResult run(List<Unit> units, String dating) throws IOException {
    StringBuilder sites = new StringBuilder("site_id,watershed,setting\n");
    StringBuilder installs =
        new StringBuilder(
            "device_id,site_id,installed_on,device_kind,pipe_wall,pipe_diameter_in,tracked_from\n");
    StringBuilder revisits = new StringBuilder("device_id,visited_on,condition\n");
    for (Unit unit : units) {
      sites.append("S%s,990101010101,farmland%n".formatted(unit.id));
      installs.append(
          "D%s,S%s,%s,pond-leveler,%s,%d,%s%n"
              .formatted(
                  unit.id,
                  unit.id,
                  START.plusYears(60),
                  unit.wall,
                  unit.inches,
                  START.plusYears(60).plusDays(unit.entry)));
      if (unit.good > 0) {
        revisits.append(
            "D%s,%s,working%n".formatted(unit.id, START.plusYears(60).plusDays(unit.good)));
      }
      revisits.append(
          "D%s,%s,%s%n"
              .formatted(
                  unit.id,
                  START.plusYears(60).plusDays(unit.exit),
                  unit.failed ? "failed" : "working"));
    }
    Files.writeString(
        folder.resolve("program.yaml"), "failure_dated: " + dating + "\nbase_year: 2020\n");
    Files.writeString(folder.resolve("sites.csv"), sites);
    Files.writeString(folder.resolve("installs.csv"), installs);
    Files.writeString(folder.resolve("revisits.csv"), revisits);
    return SampleRun.of(folder);
  }

  private static void assertCurve(JobResult result, String file, Map<String, String> pipeOfGroup)
      throws IOException {
    List<CSVRecord> rows = SampleRun.rows(result, "survival_curves");
    int compared = 0;
    for (CSVRecord expected : SampleRun.read(PUBLISHED.resolve(file))) {
      String group = expected.get("group").substring(expected.get("group").indexOf('=') + 1);
      CSVRecord actual =
          rows.stream()
              .filter(
                  row ->
                      row.get("method").equals("product-limit")
                          && row.get("grouping").equals("pipe")
                          && row.get("group").equals(pipeOfGroup.get(group))
                          && Double.parseDouble(row.get("time_days"))
                              == Double.parseDouble(expected.get("time")))
              .findFirst()
              .orElseThrow();
      same(expected, "n_risk", actual, "at_risk");
      same(expected, "n_event", actual, "events");
      same(expected, "n_censor", actual, "censored");
      same(expected, "survival", actual, "survival");
      if (!expected.get("se_greenwood").isEmpty()) {
        same(expected, "se_greenwood", actual, "std_error");
      }
      if (!expected.get("lower_loglog").isEmpty()) {
        same(expected, "lower_loglog", actual, "lower");
        same(expected, "upper_loglog", actual, "upper");
      }
      compared++;
    }
    assertFalse(compared == 0);
  }

  private static void same(CSVRecord expected, String a, CSVRecord actual, String b) {
    double value = Double.parseDouble(expected.get(a));
    assertEquals(
        value, Double.parseDouble(actual.get(b)), 1e-9 * Math.abs(value), actual.toString());
  }

  private static void assertTest(JobResult result, String comparison, String test, String name)
      throws IOException {
    CSVRecord expected =
        row(
            SampleRun.read(PUBLISHED.resolve("logrank_tests.csv")),
            Map.of("comparison", comparison, "test", test));
    CSVRecord actual =
        row(
            SampleRun.rows(result, "group_tests"),
            Map.of("test", name, "grouping", "pipe", "strata", "", "group_a", ""));
    same(expected, "chisq", actual, "statistic");
    same(expected, "df", actual, "df");
    same(expected, "p", actual, "p_value");
  }

  private static void assertLogRank(JobResult result, String comparison) throws IOException {
    assertTest(result, comparison, "logrank", "log-rank");
  }

  /** The first row with these cells. */
  private static CSVRecord row(List<CSVRecord> rows, Map<String, String> cells) {
    return rows.stream()
        .filter(
            row ->
                cells.entrySet().stream()
                    .allMatch(cell -> row.get(cell.getKey()).equals(cell.getValue())))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no row with " + cells));
  }

  /** Tolerance of an iterative fit: 1e-6 relative. */
  private static void near(double expected, CSVRecord actual, String column) {
    assertEquals(
        expected,
        Double.parseDouble(actual.get(column)),
        1e-6 * Math.abs(expected),
        column + " of " + actual);
  }

  private static void near(CSVRecord expected, String a, CSVRecord actual, String b) {
    near(Double.parseDouble(expected.get(a)), actual, b);
  }

  @Test
  void remissionTimesOfFreireich1963() throws IOException {
    JobResult result =
        run(
            numbered(SampleRun.read(PUBLISHED.resolve("gehan_6mp.csv"))).stream()
                .map(
                    row ->
                        new Unit(
                            row.getKey(),
                            row.getValue().get("group").equals("6-MP") ? "dual" : "single",
                            12,
                            0,
                            Integer.parseInt(row.getValue().get("time")),
                            row.getValue().get("status").equals("1")))
                .toList());
    assertCurve(result, "km_gehan.csv", Map.of("6-MP", "dual 12 in", "control", "single 12 in"));
    assertLogRank(result, "gehan: 6-MP v control");
    assertTest(result, "gehan: 6-MP v control", "peto_peto", "peto-peto");
    assertHazardsOfFreireich(result);
    assertFitsOfFreireich(result);
    assertComparisonsOfFreireich(result);
    CSVRecord summary =
        SampleRun.rows(result, "survival_summary").stream()
            .filter(
                row ->
                    row.get("method").equals("product-limit")
                        && row.get("group").equals("dual 12 in")
                        && row.get("grouping").equals("pipe"))
            .findFirst()
            .orElseThrow();
    // Kleinbaum & Klein, Survival Analysis, chapter 2: median remission 23 weeks (here days).
    assertEquals(23, Double.parseDouble(summary.get("median_years")) * 365.25, 1e-9);
  }

  /** Cox model with Efron's ties; every unit is a cluster of its own. */
  private static void assertHazardsOfFreireich(JobResult result) throws IOException {
    CSVRecord expected =
        row(
            SampleRun.read(HAZARDS.resolve("cox_coefficients.csv")),
            Map.of("model", "gehan_efron"));
    CSVRecord model =
        row(SampleRun.read(HAZARDS.resolve("cox_model_stats.csv")), Map.of("model", "gehan_efron"));
    CSVRecord actual =
        row(
            SampleRun.rows(result, "hazard_ratios"),
            Map.of("model", "pipe", "level", "single 12 in", "reference", "dual 12 in"));
    near(expected, "hr", actual, "hazard_ratio");
    near(expected, "se_model", actual, "model_log_std_error");
    near(model, "loglik", actual, "log_likelihood");
    near(model, "concordance", actual, "concordance");
    assertEquals("42", actual.get("clusters"));
  }

  private static void assertFitsOfFreireich(JobResult result) throws IOException {
    List<CSVRecord> published = SampleRun.read(HAZARDS.resolve("parametric_fits.csv"));
    List<CSVRecord> fits = SampleRun.rows(result, "parametric_fits");
    for (String distribution : List.of("weibull", "exponential")) {
      CSVRecord actual =
          row(
              fits,
              Map.of("grouping", "pipe", "group", "dual 12 in", "distribution", distribution));
      String model = "gehan_6mp_" + distribution;
      near(
          row(published, Map.of("model", model, "parameter", "weibull_scale")),
          "estimate",
          actual,
          "scale_days");
      near(
          row(published, Map.of("model", model, "parameter", "loglik")),
          "estimate",
          actual,
          "log_likelihood");
      if (distribution.equals("weibull")) {
        CSVRecord shape = row(published, Map.of("model", model, "parameter", "weibull_shape"));
        near(shape, "estimate", actual, "shape");
        near(shape, "lower95", actual, "shape_lower");
        near(shape, "upper95", actual, "shape_upper");
      }
    }
  }

  /** Worked by hand from the remission times. */
  private static void assertComparisonsOfFreireich(JobResult result) {
    Map<String, String> pair =
        Map.of("grouping", "pipe", "group_a", "dual 12 in", "group_b", "single 12 in");
    // Up to day 12, the last with five of the control group at risk: 10.783193 less 153/21 days.
    CSVRecord mean = row(SampleRun.rows(result, "mean_life_differences"), pair);
    near(12 / 365.25, mean, "horizon_years");
    double treated = 6 + 18 / 21.0 * (1 + 16 / 17.0 * (3 + 14 / 15.0 * 2));
    near((treated - 153 / 21.0) / 365.25, mean, "difference_years");
    // Rates date failures by the midpoint: 359 - 109/2 and 182/2 days.
    CSVRecord rates = row(SampleRun.rows(result, "rate_ratios"), pair);
    near(9, rates, "failures_a");
    near(304.5 / 365.25, rates, "device_years_a");
    near(9 / 304.5 / (21 / 91.0), rates, "rate_ratio");
    // Schoenfeld 1983: (1.959964 + 0.841621)^2 / (359/541 * 182/541 * ln(1.5)^2) = 213.9.
    CSVRecord size = row(SampleRun.rows(result, "sample_size"), pair);
    near(214, size, "failures_needed");
    near(30, size, "failures_so_far");
    near((214 - 30) / 30.0 * 541 / 365.25, size, "more_device_years");
  }

  /**
   * Failures between two visits: the trial of Beadle et al. 1984. Masses as R's npsurv gives them.
   */
  @Test
  void cosmeticResultsOfBeadle1984ByInterval() throws IOException {
    Map<String, String> wall = Map.of("RT", "dual", "RCT", "single");
    JobResult result =
        run(
            numbered(SampleRun.read(HAZARDS.resolve("breast_cosmesis.csv"))).stream()
                .map(row -> cosmesis(row.getKey(), row.getValue(), wall))
                .toList(),
            "interval");
    List<CSVRecord> curves = SampleRun.rows(result, "survival_curves");
    int compared = 0;
    for (CSVRecord expected : SampleRun.read(HAZARDS.resolve("turnbull_breast_cosmesis.csv"))) {
      boolean some = Double.parseDouble(expected.get("mass")) > 1e-9;
      if (some && !expected.get("right").equals("Inf")) {
        String group = wall.get(expected.get("group"));
        CSVRecord actual =
            row(
                curves,
                Map.of(
                    "method",
                    "interval",
                    "grouping",
                    group == null ? "all" : "pipe",
                    "group",
                    group == null ? "all" : group + " 12 in",
                    "time_days",
                    expected.get("right")));
        assertEquals(expected.get("left"), actual.get("from_days"));
        double survival = Double.parseDouble(expected.get("survival_after"));
        assertEquals(survival, Double.parseDouble(actual.get("survival")), 1e-9);
        compared++;
      }
    }
    assertEquals(
        compared,
        curves.stream()
            .filter(r -> r.get("method").equals("interval") && !r.get("grouping").equals("kind"))
            .count());
  }

  private static Unit cosmesis(String id, CSVRecord row, Map<String, String> wall) {
    int left = Integer.parseInt(row.get("left"));
    boolean failed = row.get("right").matches("[0-9]+");
    int exit = failed ? Integer.parseInt(row.get("right")) : left;
    return new Unit(id, wall.get(row.get("group")), 12, 0, failed ? left : 0, exit, failed);
  }

  @Test
  void lungCancerTrialOfKalbfleischAndPrentice1980() throws IOException {
    Map<String, String> pipe =
        Map.of(
            "squamous", "single 10 in",
            "smallcell", "single 12 in",
            "adeno", "dual 12 in",
            "large", "dual 15 in");
    JobResult result =
        run(
            numbered(SampleRun.read(PUBLISHED.resolve("veteran.csv"))).stream()
                .map(
                    row -> {
                      String[] type = pipe.get(row.getValue().get("celltype")).split(" ");
                      return new Unit(
                          row.getKey(),
                          type[0],
                          Integer.parseInt(type[1]),
                          0,
                          Integer.parseInt(row.getValue().get("time")),
                          row.getValue().get("status").equals("1"));
                    })
                .toList());
    assertCurve(result, "km_veteran_celltype.csv", pipe);
    assertLogRank(result, "veteran: celltype (4)");
  }

  @Test
  void lateEntryInTheChanningHouseDataOfHyde1977() throws IOException {
    JobResult result =
        run(
            numbered(SampleRun.read(PUBLISHED.resolve("channing.csv"))).stream()
                .filter(
                    row ->
                        Integer.parseInt(row.getValue().get("age"))
                            > Integer.parseInt(row.getValue().get("ageentry")))
                .map(
                    row ->
                        new Unit(
                            row.getKey(),
                            row.getValue().get("gender").equals("1") ? "single" : "dual",
                            12,
                            Integer.parseInt(row.getValue().get("ageentry")),
                            Integer.parseInt(row.getValue().get("age")),
                            row.getValue().get("death").equals("1")))
                .toList());
    assertCurve(
        result, "lefttrunc_channing.csv", Map.of("male", "single 12 in", "female", "dual 12 in"));
    assertHazardsOfHyde(result);
  }

  /** The error is the robust one: each resident is a cluster of their own. */
  private static void assertHazardsOfHyde(JobResult result) throws IOException {
    Map<String, String> model = Map.of("model", "channing_cox_gender_efron");
    CSVRecord expected = row(SampleRun.read(HAZARDS.resolve("lefttrunc_channing_cox.csv")), model);
    CSVRecord robust = row(SampleRun.read(HAZARDS.resolve("cox_robust.csv")), model);
    CSVRecord order = row(SampleRun.read(HAZARDS.resolve("cox_concordance_late_entry.csv")), model);
    CSVRecord actual =
        row(
            SampleRun.rows(result, "hazard_ratios"),
            Map.of("model", "pipe", "level", "single 12 in", "reference", "dual 12 in"));
    near(expected, "hr", actual, "hazard_ratio");
    near(expected, "se_model", actual, "model_log_std_error");
    near(robust, "se_robust", actual, "log_std_error");
    near(order, "concordance", actual, "concordance");
  }

  private static List<Map.Entry<String, CSVRecord>> numbered(List<CSVRecord> rows) {
    return rows.stream().map(row -> Map.entry(Long.toString(row.getRecordNumber()), row)).toList();
  }
}
