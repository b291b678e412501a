package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.UserError;
import pondtally.table.ResultTable;

/**
 * Programs at the edge of what can be counted: what is not known is empty, never zero, and nothing
 * is infinite.
 */
class EdgeProgramsSparkTest {

  private static final String SETTINGS = "base_year: 2024\nas_of: 2025-12-31\n";

  @TempDir private Path folder;

  private void file(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  private JobResult run() {
    JobResult result = SampleRun.of(folder);
    for (ResultTable table : result.tables()) {
      for (CSVRecord row : SampleRun.rows(result, table.name())) {
        for (String cell : row) {
          assertFalse(
              Set.of("NaN", "Infinity", "-Infinity", "∞").contains(cell),
              () -> table.name() + " " + row);
        }
      }
    }
    return result;
  }

  private static CSVRecord all(JobResult result, String table) {
    return SampleRun.rows(result, table).stream()
        .filter(row -> row.get("group").equals("all"))
        .filter(row -> !row.isMapped("year") || row.get("year").equals("all"))
        .findFirst()
        .orElseThrow();
  }

  private void sites() throws IOException {
    file("program.yaml", SETTINGS);
    file("sites.csv", "site_id,watershed\nA,990101010101\nB,990101010101\n");
  }

  @Test
  void oneDeviceAndNothingElse() throws IOException {
    sites();
    file("installs.csv", "device_id,site_id,installed_on\nA-1,A,2023-05-01\n");
    JobResult result = run();
    CSVRecord device = SampleRun.rows(result, "devices").get(0);
    assertEquals("unverified", device.get("state"));
    assertEquals("0", device.get("failures"));
    assertEquals("0", device.get("verified_days"));
    assertEquals("", device.get("last_visit_on"));
    assertEquals("", device.get("cost_recorded_usd"));
    // A device without follow-up has no curve and no rate.
    assertEquals(List.of(), SampleRun.rows(result, "survival_summary"));
    assertEquals(List.of(), SampleRun.rows(result, "failure_causes"));
    CSVRecord costs = all(result, "costs");
    assertEquals("1", costs.get("devices"));
    assertEquals("0", costs.get("devices_costed"));
    assertEquals("", costs.get("total_usd"));
    CSVRecord wetland = all(result, "wetland");
    assertEquals("0", wetland.get("sites_measured"));
    assertEquals("", wetland.get("acre_years"));
  }

  @Test
  void oneDeviceVisitedOnce() throws IOException {
    sites();
    file("installs.csv", "device_id,site_id,installed_on\nA-1,A,2025-05-01\n");
    file("revisits.csv", "device_id,visited_on,condition\nA-1,2025-10-01,working\n");
    JobResult result = run();
    CSVRecord survival = all(result, "survival_summary");
    assertEquals("0", survival.get("failures"));
    // With one device at risk no figure is given for a year that was not seen.
    assertEquals("", survival.get("survival_1y"));
    assertEquals("", survival.get("median_years"));
    CSVRecord rate = all(result, "failure_rates");
    assertEquals("0", rate.get("failures"));
    assertEquals(153 / 365.25, Double.parseDouble(rate.get("device_years")), 1e-12);
    assertEquals("0", rate.get("lower"));
    // Garwood 1936, no event: upper limit -ln(0.025) a unit of exposure.
    assertEquals(
        100 * -Math.log(0.025) / (153 / 365.25), Double.parseDouble(rate.get("upper")), 1e-6);
  }

  @Test
  void noFailuresInManyDevices() throws IOException {
    sites();
    StringBuilder installs = new StringBuilder("device_id,site_id,installed_on\n");
    StringBuilder visits = new StringBuilder("device_id,visited_on,condition\n");
    for (int i = 10; i < 30; i++) {
      installs.append("D%s,%s,2020-05-01%n".formatted(i, i % 2 == 0 ? "A" : "B"));
      visits.append("D%s,2024-06-%s,working%n".formatted(i, i));
    }
    file("installs.csv", installs.toString());
    file("revisits.csv", visits.toString());
    JobResult result = run();
    CSVRecord survival = all(result, "survival_summary");
    assertEquals("20", survival.get("devices"));
    assertEquals("1", survival.get("survival_1y"));
    assertEquals("1", survival.get("survival_1y_upper"));
    // No failure among n at risk: lower limit 0.025^(1/n).
    assertEquals(
        Math.pow(0.025, 1 / 20.0), Double.parseDouble(survival.get("survival_1y_lower")), 1e-12);
    assertEquals("", survival.get("median_years"));
    assertEquals(List.of(), SampleRun.rows(result, "failure_causes"));
  }

  @Test
  void costsBeforeThePriceIndexAreListedAndUnknown() throws IOException {
    sites();
    file(
        "installs.csv",
        "device_id,site_id,installed_on,labor_hours\nA-1,A,1999-05-01,2\nB-1,B,2024-05-01,1\n");
    file(
        "materials.csv",
        """
        device_id,item,quantity,total_cost_usd
        A-1,pipe,1,1000
        B-1,pipe,1,500
        """);
    JobResult result = run();
    CSVRecord costs = all(result, "costs");
    // 500 of 2024 and three paid hours at the default rate; 1000 of 1999 has no index.
    double rate = Double.parseDouble(result.facts().get("labor_rate_usd"));
    assertEquals(500 + 3 * rate, Double.parseDouble(costs.get("total_usd")), 1e-9);
    assertTrue(
        result.issues().stream().anyMatch(issue -> issue.message().contains("1999")),
        result.issues().toString());
  }

  private static void allEmpty(CSVRecord row, String... columns) {
    for (String column : columns) {
      assertEquals("", row.get(column), column + " of " + row);
    }
  }

  private static CSVRecord benefit(JobResult result, String basis) {
    return SampleRun.rows(result, "benefit_cost").stream()
        .filter(row -> row.get("group").equals("all") && row.get("basis").equals(basis))
        .findFirst()
        .orElseThrow();
  }

  /** Twelve devices with failures and damage, and not one dollar on record. */
  @Test
  void noCostRecordsAtAll() throws IOException {
    file("program.yaml", SETTINGS);
    StringBuilder sites = new StringBuilder("site_id,damage_cost_per_year_before_usd\n");
    StringBuilder installs = new StringBuilder("device_id,site_id,installed_on\n");
    StringBuilder visits = new StringBuilder("device_id,visited_on,condition,action\n");
    for (int i = 10; i < 22; i++) {
      sites.append("S%s,900%n".formatted(i));
      installs.append("D%s,S%s,2018-05-%s%n".formatted(i, i, i));
      for (int year = 2019; year <= 2025; year++) {
        boolean failed = year == 2019 + i % 4;
        visits.append(
            "D%s,%s-05-%s,%s%n".formatted(i, year, i, failed ? "failed,repaired" : "working,"));
      }
    }
    file("sites.csv", sites.toString());
    file("installs.csv", installs.toString());
    file("revisits.csv", visits.toString());
    JobResult result = run();
    CSVRecord costs = all(result, "costs");
    assertEquals("12", costs.get("devices"));
    assertEquals("0", costs.get("devices_costed"));
    allEmpty(costs, "build_usd", "upkeep_usd", "in_kind_usd", "estimated_usd", "total_usd");
    for (CSVRecord row : SampleRun.rows(result, "cost_effectiveness")) {
      allEmpty(row, "numerator_usd", "denominator", "value_usd", "lower", "upper");
      assertEquals("0", row.get("clusters"));
      assertTrue(Long.parseLong(row.get("clusters_left_out")) > 0, row.toString());
    }
    for (String basis : List.of("to-date", "projected")) {
      CSVRecord row = benefit(result, basis);
      allEmpty(row, "cost_usd", "benefit_usd", "net_usd", "ratio", "ratio_lower", "ratio_upper");
      allEmpty(row, "chance_above_one", "payback_year", "equivalent_annual_usd");
      assertEquals("12", row.get("sites_without_cost"));
      assertEquals("0", row.get("sites_without_damage"));
    }
    // How long devices last is known all the same.
    assertFalse(SampleRun.rows(result, "benefit_years").isEmpty());
    assertEquals(List.of(), SampleRun.rows(result, "sensitivity"));
    assertEquals(List.of(), SampleRun.rows(result, "funding"));
  }

  /** One site, costed and visited: a ratio of one cluster has no limits and no share above 1. */
  @Test
  void oneSiteWithCostAndDamage() throws IOException {
    file("program.yaml", SETTINGS);
    file("sites.csv", "site_id,damage_cost_per_year_before_usd\nA,1000\n");
    file("installs.csv", "device_id,site_id,installed_on\nA-1,A,2024-01-01\n");
    file(
        "materials.csv",
        "device_id,item,quantity,total_cost_usd,purchased_on\nA-1,pipe,1,5000,2024-01-01\n");
    file("revisits.csv", "device_id,visited_on,condition\nA-1,2024-12-31,working\n");
    JobResult result = run();
    CSVRecord toDate = benefit(result, "to-date");
    // 365 verified days at 1,000 a year of 365.25 days, against 5,000 spent.
    double avoided = 1000 * 365 / 365.25;
    assertEquals(avoided, Double.parseDouble(toDate.get("benefit_usd")), 1e-9);
    assertEquals(5000, Double.parseDouble(toDate.get("cost_usd")), 1e-9);
    assertEquals(avoided - 5000, Double.parseDouble(toDate.get("net_usd")), 1e-9);
    assertEquals(avoided / 5000, Double.parseDouble(toDate.get("ratio")), 1e-12);
    allEmpty(toDate, "ratio_lower", "ratio_upper", "chance_above_one");
    assertEquals("1", toDate.get("clusters"));
    CSVRecord projected = benefit(result, "projected");
    allEmpty(projected, "cost_usd", "benefit_usd", "net_usd", "ratio", "fit");
    for (CSVRecord row : SampleRun.rows(result, "cost_effectiveness")) {
      allEmpty(row, "lower", "upper");
    }
    // Nothing to divide by: a unit cost is unknown, and the dollars are still shown.
    CSVRecord perProperty =
        SampleRun.rows(result, "cost_effectiveness").stream()
            .filter(row -> row.get("measure").equals("per-property"))
            .findFirst()
            .orElseThrow();
    assertEquals("0", perProperty.get("denominator"));
    assertEquals("5000", perProperty.get("numerator_usd"));
    assertEquals("", perProperty.get("value_usd"));
  }

  /** Spending after the last index year takes its index, is in the sums, and is marked. */
  @Test
  void costsAfterThePriceIndexAreProvisional() throws IOException {
    file("program.yaml", "base_year: 2021\nas_of: 2025-12-31\n");
    file("prices.csv", "year,index\n2020,100\n2021,110\n2022,120\n");
    file("sites.csv", "site_id\nA\n");
    file("installs.csv", "device_id,site_id,installed_on\nA-1,A,2024-01-01\n");
    file(
        "materials.csv",
        """
        device_id,item,quantity,total_cost_usd,purchased_on
        A-1,pipe,1,120,2024-01-01
        A-1,post,1,60,2022-01-01
        A-1,wire,1,77,2019-01-01
        """);
    CSVRecord costs = all(run(), "costs");
    // 120 and 60 of an index of 120 in dollars of an index of 110.
    assertEquals(165, Double.parseDouble(costs.get("total_usd")), 1e-9);
    assertEquals("1", costs.get("lines_index_provisional"));
    assertEquals(110, Double.parseDouble(costs.get("index_provisional_usd")), 1e-9);
    assertEquals("index-provisional", costs.get("index_note"));
    assertEquals("1", costs.get("lines_before_index"));
    assertEquals("77", costs.get("before_index_nominal_usd"));
  }

  /** Off by default; a line of its own in dollars of the base year, and the ratio stays. */
  @Test
  void valueOfWetlandIsARangeOfItsOwn() throws IOException {
    String worth = "wetland_value: {low: 120, high: 600, source: Marsh Review 4, year: 2020}\n";
    String settings = "base_year: 2021\nas_of: 2024-12-31\n";
    file("program.yaml", settings);
    file("prices.csv", "year,index\n2020,100\n2021,110\n2022,120\n2023,121\n2024,122\n");
    file(
        "sites.csv",
        "site_id,wetland_acres_before,damage_cost_per_year_before_usd\nA,10,700\nB,,\n");
    file(
        "installs.csv",
        "device_id,site_id,installed_on,install_cost_usd\nA-1,A,2021-01-01,900\nB-1,B,2021-01-01,\n");
    file("revisits.csv", "device_id,visited_on,condition\nA-1,2024-12-31,working\n");
    JobResult without = run();
    assertTrue(without.tables().stream().noneMatch(t -> t.name().equals("wetland_value")));
    file("program.yaml", settings + worth);
    JobResult with = run();
    CSVRecord value = all(with, "wetland_value");
    double acreYears = 10 * 1460 / 365.25;
    assertEquals(acreYears, Double.parseDouble(value.get("acre_years")), 1e-9);
    assertEquals(132, Double.parseDouble(value.get("low_usd_per_acre_year")), 1e-9);
    assertEquals(132 * acreYears, Double.parseDouble(value.get("low_usd")), 1e-6);
    assertEquals(660 * acreYears, Double.parseDouble(value.get("high_usd")), 1e-6);
    assertEquals("2020", value.get("source_year"));
    assertEquals("Marsh Review 4", value.get("source"));
    for (String table : List.of("benefit_cost", "sensitivity", "cost_effectiveness")) {
      assertEquals(
          SampleRun.rows(without, table).stream().map(CSVRecord::toList).toList(),
          SampleRun.rows(with, table).stream().map(CSVRecord::toList).toList());
    }
    file("program.yaml", settings + worth.replace("2020", "1950"));
    assertEquals(3, assertThrows(UserError.class, this::run).exitCode());
    file("program.yaml", settings + worth.replace(", year: 2020", ""));
    assertEquals(3, assertThrows(UserError.class, this::run).exitCode());
  }

  @Test
  void emptyFolder() {
    UserError error = assertThrows(UserError.class, this::run);
    assertEquals(3, error.exitCode());
  }

  @Test
  void onlyFilesThatAreNoTables() throws IOException {
    file("notes.txt", "call the road office");
    file("lunch.csv", "who,what\nme,soup\n");
    UserError error = assertThrows(UserError.class, this::run);
    assertEquals(3, error.exitCode());
  }

  @Test
  void onlyABrokenWorkbook() throws IOException {
    file("installs.xlsx", "this is no workbook");
    UserError error = assertThrows(UserError.class, this::run);
    assertEquals(3, error.exitCode());
    assertTrue(error.getMessage().contains("installs.xlsx"), error.getMessage());
  }

  @Test
  void sitesButNoInstallRecord() throws IOException {
    sites();
    UserError error = assertThrows(UserError.class, this::run);
    assertEquals(3, error.exitCode());
    assertTrue(error.getMessage().contains("install"), error.getMessage());
  }

  /** Nobody knows what it holds, so figures without it would be wrong. */
  @Test
  void aBrokenWorkbookBesideGoodFilesStopsTheRun() throws IOException {
    sites();
    file("installs.csv", "device_id,site_id,installed_on\nD1,A,2024-05-01\n");
    file("revisits.xlsx", "this is no workbook");
    UserError error = assertThrows(UserError.class, this::run);
    assertEquals(3, error.exitCode());
    assertEquals(
        "revisits.xlsx: The file cannot be read: it is not a workbook, or it is broken. Nothing of"
            + " it is counted. A report without what is missing would be wrong, so none is made."
            + " Mend the file, or move it out of the program folder, and run again.",
        error.getMessage());
  }
}
