package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import pondtally.analysis.Scope;
import pondtally.check.UserError;

/** Reports about one funder or one watershed, on the sample. */
class ScopeSparkTest {

  private static final String FUNDER = "Ninefold Habitat Award";

  private static JobResult scoped(Scope scope) {
    return Job.run(
        new JobRequest(
                SampleRun.SAMPLE,
                (int) LocalDate.of(2026, 2, 1).toEpochDay(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                2)
            .about(scope));
  }

  private static double sum(List<CSVRecord> rows, String column) {
    return rows.stream().mapToDouble(row -> Double.parseDouble(row.get(column))).sum();
  }

  private static double whole(String table, String column) {
    return sum(
        SampleRun.rows(SampleRun.sample(), table).stream()
            .filter(row -> row.get("grouping").equals("all") && row.get("year").equals("all"))
            .filter(row -> !table.equals("properties") || row.get("property_type").equals("all"))
            .toList(),
        column);
  }

  /** The shares of all funders are the program, to the last digits. */
  @Test
  void sharesOfAllFundersAddUpToTheProgram() {
    List<CSVRecord> shares = SampleRun.rows(SampleRun.sample(), "funder_shares");
    assertEquals(
        SampleRun.rows(SampleRun.sample(), "devices").size(), sum(shares, "devices_shared"), 1e-9);
    assertEquals(1, sum(shares, "cash_share"), 1e-9);
    double cash = whole("costs", "build_usd") + whole("costs", "upkeep_usd");
    assertEquals(cash, sum(shares, "cash_usd"), 1e-9 * cash);
    double acreYears = whole("wetland", "acre_years");
    assertEquals(acreYears, sum(shares, "acre_years_shared"), 1e-9 * acreYears);
    double propertyYears = whole("properties", "property_years");
    assertEquals(propertyYears, sum(shares, "property_years_shared"), 1e-9 * propertyYears);
    double functional =
        sum(SampleRun.rows(SampleRun.sample(), "devices"), "functional_days") / 365.25;
    assertEquals(functional, sum(shares, "functional_device_years_shared"), 1e-9 * functional);
  }

  /** What the report of one funder counts is what the whole program's table says of that funder. */
  @Test
  void theReportOfOneFunderIsWhole() {
    JobResult result = scoped(new Scope(FUNDER, null));
    CSVRecord share =
        SampleRun.rows(SampleRun.sample(), "funder_shares").stream()
            .filter(row -> row.get("funder").equals(FUNDER))
            .findFirst()
            .orElseThrow();
    List<CSVRecord> devices = SampleRun.rows(result, "devices");
    assertEquals(Long.parseLong(share.get("devices")), devices.size());
    assertEquals(
        Double.parseDouble(share.get("functional_device_years")),
        sum(devices, "functional_days") / 365.25,
        1e-9);
    CSVRecord wetland =
        SampleRun.rows(result, "wetland").stream()
            .filter(row -> row.get("grouping").equals("all") && row.get("year").equals("all"))
            .findFirst()
            .orElseThrow();
    assertEquals(
        Double.parseDouble(share.get("acre_years")),
        Double.parseDouble(wetland.get("acre_years")),
        1e-9);
    assertEquals(FUNDER, result.facts().get("scope_funder"));
    List<CSVRecord> shares = SampleRun.rows(result, "funder_shares");
    assertEquals(1, shares.size());
    assertEquals(share.toList(), shares.get(0).toList());
    List<CSVRecord> funding = SampleRun.rows(result, "funding");
    assertFalse(funding.isEmpty());
    List<CSVRecord> before =
        SampleRun.rows(SampleRun.sample(), "funding").stream()
            .filter(row -> row.get("funder").equals(FUNDER))
            .toList();
    assertEquals(
        before.stream().map(CSVRecord::toList).toList(),
        funding.stream().map(CSVRecord::toList).toList());
    assertEquals(SampleRun.sample().account(), result.account());
    assertEquals(SampleRun.sample().issues(), result.issues());
  }

  /** The beginning of a code stands for every watershed within it. */
  @Test
  void aWatershedIsItsSitesAndDevices() {
    String within = "9901010102";
    JobResult result = scoped(new Scope(null, within));
    List<List<String>> before =
        SampleRun.rows(SampleRun.sample(), "devices").stream()
            .filter(row -> row.get("watershed").startsWith(within))
            .map(row -> List.of(row.get("device_id"), row.get("state"), row.get("functional_days")))
            .toList();
    assertFalse(before.isEmpty());
    assertEquals(
        before,
        SampleRun.rows(result, "devices").stream()
            .map(row -> List.of(row.get("device_id"), row.get("state"), row.get("functional_days")))
            .toList());
    assertEquals(within, result.facts().get("scope_watershed"));
  }

  @Test
  void anUnknownNameGetsTheNearest() {
    UserError error =
        assertThrows(UserError.class, () -> scoped(new Scope("Ninefold Habitat Awards", null)));
    assertEquals(2, error.exitCode());
    assertTrue(
        error.getMessage().contains("The nearest is Ninefold Habitat Award."), error.getMessage());
    UserError watershed = assertThrows(UserError.class, () -> scoped(new Scope(null, "77")));
    assertEquals(2, watershed.exitCode());
    assertTrue(watershed.getMessage().contains("There are: "), watershed.getMessage());
  }
}
