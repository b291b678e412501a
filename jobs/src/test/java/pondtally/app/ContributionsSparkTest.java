package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pondtally.table.ResultPackage;

/**
 * The rows in {@code contributions} add up again to every additive total of the tables, in every
 * group and year: to the cent, the thousandth of a day's year and of an acre, on the sample and on
 * programs drawn at random.
 */
class ContributionsSparkTest {

  private static final double HALF_A_CENT = 0.005;
  private static final double EXACT = 1e-6;
  private static final List<String> DEVICE_GROUPS =
      List.of("watershed", "pipe", "kind", "crew", "cohort", "build", "setting");

  /** What contributions of one subject come to, by {@code grouping/group/year/part}. */
  private final Map<String, Double> sums = new HashMap<>();

  private final Set<String> subjects = new TreeSet<>();
  private Path tables;
  private int checked;

  @TempDir private Path folder;

  private void run(Path program) throws IOException {
    tables = Files.createDirectory(folder.resolve("tables"));
    JobResult result =
        Job.run(
            new JobRequest(
                    program,
                    (int) LocalDate.of(2026, 8, 1).toEpochDay(),
                    OptionalInt.empty(),
                    OptionalInt.empty(),
                    2)
                .with(new LongTables(tables, false)));
    ResultPackage.write(tables, result.tables(), result.longTables(), result.facts());
    for (CSVRecord row : rows("contributions")) {
      add(row);
    }
    assertFalse(Files.exists(tables.resolve("runs")));
  }

  private List<CSVRecord> rows(String table) throws IOException {
    return SampleRun.read(tables.resolve(table + ".csv"));
  }

  private void add(CSVRecord row) {
    double amount = Double.parseDouble(row.get("amount"));
    subjects.add(row.get("subject"));
    List<String> groups = new ArrayList<>(List.of("all/all"));
    DEVICE_GROUPS.forEach(grouping -> groups.add(grouping + "/" + row.get(grouping)));
    groups.add("pipe-in-watershed/" + row.get("watershed") + " / " + row.get("pipe"));
    // What stands at the end of the period is a row of its own; flows add up over the years.
    Set<String> years = new TreeSet<>(List.of(row.get("year"), "every"));
    for (String group : groups) {
      for (String year : years) {
        for (String part : new TreeSet<>(List.of(row.get("part"), "every"))) {
          sums.merge(String.join("|", row.get("subject"), group, year, part), amount, Double::sum);
        }
      }
    }
  }

  private void same(
      String subject, String group, String year, String part, String cell, double tolerance) {
    double expected = cell.isEmpty() ? 0 : Double.parseDouble(cell);
    String key = String.join("|", subject, group, year, part);
    assertEquals(expected, sums.getOrDefault(key, 0.0), tolerance, key);
    checked++;
  }

  /** Flows: the lifetime row is the sum over years. */
  private void flow(String table, String column, String subject, Set<String> only, double tolerance)
      throws IOException {
    for (CSVRecord row : rows(table)) {
      if (only.isEmpty() || only.contains(row.get("grouping"))) {
        boolean byYear = row.isMapped("year") && !row.get("year").equals("all");
        String year = byYear ? row.get("year") : "every";
        String group = row.get("grouping") + "/" + row.get("group");
        same(subject, group, year, "every", row.get(column), tolerance);
      }
    }
  }

  private static final Set<String> ANY = Set.of();
  private static final Set<String> ALL = Set.of("all");
  private static final Set<String> PLACES = Set.of("all", "watershed", "setting");

  private void everyTotal() throws IOException {
    flow("costs", "build_usd", "build_usd", ANY, HALF_A_CENT);
    flow("costs", "upkeep_usd", "upkeep_usd", ANY, HALF_A_CENT);
    flow("costs", "in_kind_usd", "in_kind_usd", ANY, HALF_A_CENT);
    flow("costs", "estimated_usd", "estimated_usd", ANY, HALF_A_CENT);
    flow("costs", "volunteer_hours", "volunteer_hours", ANY, EXACT);
    flow("costs", "lines_before_index", "lines_before_index", ANY, 0);
    flow("costs", "before_index_nominal_usd", "before_index_nominal_usd", ANY, HALF_A_CENT);
    flow("costs", "lines_index_provisional", "lines_index_provisional", ANY, 0);
    flow("costs", "index_provisional_usd", "index_provisional_usd", ANY, HALF_A_CENT);
    lifetimeCounts();
    flow("failure_rates", "failures", "failures", ANY, 0);
    flow("failure_rates", "device_years", "device_years", ANY, EXACT);
    causes();
    lives();
    devices();
    flow("wetland", "acre_years", "acre_years", PLACES, EXACT);
    flow("wetland", "acre_years_extrapolated", "acre_years_extrapolated", PLACES, EXACT);
    stocks();
    properties();
    removals();
    toDate();
    funding();
  }

  private void lifetimeCounts() throws IOException {
    for (CSVRecord row : rows("costs")) {
      if (row.get("year").equals("all")) {
        String group = row.get("grouping") + "/" + row.get("group");
        same("devices", group, "all", "every", row.get("devices"), 0);
        same("devices_costed", group, "all", "every", row.get("devices_costed"), 0);
      }
    }
  }

