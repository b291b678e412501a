package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * Every row of the sample is accounted for, and every fault planted in it is found at its place.
 */
class SampleAccountSparkTest {

  private static final Path LISTS = Path.of("src", "test", "resources", "pondtally", "sample");

  /** Faults of a row as a whole: which of its cells the issue points at is our choice. */
  private static final List<String> OF_THE_ROW =
      List.of("differing-install", "area-never-measured");

  @Test
  void everyRowOfEverySheetIsAccountedFor() throws IOException {
    TreeMap<String, String> expected = new TreeMap<>();
    for (CSVRecord row : SampleRun.read(LISTS.resolve("row-account.csv"))) {
      expected.put(
          row.get("file") + "#" + row.get("sheet"),
          "%s read %s = %d used or changed + %s set aside + %s duplicate"
              .formatted(
                  row.get("table"),
                  row.get("rows_read"),
                  Long.parseLong(row.get("used"))
                      + Long.parseLong(row.get("changed"))
                      + Long.parseLong(row.get("converted_by_heading")),
                  row.get("set_aside"),
                  row.get("duplicate")));
    }
    TreeMap<String, String> actual = new TreeMap<>();
    for (CSVRecord row : SampleRun.rows(SampleRun.sample(), "row_account")) {
      if (!row.get("table").isEmpty()) {
        actual.put(
            row.get("file") + "#" + row.get("sheet"),
            "%s read %s = %d used or changed + %s set aside + %s duplicate"
                .formatted(
                    row.get("table"),
                    row.get("rows_read"),
                    Long.parseLong(row.get("used")) + Long.parseLong(row.get("changed")),
                    row.get("set_aside"),
                    row.get("duplicate")));
      }
    }
    assertEquals(expected.keySet(), actual.keySet());
    List<String> differences = new ArrayList<>();
    expected.forEach(
        (sheet, fates) -> {
          if (!fates.equals(actual.get(sheet))) {
            differences.add(sheet + ": expected " + fates + ", was " + actual.get(sheet));
          }
        });
    assertEquals(List.of(), differences);
  }

  @Test
  void everyPlantedFaultIsAnIssueAtItsPlace() throws IOException {
    List<CSVRecord> issues = SampleRun.rows(SampleRun.sample(), "data_issues");
    List<String> missed = new ArrayList<>();
    for (CSVRecord fault : SampleRun.read(LISTS.resolve("planted-faults.csv"))) {
      if (issues.stream().noneMatch(issue -> tellsOf(issue, fault))) {
        missed.add(fault.toList().toString());
      }
    }
    assertEquals(List.of(), missed);
  }

  private static boolean tellsOf(CSVRecord issue, CSVRecord fault) {
    String severity = fault.get("outcome").equals("duplicate") ? "notice" : fault.get("outcome");
    return issue.get("file").equals(fault.get("file"))
        && issue.get("sheet").equals(fault.get("sheet"))
        && issue.get("row").equals(fault.get("row"))
        && (OF_THE_ROW.contains(fault.get("kind"))
            || fault.get("column").isEmpty()
            || issue.get("column").equals(fault.get("column")))
        && issue.get("severity").equals(severity);
  }

  @Test
  void rowsWithAnIssueAreGivenBackCellByCell() {
    List<CSVRecord> sources = SampleRun.rows(SampleRun.sample(), "source_rows");
    for (CSVRecord issue : SampleRun.rows(SampleRun.sample(), "data_issues")) {
      if (issue.get("row").isEmpty() || issue.get("column").isEmpty()) {
        continue;
      }
      List<CSVRecord> cells =
          sources.stream()
              .filter(
                  cell ->
                      cell.get("file").equals(issue.get("file"))
                          && cell.get("sheet").equals(issue.get("sheet"))
                          && cell.get("row").equals(issue.get("row")))
              .toList();
      assertEquals(false, cells.isEmpty(), issue.toString());
    }
  }

  @Test
  void noUnplannedRowIsSetAside() throws IOException {
    List<String> planted = new ArrayList<>();
    for (CSVRecord fault : SampleRun.read(LISTS.resolve("planted-faults.csv"))) {
      planted.add(fault.get("file") + "#" + fault.get("sheet") + "#" + fault.get("row"));
    }
    List<String> unplanned = new ArrayList<>();
    for (CSVRecord issue : SampleRun.rows(SampleRun.sample(), "data_issues")) {
      String place = issue.get("file") + "#" + issue.get("sheet") + "#" + issue.get("row");
      if (issue.get("severity").equals("set-aside") && !planted.contains(place)) {
        unplanned.add(place + " " + issue.get("rule"));
      }
    }
    assertEquals(List.of(), unplanned);
  }
}
