package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Classic survival data sets through the whole job, each as a program folder of its own with {@code
 * failure_dated: discovery}: curves, medians, tests, hazard ratios, fits and incidence are those of
 * R 4.2.2 with survival 3.5-3 and cmprsk 2.2-11. Sources and calls: {@code
 * published/foreign/foreign.R}.
 */
class ForeignSetsSparkTest {

  private static final Path FOREIGN = Path.of("src", "test", "resources", "published", "foreign");
  private static final LocalDate START = LocalDate.of(1960, 1, 1);
  private static final Map<String, String> CAUSES = Map.of("1", "pipe-plugged", "2", "ice");
  private static final double CLOSED = 1e-9;
  private static final double FITTED = 1e-6;

  @TempDir private Path folder;

  private JobResult run(String set) throws IOException {
    StringBuilder sites = new StringBuilder("site_id,watershed,pond_id\n");
    StringBuilder installs =
        new StringBuilder(
            "device_id,site_id,installed_on,pipe_wall,pipe_diameter_in,tracked_from,retired_on\n");
    StringBuilder revisits = new StringBuilder("device_id,visited_on,condition,cause,action\n");
    for (CSVRecord unit : of(set, "units.csv")) {
      String id = unit.get("unit");
      String[] pipe = unit.get("group").split(" ");
      LocalDate exit = START.plusDays(Long.parseLong(unit.get("exit")));
      String outcome = unit.get("outcome");
      String cause = CAUSES.getOrDefault(outcome, "");
      sites.append("S%s,9901010%s,P%s%n".formatted(id, unit.get("stratum"), unit.get("cluster")));
      installs.append(
          "D%s,S%s,%s,%s,%s,%s,%s%n"
              .formatted(
                  id,
                  id,
                  START,
                  pipe[0],
                  pipe[1],
                  START.plusDays(Long.parseLong(unit.get("entry"))),
                  outcome.equals("9") ? exit : ""));
      revisits.append(
          cause.isEmpty()
              ? "D%s,%s,working,,%n".formatted(id, exit)
              : "D%s,%s,failed,%s,repaired%n".formatted(id, exit, cause));
    }
    for (CSVRecord visit : of(set, "later.csv")) {
      revisits.append(
          "D%s,%s,%s,,%s%n"
              .formatted(
                  visit.get("unit"),
                  START.plusDays(Long.parseLong(visit.get("day"))),
                  visit.get("condition"),
                  visit.get("condition").equals("failed") ? "repaired" : ""));
    }
    Files.writeString(
        folder.resolve("program.yaml"), "failure_dated: discovery\nbase_year: 2020\n");
    Files.writeString(folder.resolve("sites.csv"), sites);
    Files.writeString(folder.resolve("installs.csv"), installs);
    Files.writeString(folder.resolve("revisits.csv"), revisits);
    return SampleRun.of(folder);
  }

  private static List<CSVRecord> of(String set, String file) throws IOException {
    return SampleRun.read(FOREIGN.resolve(file)).stream()
        .filter(row -> row.get("set").equals(set))
        .toList();
  }

  /** Rows of a result table by the cells of some columns. */
  private static Map<List<String>, CSVRecord> keyed(
      JobResult result, String table, String... columns) {
    Map<List<String>, CSVRecord> rows = new HashMap<>();
    for (CSVRecord row : SampleRun.rows(result, table)) {
      List<String> key = List.of(columns).stream().map(column -> number(row.get(column))).toList();
      rows.putIfAbsent(key, row);
    }
    return rows;
  }

  private static String number(String cell) {
    return cell.endsWith(".0") ? cell.substring(0, cell.length() - 2) : cell;
  }

