package pondtally.sample;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The list of planted faults says true: each stands in the committed files where the list says. */
class PlantedFaultsTest {

  @Test
  void eachKindIsPlantedThreeTimesInCsvAndInWorkbooks() throws IOException {
    List<CSVRecord> faults = SampleFolder.list("planted-faults.csv");
    for (FaultKind kind : FaultKind.values()) {
      List<CSVRecord> own =
          faults.stream().filter(fault -> fault.get("kind").equals(kind.code())).toList();
      long workbooks = own.stream().filter(fault -> fault.get("file").endsWith(".xlsx")).count();
      assertTrue(own.size() >= 3, kind.code() + ": " + own.size());
      assertTrue(
          workbooks >= 1 && workbooks < own.size(), kind.code() + " in workbooks: " + workbooks);
    }
  }

  @Test
  void kindsAndOutcomesAreKnown() throws IOException {
    List<String> kinds = Arrays.stream(FaultKind.values()).map(FaultKind::code).toList();
    List<String> outcomes = List.of("set-aside", "changed", "duplicate", "notice");
    for (CSVRecord fault : SampleFolder.list("planted-faults.csv")) {
      assertTrue(kinds.contains(fault.get("kind")), fault.toString());
      assertTrue(outcomes.contains(fault.get("outcome")), fault.toString());
    }
  }

  @Test
  void eachValueStandsWhereTheListSays() throws IOException {
    Map<String, RawSheet> sheets = new HashMap<>();
    int looked = 0;
    for (CSVRecord fault : SampleFolder.list("planted-faults.csv")) {
      String place = fault.get("file") + "|" + fault.get("sheet");
      if (!sheets.containsKey(place)) {
        sheets.put(
            place,
            RawSheet.read(SampleFolder.PROGRAM.resolve(fault.get("file")), fault.get("sheet")));
      }
      RawSheet sheet = sheets.get(place);
      if (!fault.get("column").isEmpty()) {
        assertTrue(sheet.headings().contains(fault.get("column")), fault.toString());
      }
      if (!fault.get("row").isEmpty() && !fault.get("column").isEmpty()) {
        int row = Integer.parseInt(fault.get("row"));
        assertEquals(fault.get("value"), sheet.cell(row, fault.get("column")), fault.toString());
        looked++;
      }
    }
    assertTrue(looked > 100, "looked at " + looked);
  }

  @Test
  void duplicatesRepeatARowAndNoOtherRowIsRepeated() {
    SampleProgram program = new SampleProgram();
    List<Planted> duplicates =
        program.planted().stream()
            .filter(fault -> fault.kind() == FaultKind.EXACT_DUPLICATE)
            .toList();
    assertAll(
        duplicates.stream()
            .map(
                fault ->
                    () ->
                        assertEquals(
                            fault.twin().values(), fault.row().values(), fault.twinPlace())));
    Map<String, Integer> seen = new HashMap<>();
    for (Sheet sheet : program.sheets()) {
      for (Row row : sheet.rows()) {
        boolean planted = duplicates.stream().anyMatch(fault -> fault.row() == row);
        if (!planted && !row.values().isEmpty()) {
          assertEquals(
              1,
              seen.merge(sheet.table() + partnerOf(sheet) + " " + row.values(), 1, Integer::sum),
              row.values().toString());
        }
      }
    }
    assertFalse(duplicates.isEmpty());
  }

  /** Expenses and budgets name no site or device, so only one partner's own rows can be equal. */
  private static String partnerOf(Sheet sheet) {
    return sheet.table() == Table.EXPENSES ? sheet.partner().name() : "";
  }

  @Test
  void rowAccountAddsUpAndCountsTheRowsInTheFiles() throws IOException {
    for (CSVRecord account : SampleFolder.list("row-account.csv")) {
      RawSheet sheet =
          RawSheet.read(SampleFolder.PROGRAM.resolve(account.get("file")), account.get("sheet"));
      long parts =
          List.of("used", "changed", "converted_by_heading", "set_aside", "duplicate").stream()
              .mapToLong(column -> Long.parseLong(account.get(column)))
              .sum();
      assertEquals(Long.parseLong(account.get("rows_read")), parts, account.toString());
      assertEquals(
          Long.parseLong(account.get("rows_read")), sheet.filledRows(), account.toString());
    }
  }
}
