package pondtally.reports.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.EditedTables;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;

/** What a table sheet shows is whole: nothing runs past its column, nothing small is told as 0. */
class PrintedTextTest {

  private static final String NOTE =
      "14 lives followed only from a later age are left out: fewer than 5 a pipe type";
  private static final String SQUARE_NAME = "北部水系海狸共存助成基金・濁流流域暗渠保護事業";

  @TempDir static Path folder;
  private static XSSFWorkbook book;

  @BeforeAll
  static void write() throws Exception {
    Path source = folder.resolve("tables");
    TablesFixture.open(source, 40);
    EditedTables.of(source, "group_tests")
        .put(NOTE, row -> true, "note")
        .put("0.00012", row -> true, "p_value")
        .save();
    EditedTables.of(source, "devices").put(SQUARE_NAME, row -> true, "site_id").save();
    EditedTables removals = EditedTables.of(source, "removals_avoided");
    Map.of("2023", "log", "2024", "invoice", "2025", "none given")
        .forEach(
            (year, evidence) ->
                removals.put(
                    evidence, row -> row.contains("permit") && row.contains(year), "evidence"));
    removals.save();
    Path file = folder.resolve("program.xlsx");
    ProgramWorkbook.write(TablePackage.open(source), file);
    book = new XSSFWorkbook(file.toFile());
  }

  @AfterAll
  static void close() throws Exception {
    book.close();
  }

  @Test
  void noTextOfATableIsCut() {
    Map<String, String> cut = new TreeMap<>();
    int texts = 0;
    for (var sheet : book) {
      for (XSSFTable table : ((XSSFSheet) sheet).getTables()) {
        for (int at = table.getStartRowIndex() + 1; at <= table.getEndRowIndex(); at++) {
          for (Cell cell : sheet.getRow(at)) {
            if (cell.getCellType() == CellType.STRING) {
              texts++;
              if (!fits(cell)) {
                cut.put(sheet.getSheetName() + "!" + cell.getAddress(), cell.toString());
              }
            }
          }
        }
      }
    }
    assertTrue(texts > 1_000, texts + " texts");
    assertEquals(Map.of(), cut);
  }

  /** On one line, or wrapped in a row that is high enough for all its lines. */
  private static boolean fits(Cell cell) {
    XSSFSheet sheet = (XSSFSheet) cell.getSheet();
    double width = sheet.getColumnWidth(cell.getColumnIndex()) / 256.0 - 1.5;
    double needs = TextWidth.of(cell.getStringCellValue());
    double lines = (((XSSFRow) cell.getRow()).getHeightInPoints() - 2) / 12.5;
    return cell.getCellStyle().getWrapText() ? needs <= width * Math.floor(lines) : needs <= width;
  }

  @Test
  void aNoteAndANameOfSquareLettersGoOnInAFurtherLine() {
    Cell note = find("Tests", NOTE);
    assertTrue(note.getCellStyle().getWrapText());
    assertTrue(note.getRow().getHeightInPoints() > 26, "three lines");
    assertTrue(find("Devices", SQUARE_NAME).getCellStyle().getWrapText());
  }

  @Test
  void aSmallProbabilityIsNotPrintedAsNone() {
    XSSFSheet sheet = book.getSheet("Tests");
    DataFormatter shown = new DataFormatter(java.util.Locale.ROOT);
    int told = 0;
    for (var row : sheet) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.NUMERIC && cell.getNumericCellValue() == 0.00012) {
          assertEquals("< 0.001", shown.formatCellValue(cell));
          told++;
        }
      }
    }
    assertTrue(told > 0);
  }

  /** Six kinds of evidence stand side by side on the sheet of removals. */
  @Test
  void noTwoSeriesOfAChartHaveOneColor() {
    int many = 0;
    for (var sheet : book) {
      XSSFSheet own = (XSSFSheet) sheet;
      if (own.getDrawingPatriarch() == null) {
        continue;
      }
      for (XSSFChart chart : own.getDrawingPatriarch().getCharts()) {
        for (var bars : chart.getCTChart().getPlotArea().getBarChartList()) {
          long colors =
              bars.getSerList().stream()
                  .map(s -> s.getSpPr().getSolidFill().getSrgbClr().xgetVal().getStringValue())
                  .distinct()
                  .count();
          assertEquals(bars.sizeOfSerArray(), colors, sheet.getSheetName());
          many += bars.sizeOfSerArray() > 4 ? 1 : 0;
        }
      }
    }
    assertTrue(many > 0, "no chart of more than four series was looked at");
  }

  private static Cell find(String sheet, String text) {
    for (var row : book.getSheet(sheet)) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.STRING && cell.getStringCellValue().equals(text)) {
          return cell;
        }
      }
    }
    throw new AssertionError(sheet + " does not hold " + text);
  }
}
