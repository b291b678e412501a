package pondtally.reports.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;

/** Every number of the program's workbook is looked up in the row of the table it comes from. */
class EveryCellTest {

  @TempDir private Path folder;

  @Test
  void everyNumberIsInTheRowThatItsLineNames() throws IOException {
    TablePackage tables = TablesFixture.open(folder.resolve("tables"), 40);
    Path file = folder.resolve("program.xlsx");
    ProgramWorkbook.write(tables, file);
    int numbers = EveryCell.ofProgram(tables, file);
    assertTrue(numbers > 1500, numbers + " numbers");
  }

  /** A small whole number that other rows hold as well is found where it is not the row's own. */
  @Test
  void aWrongSmallNumberIsFound() throws Exception {
    TablePackage tables = TablesFixture.open(folder.resolve("tables"), 40);
    Path file = folder.resolve("program.xlsx");
    ProgramWorkbook.write(tables, file);
    Book plan = ProgramWorkbook.plan(tables, Book.LINES_A_SHEET);
    Path planted = folder.resolve("planted.xlsx");
    int row;
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file));
        var out = Files.newOutputStream(planted)) {
      XSSFSheet sheet = book.getSheet("Pipe types");
      row = sheet.getTables().get(0).getStartRowIndex() + 1;
      Row first = sheet.getRow(row);
      double failures = first.getCell(2).getNumericCellValue();
      double others = sheet.getRow(row + 1).getCell(2).getNumericCellValue();
      assertTrue(failures != others && others < 100, failures + " " + others);
      first.getCell(2).setCellValue(others);
      book.write(out);
    }
    Set<String> wrong = EveryCell.wrong(tables, plan, planted);
    assertEquals(1, wrong.size(), wrong.toString());
    assertTrue(wrong.toString().contains("Pipe types " + (row + 1) + " of failure_rates"));
  }
}
