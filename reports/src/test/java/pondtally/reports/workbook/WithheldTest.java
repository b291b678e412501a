package pondtally.reports.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.EditedTables;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;

/** Tables as a public edition may leave them: figures withheld, private columns away. */
class WithheldTest {

  @TempDir Path folder;

  @Test
  void withheldFiguresStandAsWordsAndNeverAsFormulas() throws Exception {
    Path file = folder.resolve("program.xlsx");
    ProgramWorkbook.write(edited(), file);
    try (XSSFWorkbook book = new XSSFWorkbook(file.toFile())) {
      XSSFSheet sheet = book.getSheet("Watersheds");
      Row small = sheet.getRow(sheet.getLastRowNum());
      assertEquals("99020101", small.getCell(0).getStringCellValue());
      for (int column = 1; column <= 6; column++) {
        assertEquals("withheld", small.getCell(column).getStringCellValue());
        assertEquals(CellType.STRING, small.getCell(column).getCellType());
      }
      assertEquals(
          96,
          sheet
              .getRow(sheet.getTables().get(0).getStartRowIndex() - 1)
              .getCell(1)
              .getNumericCellValue());
    }
  }

  @Test
  void columnsThatAreAwayAreLeftOut() throws Exception {
    Path file = folder.resolve("program.xlsx");
    ProgramWorkbook.write(edited(), file);
    try (XSSFWorkbook book = new XSSFWorkbook(file.toFile())) {
      assertFalse(headings(book.getSheet("Devices")).contains("Partner"));
      assertFalse(headings(book.getSheet("Sites")).contains("Latitude"));
      assertTrue(headings(book.getSheet("Devices")).contains("Device"));
    }
  }

  private TablePackage edited() throws Exception {
    Path tables = folder.resolve("tables");
    TablesFixture.open(tables, 20);
    EditedTables.of(tables, "failure_rates")
        .put(
            "withheld",
            row -> row.contains("99020101"),
            "devices",
            "failures",
            "device_years",
            "per_100_device_years",
            "lower",
            "upper",
            "expected",
            "shrunken",
            "funnel_lower",
            "funnel_upper")
        .save();
    EditedTables.of(tables, "costs")
        .put("withheld", row -> row.contains("all"), "devices", "devices_costed", "build_usd")
        .save();
    EditedTables.of(tables, "devices").without("partner").save();
    EditedTables.of(tables, "sites").without("latitude").without("longitude").save();
    return TablePackage.open(tables);
  }

  private static String headings(XSSFSheet sheet) {
    StringBuilder all = new StringBuilder();
    for (Cell cell : sheet.getRow(sheet.getTables().get(0).getStartRowIndex())) {
      all.append(cell.getStringCellValue()).append('\n');
    }
    return all.toString();
  }
}
