package pondtally.reports.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.EditedTables;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;
import pondtally.table.Sha256;

/** Workbooks of tables that are too long for a sheet, missing or empty. */
class WorkbookSizesTest {

  @TempDir static Path folder;

  @Test
  void longTableGoesOnInAFurtherSheetAndSaysSo() throws Exception {
    Path parts = folder.resolve("parts.xlsx");
    TablePackage tables = TablesFixture.open(folder.resolve("tables"), 40);
    ProgramWorkbook.write(tables, parts, 25);
    try (XSSFWorkbook inParts = new XSSFWorkbook(parts.toFile())) {
      XSSFSheet second = inParts.getSheet("Devices 2");
      assertEquals(15, second.getTables().get(0).getDataRowCount());
      assertTrue(second.getRow(1).getCell(0).getStringCellValue().startsWith("Sheet 2 of 2"));
      XSSFSheet states = inParts.getSheet("State of devices");
      int row = states.getTables().get(0).getStartRowIndex() + 1;
      String formula = states.getRow(row).getCell(1).getCellFormula();
      assertTrue(formula.contains("'Devices'!") && formula.contains("'Devices 2'!"), formula);
      double before = states.getRow(row).getCell(1).getNumericCellValue();
      double counted =
          inParts
              .getCreationHelper()
              .createFormulaEvaluator()
              .evaluate(states.getRow(row).getCell(1))
              .getNumberValue();
      assertEquals(before, counted);
    }
  }

  @Test
  void sheetsWithoutTheirTablesAreLeftOut() throws Exception {
    TablePackage few =
        TablesFixture.open(folder.resolve("few"), TablesFixture.only("row_account", "devices"));
    Path small = folder.resolve("few.xlsx");
    ProgramWorkbook.write(few, small);
    try (XSSFWorkbook smallBook = new XSSFWorkbook(small.toFile())) {
      assertNull(smallBook.getSheet("Cost"));
      assertNotNull(smallBook.getSheet("Data checks"));
      assertNotNull(smallBook.getSheet("Summary"));
    }
  }

  /** A fingerprint leads from the workbook to the very files that it was made from. */
  @Test
  void provenanceNamesEachTableWithItsFingerprint() throws Exception {
    Path source = folder.resolve("provenance");
    TablePackage tables = TablesFixture.open(source, 10);
    Path file = folder.resolve("provenance.xlsx");
    ProgramWorkbook.write(tables, file);
    try (XSSFWorkbook book = new XSSFWorkbook(file.toFile())) {
      XSSFSheet sheet = book.getSheet("Provenance");
      int at = sheet.getTables().get(0).getStartRowIndex();
      assertEquals(tables.tables().size(), sheet.getTables().get(0).getDataRowCount());
      for (var table : tables.tables()) {
        var row = sheet.getRow(++at);
        assertEquals("tables/" + table.name() + ".csv", row.getCell(0).getStringCellValue());
        assertEquals(
            Sha256.of(source.resolve(table.name() + ".csv")), row.getCell(2).getStringCellValue());
      }
    }
  }

  /** Bars of nothing would be an empty frame. */
  @Test
  void aChartWithoutAKnownFigureIsLeftOut() throws Exception {
    Path source = folder.resolve("no-forecast");
    TablesFixture.open(source, 10);
    EditedTables.of(source, "season_forecast")
        .put("", row -> true, "expected_failures", "lower", "upper")
        .save();
    Path file = folder.resolve("no-forecast.xlsx");
    ProgramWorkbook.write(TablePackage.open(source), file);
    try (XSSFWorkbook book = new XSSFWorkbook(file.toFile())) {
      assertNull(book.getSheet("Next season").getDrawingPatriarch());
      assertNotNull(book.getSheet("State of devices").getDrawingPatriarch());
    }
  }

  @Test
  void emptyTablesSaySo() throws Exception {
    TablePackage none =
        TablesFixture.open(
            folder.resolve("none"), TablesFixture.empty("devices", "failure_rates", "wetland"));
    Path empty = folder.resolve("none.xlsx");
    ProgramWorkbook.write(none, empty);
    try (XSSFWorkbook emptyBook = new XSSFWorkbook(empty.toFile())) {
      XSSFSheet wetland = emptyBook.getSheet("Wetland");
      assertEquals(
          "The records hold nothing of this kind.",
          wetland.getRow(wetland.getLastRowNum()).getCell(0).getStringCellValue());
    }
  }
}
