package pondtally.reports.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.app.ComparedRuns;
import pondtally.reports.fixture.Editions;
import pondtally.reports.fixture.Office;
import pondtally.reports.fixture.TablesFixture;

/** Another program computes every formula anew and comes to the value that we stored. */
class RecalculationGateTest {

  /** Relative; sums are added in another order there. */
  private static final double TOLERANCE = 1e-9;

  @TempDir Path folder;

  @Test
  void everyStoredValueIsWhatLibreOfficeComputes() throws Exception {
    Office.needed();
    Path program = folder.resolve("program.xlsx");
    ProgramWorkbook.write(TablesFixture.open(folder.resolve("tables"), 60), program);
    plantWrongValue(program);
    Path open = folder.resolve("public.xlsx");
    ProgramWorkbook.write(Editions.open(folder.resolve("editions"), 60), open);
    Path funder = folder.resolve("funder.xlsx");
    ProgramWorkbook.write(Editions.funder(folder.resolve("funder"), 30), funder);
    Path changes = ComparedRuns.write(folder.resolve("runs")).resolve("changes.xlsx");

    List<Path> own = List.of(program, open, funder, changes);
    List<Path> theirs = Office.convert(own, "xlsx", outFolder());
    List<String> wrong = differences(program, theirs.get(0), 300);
    // The planted one shows that formulas were computed anew, and is the only one.
    assertEquals(1, wrong.size(), String.join("\n", wrong));
    assertTrue(wrong.get(0).startsWith("Watersheds!E"), wrong.get(0));
    assertEquals(List.of(), differences(open, theirs.get(1), 150));
    assertEquals(List.of(), differences(funder, theirs.get(2), 300));
    assertEquals(List.of(), differences(changes, theirs.get(3), 10));
  }

  private Path outFolder() throws Exception {
    return Files.createDirectories(folder.resolve("out"));
  }

  private static void plantWrongValue(Path file) throws Exception {
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      var sheet = book.getSheet("Watersheds");
      int row = sheet.getTables().get(0).getStartRowIndex() + 1;
      XSSFCell cell = sheet.getRow(row).getCell(4);
      assertEquals(CellType.FORMULA, cell.getCellType());
      cell.setCellValue(-1);
      try (OutputStream out = Files.newOutputStream(file)) {
        book.write(out);
      }
    }
  }

  private static List<String> differences(Path ours, Path theirs, int least) throws Exception {
    List<String> wrong = new ArrayList<>();
    int formulas = 0;
    try (XSSFWorkbook own = new XSSFWorkbook(ours.toFile());
        XSSFWorkbook other = new XSSFWorkbook(theirs.toFile())) {
      for (int i = 0; i < own.getNumberOfSheets(); i++) {
        for (Row row : own.getSheetAt(i)) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              formulas++;
              Cell recalculated =
                  other
                      .getSheet(own.getSheetName(i))
                      .getRow(row.getRowNum())
                      .getCell(cell.getColumnIndex());
              compare(cell, recalculated, wrong);
            }
          }
        }
      }
    }
    assertTrue(formulas > least, formulas + " formulas");
    return wrong;
  }

  private static void compare(Cell own, Cell other, List<String> wrong) {
    String place =
        own.getSheet().getSheetName() + "!" + own.getAddress() + " " + own.getCellFormula();
    CellType type =
        other.getCellType() == CellType.FORMULA
            ? other.getCachedFormulaResultType()
            : other.getCellType();
    if (own.getCachedFormulaResultType() != type) {
      wrong.add(place + ": " + own.getCachedFormulaResultType() + " became " + type);
    } else if (type == CellType.STRING) {
      if (!own.getStringCellValue().equals(other.getStringCellValue())) {
        wrong.add(place + ": " + own.getStringCellValue() + " became " + other);
      }
    } else {
      double stored = own.getNumericCellValue();
      double computed = other.getNumericCellValue();
      if (Math.abs(stored - computed) > TOLERANCE * Math.max(1, Math.abs(stored))) {
        wrong.add(place + ": " + stored + " became " + computed);
      }
    }
  }
}
