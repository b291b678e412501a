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
}