  private static void same(
      CSVRecord expected, String a, CSVRecord actual, String b, double relative) {
    assertTrue(actual != null, () -> "no row for " + expected);
    if (expected.get(a).isEmpty()) {
      return;
    }
    assertTrue(!actual.get(b).isEmpty(), () -> b + " is empty in " + actual + ", " + expected);
    double value = Double.parseDouble(expected.get(a));
    assertEquals(
        value,
        Double.parseDouble(actual.get(b)),
        Math.max(relative * Math.abs(value), 1e-12),
        () -> expected + " against " + b + " of " + actual);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "lung",
        "ovarian",
        "kidney",
        "rats",
        "colon",
        "pbc",
        "mgus",
        "mgus2",
        "heart",
        "aml",
        "bladder",
        "cgd",
        "retinopathy",
        "myeloid",
        "mgus_age",
        "transplant"
      })
  void whatRGives(String set) throws IOException {
    JobResult result = run(set);
    curves(set, result);
    tests(set, result);
    hazards(set, result);
    fits(set, result);
    incidence(set, result);
    repeats(set, result);
  }

  private static void curves(String set, JobResult result) throws IOException {
    Map<List<String>, CSVRecord> rows =
        keyed(result, "survival_curves", "method", "grouping", "group", "time_days");
    for (CSVRecord row : of(set, "curves.csv")) {
      CSVRecord actual =
          rows.get(List.of("product-limit", "pipe", row.get("group"), row.get("time")));
      for (String column :
          List.of("at_risk", "events", "survival", "std_error", "lower", "upper")) {
        same(row, column, actual, column, CLOSED);
      }
    }
    medians(set, result);
  }

  /**
   * Where the curve is one half over a stretch R takes its middle, the table its beginning; figures
   * stop at the last day with five at risk.
   */
  private static void medians(String set, JobResult result) throws IOException {
    Map<List<String>, CSVRecord> rows =
        keyed(result, "survival_summary", "method", "grouping", "group");
    for (CSVRecord row : of(set, "medians.csv")) {
      CSVRecord actual = rows.get(List.of("product-limit", "pipe", row.get("group")));
      for (String[] pair :
          new String[][] {
            {"median", "median_years"}, {"lower", "median_lower"}, {"upper", "median_upper"}
          }) {
        String expected = row.get(pair[0]);
        String cell = actual.get(pair[1]);
        double last = Double.parseDouble(actual.get("supported_days"));
        if (expected.isEmpty() || Double.parseDouble(expected) > last) {
          assertEquals("", cell, () -> pair[1] + " " + row + actual);
        } else {
          assertEquals(
              Double.parseDouble(expected),
              Double.parseDouble(cell) * 365.25,
              1e-6,
              () -> pair[1] + " " + row + actual);
        }
      }
    }
  }

  private static void tests(String set, JobResult result) throws IOException {
    Map<List<String>, CSVRecord> rows =
        keyed(result, "group_tests", "test", "grouping", "strata", "group_a");
    for (CSVRecord row : of(set, "tests.csv")) {
      String test =
          switch (row.get("test")) {
            case "gray 1" -> "gray pipe-plugged";
            case "gray 2" -> "gray ice";
            case "gray 9" -> "gray retired";
            default -> row.get("test");
          };
      CSVRecord actual = rows.get(List.of(test, "pipe", row.get("strata"), ""));
      same(row, "statistic", actual, "statistic", CLOSED);
      same(row, "df", actual, "df", CLOSED);
    }
  }

  private static void hazards(String set, JobResult result) throws IOException {
    Map<List<String>, CSVRecord> rows = keyed(result, "hazard_ratios", "model", "level");
    for (CSVRecord row : of(set, "hazards.csv")) {
      CSVRecord actual =
          rows.get(List.of(row.get("model").replace("pipe s", "pipe, s"), row.get("level")));
      same(row, "hazard_ratio", actual, "hazard_ratio", FITTED);
      assertEquals(row.get("reference"), actual.get("reference"));
      same(row, "model_se", actual, "model_log_std_error", FITTED);
      same(row, "robust_se", actual, "log_std_error", FITTED);
      same(row, "loglik", actual, "log_likelihood", CLOSED);
      same(row, "concordance", actual, "concordance", CLOSED);
      same(row, "proportionality_p", actual, "proportionality_p", FITTED);
    }
  }

  private static void fits(String set, JobResult result) throws IOException {
    Map<List<String>, CSVRecord> rows =
        keyed(result, "parametric_fits", "grouping", "group", "distribution");
    for (CSVRecord row : of(set, "fits.csv")) {
      CSVRecord actual = rows.get(List.of("pipe", row.get("group"), row.get("distribution")));
      same(row, "scale", actual, "scale_days", FITTED);
      same(row, "shape", actual, "shape", FITTED);
      same(row, "loglik", actual, "log_likelihood", CLOSED);
    }
  }

  private static void incidence(String set, JobResult result) throws IOException {
    Map<List<String>, CSVRecord> rows =
        keyed(result, "cumulative_incidence", "grouping", "group", "cause", "time_days");
    for (CSVRecord row : of(set, "incidence.csv")) {
      String cause = CAUSES.getOrDefault(row.get("outcome"), "retired");
      CSVRecord actual = rows.get(List.of("pipe", row.get("group"), cause, row.get("time")));
      same(row, "incidence", actual, "incidence", CLOSED);
      same(row, "std_error", actual, "std_error", CLOSED);
    }
  }

  private static void repeats(String set, JobResult result) throws IOException {
    Map<List<String>, CSVRecord> rows =
        keyed(result, "repeat_failures", "grouping", "group", "time_days");
    for (CSVRecord row : of(set, "repeats.csv")) {
      CSVRecord actual = rows.get(List.of("pipe", row.get("group"), row.get("time")));
      same(row, "at_risk", actual, "at_risk", CLOSED);
      same(row, "mean", actual, "mean_failures", CLOSED);
      same(row, "std_error", actual, "std_error", CLOSED);
    }
  }
}