  private void causes() throws IOException {
    for (CSVRecord row : rows("failure_causes")) {
      String group = row.get("grouping") + "/" + row.get("group");
      same("failures", group, "every", row.get("cause"), row.get("failures"), 0);
    }
  }

  private void lives() throws IOException {
    for (CSVRecord row : rows("survival_summary")) {
      if (row.get("method").equals("product-limit")) {
        String group = row.get("grouping") + "/" + row.get("group");
        same("lives", group, "every", "every", row.get("lives"), 0);
        same("first_failures", group, "every", "every", row.get("failures"), 0);
        same("life_years", group, "every", "every", row.get("device_years"), EXACT);
      }
    }
  }

  private void devices() throws IOException {
    for (String column : List.of("verified_days", "functional_days")) {
      double sum = rows("devices").stream().mapToDouble(r -> number(r, column)).sum();
      same(column, "all/all", "every", "every", Double.toString(sum), 0);
    }
  }

  private static double number(CSVRecord row, String column) {
    return row.get(column).isEmpty() ? 0 : Double.parseDouble(row.get(column));
  }

  private void stocks() throws IOException {
    for (CSVRecord row : rows("wetland")) {
      if (PLACES.contains(row.get("grouping"))) {
        String group = row.get("grouping") + "/" + row.get("group");
        for (String column :
            List.of(
                "acres_before",
                "acres_retained_verified",
                "acres_retained_unverified",
                "acres_lost_to_lowering")) {
          same(column, group, row.get("year"), "every", row.get(column), EXACT);
        }
      }
    }
  }

  private void properties() throws IOException {
    for (CSVRecord row : rows("properties")) {
      if (ALL.contains(row.get("grouping"))) {
        String type = row.get("property_type").equals("all") ? "every" : row.get("property_type");
        String year = row.get("year");
        String years = year.equals("all") ? "every" : year;
        same("property_years", "all/all", years, type, row.get("property_years"), EXACT);
        String count = row.get("properties_protected");
        same("properties_protected", "all/all", year, type, count, 0);
      }
    }
  }

  private void removals() throws IOException {
    for (CSVRecord row : rows("removals_avoided")) {
      if (PLACES.contains(row.get("grouping"))) {
        String group = row.get("grouping") + "/" + row.get("group");
        String year = row.get("year");
        String evidence = row.get("evidence");
        if (evidence.isEmpty()) {
          same("removals_avoided", group, year, "every", row.get("avoided_computed"), EXACT);
          same("removals_reported", group, year, "every", row.get("removals_reported"), EXACT);
        } else {
          same("removals_claimed", group, year, evidence, row.get("avoided_claimed"), EXACT);
        }
      }
    }
  }

  private void toDate() throws IOException {
    for (CSVRecord row : rows("benefit_cost")) {
      if (row.get("basis").equals("to-date")) {
        String group = row.get("grouping") + "/" + row.get("group");
        same("to_date_cost_usd", group, "every", "every", row.get("cost_usd"), HALF_A_CENT);
        same("to_date_benefit_usd", group, "every", "every", row.get("benefit_usd"), HALF_A_CENT);
      }
    }
  }

  private void funding() throws IOException {
    double paid = 0;
    for (CSVRecord row : rows("funding")) {
      String funder = row.get("funder");
      String start = row.get("period_start");
      String period = start.isEmpty() ? "" : start + "/" + row.get("period_end");
      same("funding_cash_usd", "all/all", period, funder, row.get("cash_usd"), HALF_A_CENT);
      same("funding_in_kind_usd", "all/all", period, funder, row.get("in_kind_usd"), HALF_A_CENT);
      String hours = row.get("volunteer_usd");
      same("funding_volunteer_usd", "all/all", period, funder, hours, HALF_A_CENT);
      String match = row.get("match_cash_usd");
      same("funding_match_cash_usd", "all/all", period, funder, match, HALF_A_CENT);
      paid += number(row, "cash_usd");
    }
    same("funding_cash_usd", "all/all", "every", "every", Double.toString(paid), HALF_A_CENT);
  }

  @Test
  void rowsOfTheSampleAddUpToEveryTotal() throws IOException {
    run(SampleRun.SAMPLE);
    everyTotal();
    assertTrue(checked > 3000, "compared " + checked);
    assertTrue(subjects.size() >= 25, subjects.toString());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void rowsOfARandomProgramAddUpToEveryTotal(long seed) throws IOException {
    Path program = Files.createDirectory(folder.resolve("program"));
    RandomProgram.write(program, seed, 40);
    run(program);
    everyTotal();
    assertTrue(checked > 1500, "compared " + checked);
  }

  /** Every row names a place that is there, and the file is in order. */
  @Test
  void everyContributionNamesARowOfAFile() throws IOException {
    run(SampleRun.SAMPLE);
    String before = "";
    for (CSVRecord row : rows("contributions")) {
      assertTrue(Files.isRegularFile(SampleRun.SAMPLE.resolve(row.get("file"))), row.toString());
      assertTrue(Integer.parseInt(row.get("row")) > 1, row.toString());
      String key = row.get("subject") + "\u0000" + row.get("site_id");
      assertTrue(key.compareTo(before) >= 0, before + " before " + key);
      before = key;
    }
  }
}
