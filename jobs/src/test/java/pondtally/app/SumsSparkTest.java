package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Dollars, failures and days of the sample add up: over the groups of every grouping, and over the
 * years.
 */
class SumsSparkTest {

  private static final double HALF_A_CENT = 0.005;

  @TempDir private Path folder;

  /** Sum of a column by grouping, for one year label. */
  private static SortedMap<String, Double> byGrouping(
      List<CSVRecord> rows, String year, String column) {
    SortedMap<String, Double> sums = new TreeMap<>();
    for (CSVRecord row : rows) {
      if (!row.isMapped("year") || row.get("year").equals(year)) {
        sums.merge(row.get("grouping"), amount(row, column), Double::sum);
      }
    }
    return sums;
  }

  private static double amount(CSVRecord row, String column) {
    return row.get(column).isEmpty() ? 0 : Double.parseDouble(row.get(column));
  }

  private static void addsUpOverGroups(List<CSVRecord> rows, String column, double tolerance) {
    for (String year : rows.stream().map(row -> row.get("year")).distinct().toList()) {
      SortedMap<String, Double> sums = byGrouping(rows, year, column);
      assertEquals(9, sums.size(), "groupings of " + year);
      sums.forEach(
          (grouping, sum) ->
              assertEquals(
                  sums.get("all"), sum, tolerance, column + " of " + grouping + " in " + year));
    }
  }

  private static void addsUpOverYears(List<CSVRecord> rows, String column, double tolerance) {
    SortedMap<String, Double> years = new TreeMap<>();
    SortedMap<String, Double> lifetime = new TreeMap<>();
    for (CSVRecord row : rows) {
      SortedMap<String, Double> to = row.get("year").equals("all") ? lifetime : years;
      to.merge(row.get("grouping") + " / " + row.get("group"), amount(row, column), Double::sum);
    }
    assertEquals(lifetime.keySet(), years.keySet());
    lifetime.forEach(
        (group, sum) -> assertEquals(sum, years.get(group), tolerance, column + " of " + group));
  }

  @Test
  void costsAddUpOverGroupsAndYears() {
    List<CSVRecord> rows = SampleRun.rows(SampleRun.sample(), "costs");
    for (String column :
        List.of("build_usd", "upkeep_usd", "in_kind_usd", "total_usd", "volunteer_hours")) {
      addsUpOverGroups(rows, column, HALF_A_CENT);
      addsUpOverYears(rows, column, HALF_A_CENT);
    }
    addsUpOverGroups(rows, "devices", 0);
    addsUpOverGroups(rows, "devices_costed", 0);
  }

  @Test
  void totalIsWhatItsPartsAre() {
    for (CSVRecord row : SampleRun.rows(SampleRun.sample(), "costs")) {
      if (!row.get("total_usd").isEmpty()) {
        assertEquals(
            amount(row, "build_usd") + amount(row, "upkeep_usd") + amount(row, "in_kind_usd"),
            amount(row, "total_usd"),
            HALF_A_CENT);
      }
    }
  }

  @Test
  void devicesAndSitesCostWhatTheProgramCost() {
    double program =
        byGrouping(SampleRun.rows(SampleRun.sample(), "costs"), "all", "total_usd").get("all");
    assertTrue(program > 0);
    assertEquals(
        program,
        SampleRun.rows(SampleRun.sample(), "devices").stream()
            .mapToDouble(row -> amount(row, "cost_recorded_usd"))
            .sum(),
        HALF_A_CENT);
    assertEquals(
        program,
        SampleRun.rows(SampleRun.sample(), "sites").stream()
            .mapToDouble(row -> amount(row, "total_usd"))
            .sum(),
        HALF_A_CENT);
  }

  @Test
  void failuresAndDeviceYearsAddUp() {
    List<CSVRecord> rows = SampleRun.rows(SampleRun.sample(), "failure_rates");
    addsUpOverGroups(rows, "failures", 0);
    addsUpOverYears(rows, "failures", 0);
    addsUpOverGroups(rows, "device_years", 1e-9 * 1e3);
    addsUpOverYears(rows, "device_years", 1e-9 * 1e3);
    assertEquals(
        byGrouping(rows, "all", "failures").get("all"),
        SampleRun.rows(SampleRun.sample(), "devices").stream()
            .mapToDouble(row -> amount(row, "failures"))
            .sum(),
        0);
  }

  /** A device replaced by another design counts once, in the groups of its first life. */
  @Test
  void devicesWithFailureTimeAddUp() {
    SortedMap<String, Double> wholes = new TreeMap<>();
    for (String table : List.of("failure_rates", "survival_summary")) {
      SortedMap<String, Double> devices =
          byGrouping(
              SampleRun.rows(SampleRun.sample(), table).stream()
                  .filter(
                      row -> !row.isMapped("method") || row.get("method").equals("product-limit"))
                  .toList(),
              "all",
              "devices");
      for (String grouping :
          List.of("pipe", "kind", "watershed", "crew", "cohort", "build", "setting")) {
        assertEquals(devices.get("all"), devices.get(grouping), 0, table + " by " + grouping);
      }
      wholes.put(table, devices.get("all"));
    }
    assertEquals(wholes.get("survival_summary"), wholes.get("failure_rates"), 0);
  }

  @Test
  void causesAddUpToFailures() {
    SortedMap<String, Double> failures = new TreeMap<>();
    SortedMap<String, Double> causes = new TreeMap<>();
    for (CSVRecord row : SampleRun.rows(SampleRun.sample(), "failure_rates")) {
      if (row.get("year").equals("all") && amount(row, "failures") > 0) {
        failures.put(row.get("grouping") + " / " + row.get("group"), amount(row, "failures"));
      }
    }
    for (CSVRecord row : SampleRun.rows(SampleRun.sample(), "failure_causes")) {
      causes.merge(
          row.get("grouping") + " / " + row.get("group"), amount(row, "failures"), Double::sum);
    }
    assertFalse(failures.isEmpty());
    assertEquals(failures, causes);
  }

  /** Pipe bought in December for a device put in in April is that December's year's money. */
  @Test
  void materialBoughtTheYearBeforeIsInThatYear() throws IOException {
    Files.writeString(folder.resolve("program.yaml"), "base_year: 2024\nas_of: 2024-12-31\n");
    Files.writeString(folder.resolve("sites.csv"), "site_id\nA\n");
    Files.writeString(
        folder.resolve("installs.csv"), "device_id,site_id,installed_on\nA-1,A,2024-04-10\n");
    Files.writeString(
        folder.resolve("materials.csv"),
        """
        device_id,item,quantity,total_cost_usd,purchased_on
        A-1,pipe,1,304.7020,2023-12-12
        A-1,post,1,50,2024-04-01
        """);
    List<CSVRecord> rows = SampleRun.rows(SampleRun.of(folder), "costs");
    addsUpOverYears(rows, "build_usd", HALF_A_CENT);
    // 304.702 x 313.689 / 304.702 (index of 2024 over index of 2023)
    assertEquals(313.69, byGrouping(rows, "2023", "build_usd").get("all"), HALF_A_CENT);
    assertEquals(50, byGrouping(rows, "2024", "build_usd").get("all"), HALF_A_CENT);
    assertEquals(363.69, byGrouping(rows, "all", "build_usd").get("all"), HALF_A_CENT);
  }
}
