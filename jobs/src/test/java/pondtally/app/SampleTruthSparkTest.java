package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Twelve devices and two ponds of the sample, worked by hand from the partners' rows as they stand
 * in {@code sample-data}, to the cent, the day and the acre.
 *
 * <p>Money is 2024 dollars: materials, lump sums and visit costs times index(2024) / index(year),
 * paid hours x 32.00 and volunteer hours x 33.49 as they are. Index (US consumer price index, all
 * urban consumers, annual averages, Bureau of Labor Statistics, series CUUR0000SA0): 2017 245.120,
 * 2018 251.107, 2019 255.657, 2020 258.811, 2021 270.970, 2022 292.655, 2023 304.702, 2024 313.689,
 * 2025 321.943 (eleven months). A year is 365.25 days. The data cut is 2025-12-31.
 */
class SampleTruthSparkTest {

  private static final double HALF_A_CENT = 0.005;
  private static final double LAST_PRINTED_DIGIT = 5e-7;

  @TempDir private Path folder;

  private static CSVRecord device(String id) {
    return SampleRun.rows(SampleRun.sample(), "devices").stream()
        .filter(row -> row.get("device_id").equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static void check(
      CSVRecord device,
      String entryOn,
      String lastVisitOn,
      String state,
      int failures,
      String firstFailureWithin,
      double verifiedDays,
      double functionalDays,
      double costUsd) {
    assertEquals(entryOn, device.get("entry_on"));
    assertEquals(lastVisitOn, device.get("last_visit_on"));
    assertEquals(state, device.get("state"));
    assertEquals(Integer.toString(failures), device.get("failures"));
    assertEquals(
        firstFailureWithin,
        "("
            + device.get("first_failure_after_days")
            + ", "
            + device.get("first_failure_by_days")
            + "]");
    assertEquals(verifiedDays, number(device, "verified_days"), 0);
    assertEquals(functionalDays, number(device, "functional_days"), 0);
    assertEquals(costUsd, number(device, "cost_recorded_usd"), HALF_A_CENT);
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /**
   * Lump sum; failed and repaired. Installed 2022-10-10; 12-01 working, 2023-03-08 failed and
   * repaired, then working to 2025-06-03. Failure in (52, 149], midpoint 100.5, down 48.5 days of
   * 967. Cost: 1680 x 313.689 / 292.655 = 1800.7474; visit 74.17 x 313.689 / 304.702 = 76.3576;
   * hours 0.5 + 7 + 0.5 + 1.25 + 1 + 0.5 = 10.75 x 32 = 344.
   */
  @Test
  void lumpSumFailedAndRepaired() {
    check(
        device("BF-D06"),
        "2022-10-10",
        "2025-06-03",
        "working",
        1,
        "(52, 149]",
        967,
        918.5,
        2221.10);
  }

  /**
   * Not seen since 2023-09-21, 832 days before the cut and more than 2 x 180: unverified, 485 days
   * after 2022-05-24. Cost: 1230 x 313.689 / 292.655 = 1318.4038; hours 1.25 + 2.75 = 4 x 32 = 128.
   */
  @Test
  void longUnseen() {
    check(device("BF-D02"), "2022-05-24", "2023-09-21", "unverified", 0, "(, ]", 485, 485, 1446.40);
  }

  /**
   * Late tracked, failed, repaired, retired. Installed 2017-09-23, followed from 2020-05-01 (age
   * 951); working 2022-10-07 (1840), failed and repaired 2023-04-11 (2026): down from 1933, 93
   * days; last visit 2024-03-05, 1404 days after entry; retired 2024-07-19 by its install row.
   * Cost: materials 245.91 + 39.32 + 206.31 + 27.46 + 20.58 + 24.16 = 563.74 x 313.689 / 245.120 =
   * 721.4383; visit 159.48 x 313.689 / 304.702 = 164.1837; hours 26 + 0.5 + 0.75 + 1 + 1 + 1 + 1 +
   * 5.25 + 1.25 + 1 = 38.75 x 32 = 1240.
   */
  @Test
  void lateTrackedFailedAndRetired() {
    check(
        device("LM-016-A"),
        "2020-05-01",
        "2024-03-05",
        "retired",
        1,
        "(1840, 2026]",
        1404,
        1311,
        2125.62);
  }

  /**
   * Late tracked; lump sum of 1500 beside lines: the lines and hours win. Entered 2020-05-01, last
   * visit 2023-05-12: 1106 days; the dam was abandoned 2023-07-20. Cost: materials 429.52 + 46.64 +
   * 25.75 + 198.74 + 25.83 + 20.48 + 33.03 = 779.99 x 313.689 / 245.120 = 998.1806; visit 192.02 x
   * 313.689 / 270.970 = 222.2925 (a repair of a device that worked: no failure); hours 19.5 + 1 + 1
   * + 1.25 + 6.5 + 1 + 0.75 + 1.5 = 32.5 x 32 = 1040.
   */
  @Test
  void linesWinOverLumpSum() {
    check(
        device("LM-010-A"), "2020-05-01", "2023-05-12", "retired", 0, "(, ]", 1106, 1106, 2260.47);
  }

  /**
   * Removed at the visit of 2021-03-25, 328 days after entry on 2020-05-01. Cost: 276.75 + 30.04 +
   * 21.78 + 58.91 = 387.48 x 313.689 / 251.107 = 484.0494; visit 29.51 x 313.689 / 270.970 =
   * 34.1624; hours 20.5 + 1.75 + 3.25 = 25.5 x 32 = 816.
   */
  @Test
  void removed() {
    check(device("LM-018-A"), "2020-05-01", "2021-03-25", "retired", 0, "(, ]", 328, 328, 1334.21);
  }

  /**
   * Midpoint on a half day; found retired. Installed 2020-04-03; working 2020-10-07 (187), failed
   * and cleaned 2022-04-05 (732): midpoint 459.5, down 272.5 days; retired 2025-01-25 (1758). Cost:
   * 235.40 + 33.90 + 172.16 + 28.76 + 21.79 + 30.48 + 159.85 = 682.34 x 313.689 / 258.811 =
   * 827.0226; hours 18.5 + 2.5 + 1.25 + 1.75 + 0.75 + 1 + 1.25 + 1 + 1 = 29 x 32 = 928.
   */
  @Test
  void midpointOnHalfDay() {
    check(
        device("OR-008-A"),
        "2020-04-03",
        "2025-01-25",
        "retired",
        1,
        "(187, 732]",
        1758,
        1485.5,
        1755.02);
  }

  /**
   * Failed and replaced on 2025-09-30, its last visit, with a second install row of that day: one
   * device, working, design of the first row. Working 2025-07-12 (1187), failed 09-30 (1267): down
   * 40 days. Cost: 679.20 + 57.10 + 29.75 + 224.52 + 33.06 + 22.45 + 33 + 176.41 = 1255.49 x
   * 313.689 / 292.655 = 1345.7262; 1057.20 + 137.10 + 33.20 + 245.52 + 38.42 + 32.59 + 40.64 =
   * 1584.67 and the visit's 165.86 x 313.689 / 321.943 = 1705.6494; hours 13.5 + 1 + 2.5 + 0.75 +
   * 1.75 + 2.75 + 0.75 + 14.5 = 37.5 x 32 = 1200.
   */
  @Test
  void replacedWithSecondInstallRow() {
    CSVRecord device = device("OR-010-B");
    check(device, "2022-04-12", "2025-09-30", "working", 1, "(1187, 1267]", 1267, 1227, 4251.38);
    assertEquals("single 12 in", device.get("pipe"));
  }

  /**
   * Two repairs, one of them on a device that worked. Installed 2022-06-10; working 2023-10-20
   * (497), failed 2024-03-21 (650): midpoint 573.5, down 76.5 of 1181 days. Cost: 466.40 + 32.11 +
   * 32.80 + 196.96 + 30.58 + 23.85 + 33.20 + 156.03 = 971.93 x 313.689 / 292.655 = 1041.7855;
   * visits 105.10 + 113.85 = 218.95; hours 21 + 0.75 + 1.25 + 1 + 0.5 + 2.75 + 4.5 + 0.5 + 0.75 =
   * 33 x 32 = 1056.
   */
  @Test
  void twoRepairsOneFailure() {
    check(
        device("OR-054-B"),
        "2022-06-10",
        "2025-09-03",
        "working",
        1,
        "(497, 650]",
        1181,
        1104.5,
        2316.74);
  }

  /**
   * Never visited. Cost: 372 + 31.24 + 42.56 + 267.24 + 35.46 + 25.94 + 35.36 = 809.80 x 313.689 /
   * 321.943 = 789.0383; hours 16.5 x 32 = 528.
   */
  @Test
  void neverVisited() {
    check(device("OR-014-B"), "2025-11-13", "", "unverified", 0, "(, ]", 0, 0, 1317.04);
  }

  /**
   * Given material and volunteers; reduced is no failure. Installed 2023-09-15; reduced 2025-03-13
   * (545), failed and repaired 2025-08-26 (711): midpoint 628, down 83 of 822 days. Cost: 335.60 +
   * 23.85 (in kind) + 36.65 + 222.76 (in kind) + 37.86 + 24.33 + 31.76 = 712.81 x 313.689 / 304.702
   * = 733.8338; visit 169.31 x 313.689 / 321.943 = 164.9692; 5.3 h x 32 = 169.60; volunteers 23.3 +
   * 1 + 0.75 + 0.5 + 0.5 + 6.25 + 1.25 = 33.55 x 33.49 = 1123.5895.
   */
  @Test
  void volunteersAndGivenMaterial() {
    check(
        device("QD-T28"),
        "2023-09-15",
        "2025-12-15",
        "working",
        1,
        "(545, 711]",
        822,
        739,
        2191.99);
  }

  /**
   * Replaced in kind without a second install row. Installed 2023-08-26; working 2025-03-20 (572),
   * failed and replaced 07-15 (689): midpoint 630.5, down 58.5 of 773 days. Cost: 295.20 + 235.88 +
   * 27.74 + 27.41 + 40.04 = 626.27 x 313.689 / 304.702 = 644.7414; 311.40 + 213.80 + 32.04 (in
   * kind) + 25.25 (in kind) + 36.56 = 619.05 x 313.689 / 321.943 = 603.1788; 4.6 h x 32 = 147.20;
   * volunteers 20.3 + 1 + 2.25 + 3.25 + 1 + 0.5 + 21.25 + 1.25 = 50.8 x 33.49 = 1701.2920.
   */
  @Test
  void replacedByVolunteers() {
    check(
        device("QD-T48"),
        "2023-08-26",
        "2025-10-07",
        "working",
        1,
        "(572, 689]",
        773,
        714.5,
        3096.41);
  }

  /**
   * Metric partner (a 300 mm pipe is a 12 in pipe): found failed and removed on 2025-08-24, so the
   * failure counts and no competing end. Reduced 2025-04-01 (241), failed 08-24 (386): midpoint
   * 313.5 and down to the end. Cost: 1049.65 + 138.28 + 30.71 + 238.95 + 40.58 + 26.05 + 32.35 =
   * 1556.57; visit 56.56 x 313.689 / 321.943 = 55.1099; hours 23.5 + 2 + 1 + 4.25 = 30.75 x 32 =
   * 984.
   */
  @Test
  void failedAndRemoved() {
    CSVRecord device = device("TV-014-A");
    check(device, "2024-08-03", "2025-08-24", "retired", 1, "(241, 386]", 386, 313.5, 2595.68);
    assertEquals("dual 12 in", device.get("pipe"));
  }

  private static CSVRecord all(JobResult result, String table, String column, String value) {
    return SampleRun.rows(result, table).stream()
        .filter(row -> row.get("group").equals("all") && row.get(column).equals(value))
        .findFirst()
        .orElseThrow();
  }

  private static void checkAvoided(JobResult result, String year, String avoided) {
    checkAvoided(result, year, avoided, "1");
  }

  private static void checkAvoided(
      JobResult result, String year, String avoided, String sitesLeftOut) {
    CSVRecord row =
        SampleRun.rows(result, "removals_avoided").stream()
            .filter(r -> r.get("group").equals("all") && r.get("year").equals(year))
            .filter(r -> r.get("evidence").isEmpty())
            .findFirst()
            .orElseThrow();
    if (avoided.isEmpty()) {
      assertEquals("", row.get("avoided_computed"));
      assertEquals(sitesLeftOut, row.get("sites_left_out"));
    } else {
      assertEquals(
          Double.parseDouble(avoided), number(row, "avoided_computed"), LAST_PRINTED_DIGIT);
    }
  }

  /**
   * Site OR-024 with three devices and four measurements.
   *
   * <p>Functional: A from 2018-05-19 to 2019-08-11, again 09-10 to 2020-07-20 (763 days); B
   * 2018-05-19 to 2019-06-23 (400); C from 2019-06-20 to 2022-02-18 and a half (failed between
   * 2021-11-28 and 2022-05-12, replaced), to 2024-07-04 (failed between 2024-04-21, reduced, and
   * 09-16, cleaned), to 2025-10-07: 2301 - 82.5 - 74 = 2144.5. Some device of the three: 2018-05-19
   * to 2022-02-18.5 (1371.5 days), 2022-05-12 to 2024-07-04 (784), 2024-09-16 to 2025-10-07 (386) =
   * 2541.5 days. That A left because its dam was abandoned sets no area to zero: C went on.
   *
   * <p>Acres: 7.8 on 2018-05-18 (the day before entry), 6.94 on 2018-11-22, 7.95 on 2020-09-12,
   * 6.94 on 2023-10-04 and after. Acre-days: 187 x (7.795425532 + 6.94) / 2 = 1377.762287; 660 x
   * (6.94 + 7.95) / 2 = 4913.7; 524.5 x (7.95 + 7.475743062) / 2 = 4045.401118; 510 x (7.401145927
   * + 6.94) / 2 = 3656.992211; 274 x 6.94 = 1901.56; 386 x 6.94 = 2678.84: 18574.255616, that is
   * 50.853540 acre-years, of which (274 + 386) x 6.94 / 365.25 = 12.540452 after the last
   * measurement. Lowered: flooded 9.2 - 6.94 = 2.26.
   *
   * <p>Properties: one for all 2541.5 days, one from 2018-06-14, 26 days fewer: 5057 / 365.25.
   *
   * <p>Removals avoided, 4.5 a year before: 2018 (4.5 - 5) x 227 / 365; 2019 4.5 - 1; 2020 4.5 - 2;
   * 2021 4.5; 2022 4.5 x 282.5 / 365; 2024 4.5 x 292 / 366; 2023 and 2025 not reported.
   *
   * <p>Cost: A 974.62 x 313.689 / 251.107 + 103.77 x 313.689 / 255.657 + 27 x 32 = 2208.8440; B
   * 1153.29 x 313.689 / 251.107 + 25.5 x 32 = 2256.7180; C 627.78 x 313.689 / 255.657 + 1039.23 x
   * 313.689 / 292.655 + 55.5 x 32 = 3660.2034: 8125.7655 for two properties.
   */
  @Test
  void siteWithThreeDevicesAndFourMeasurements() throws IOException {
    FolderOfRows.write(
        folder, "orrenby-roads", Set.of("OR-024", "OR-024-A", "OR-024-B", "OR-024-C"));
    JobResult result = SampleRun.of(folder);
    CSVRecord site = SampleRun.rows(result, "sites").get(0);
    assertEquals("functional", site.get("state"));
    assertEquals("3", site.get("devices"));
    assertEquals("1", site.get("devices_functional"));
    assertEquals(6.94, number(site, "acres_retained"), 0);
    assertEquals("2", site.get("properties"));
    assertEquals(8125.77, number(site, "total_usd"), HALF_A_CENT);
    CSVRecord wetland = all(result, "wetland", "year", "all");
    assertEquals(7.8, number(wetland, "acres_before"), 0);
    assertEquals(50.853540, number(wetland, "acre_years"), LAST_PRINTED_DIGIT);
    assertEquals(12.540452, number(wetland, "acre_years_extrapolated"), LAST_PRINTED_DIGIT);
    assertEquals(6.94, number(wetland, "acres_retained_verified"), 0);
    assertEquals(0, number(wetland, "acres_retained_unverified"), 0);
    assertEquals(2.26, number(wetland, "acres_lost_to_lowering"), 1e-9);
    // In 2025: 279 days to the last visit at 6.94 acres.
    CSVRecord lastYear = all(result, "wetland", "year", "2025");
    assertEquals(5.301191, number(lastYear, "acre_years"), LAST_PRINTED_DIGIT);
    CSVRecord properties = all(result, "properties", "year", "all");
    assertEquals("2", properties.get("properties_protected"));
    assertEquals(13.845311, number(properties, "property_years"), LAST_PRINTED_DIGIT);
    checkAvoided(result, "2018", "-0.310959");
    checkAvoided(result, "2019", "3.5");
    checkAvoided(result, "2020", "2.5");
    checkAvoided(result, "2021", "4.5");
    checkAvoided(result, "2022", "3.482877");
    checkAvoided(result, "2023", "");
    checkAvoided(result, "2024", "3.590164");
    checkAvoided(result, "2025", "");
    CSVRecord perProperty =
        SampleRun.rows(result, "cost_effectiveness").stream()
            .filter(row -> row.get("group").equals("all"))
            .filter(row -> row.get("measure").equals("per-property"))
            .filter(row -> row.get("basis").equals("cash"))
            .findFirst()
            .orElseThrow();
    assertEquals(4062.88, number(perProperty, "value_usd"), HALF_A_CENT);
  }

  /**
   * Pond PN-03, which sites QD-007 (three devices) and QD-008 (one) share, counts once.
   *
   * <p>Functional: QD-T13 2021-05-11 to 2025-11-13, QD-T14 to 2025-12-26, QD-T15 to 2025-12-29:
   * 1693 days at QD-007; QD-T16 at QD-008 2024-05-03 to 2025-08-28 less the 75.5 days from the
   * midpoint of 2024-09-18 and 2025-02-16 on: 406.5. Acre-days: before the first measurement 330 x
   * 17.14 = 5656.2, then 882 x (17.14 + 20.06) / 2 = 16405.2, then 481 x 20.06 = 9648.86: 31710.26
   * or 86.817960 acre-years, 41.902971 of them outside the measurements. Nobody stated an area
   * before. One property at each site: (1693 + 406.5) / 365.25 = 5.748118 years.
   *
   * <p>Cost: T13 1434.68 x 313.689 / 270.970 + 5.2 x 32 + 40.2 x 33.49 = 3173.5584; T14 738.67 x
   * 313.689 / 292.655 + 6.8 x 32 + 40 x 33.49 = 2348.9604; T15 1078.77 + 5.8 x 32 + 29.7 x 33.49 =
   * 2259.0230; T16 1249.53 + 60.88 x 313.689 / 321.943 + 5.1 x 32 + 32.35 x 33.49 = 2555.4507.
   */
  @Test
  void sharedPondCountsOnce() throws IOException {
    FolderOfRows.write(
        folder,
        "quarrindale",
        Set.of("QD-007", "QD-008", "PN-03", "QD-T13", "QD-T14", "QD-T15", "QD-T16"));
    JobResult result = SampleRun.of(folder);
    CSVRecord wetland = all(result, "wetland", "year", "all");
    assertEquals("2", wetland.get("sites"));
    assertEquals("1", wetland.get("ponds"));
    assertEquals(86.817960, number(wetland, "acre_years"), LAST_PRINTED_DIGIT);
    assertEquals(41.902971, number(wetland, "acre_years_extrapolated"), LAST_PRINTED_DIGIT);
    assertEquals(20.06, number(wetland, "acres_retained_verified"), 0);
    assertEquals("", wetland.get("acres_before"));
    assertEquals("", wetland.get("acres_lost_to_lowering"));
    CSVRecord properties = all(result, "properties", "year", "all");
    assertEquals("2", properties.get("properties_protected"));
    assertEquals(5.748118, number(properties, "property_years"), LAST_PRINTED_DIGIT);
    CSVRecord costs = all(result, "costs", "year", "all");
    assertEquals(10336.99, number(costs, "total_usd"), HALF_A_CENT);
    assertEquals(142.25, number(costs, "volunteer_hours"), 1e-9);
    checkAvoided(result, "2025", "", "2");
  }
}
