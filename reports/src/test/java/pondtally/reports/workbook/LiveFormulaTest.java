package pondtally.reports.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.TablesFixture;

/** Stored values are what the formulas come to, and formulas follow the cells they stand on. */
class LiveFormulaTest {

  @TempDir Path folder;
  private XSSFWorkbook book;
  private FormulaEvaluator evaluator;

  @BeforeEach
  void open() throws Exception {
    Path file = folder.resolve("program.xlsx");
    ProgramWorkbook.write(TablesFixture.open(folder.resolve("tables"), 40), file);
    book = new XSSFWorkbook(file.toFile());
    evaluator = book.getCreationHelper().createFormulaEvaluator();
  }

  @AfterEach
  void close() throws Exception {
    book.close();
  }

  @Test
  void storedValuesAreWhatTheFormulasComeTo() {
    int formulas = 0;
    for (int i = 0; i < book.getNumberOfSheets(); i++) {
      for (Row row : book.getSheetAt(i)) {
        for (Cell cell : row) {
          // The library does not know SUBTOTAL 102, which the totals ask first.
          if (cell.getCellType() == CellType.FORMULA && !isTotal(cell)) {
            assertStored(cell);
            formulas++;
          }
        }
      }
    }
    assertTrue(formulas > 200, formulas + " formulas");
  }

  private static boolean isTotal(Cell cell) {
    XSSFSheet sheet = (XSSFSheet) cell.getSheet();
    return cell.getRowIndex() < sheet.getTables().get(0).getStartRowIndex();
  }

  private void assertStored(Cell cell) {
    String place = cell.getSheet().getSheetName() + "!" + cell.getAddress();
    CellValue value = evaluator.evaluate(cell);
    if (cell.getCachedFormulaResultType() == CellType.STRING) {
      assertEquals(cell.getStringCellValue(), value.getStringValue(), place);
    } else {
      double stored = cell.getNumericCellValue();
      assertEquals(stored, value.getNumberValue(), 1e-9 * Math.max(1, Math.abs(stored)), place);
    }
  }

  @Test
  void rateFollowsFailures() {
    assertMoves("Watersheds", "Failures", "Failures per 100 device-years", 24, 24 / 110.5 * 100);
  }

  @Test
  void totalCostFollowsItsParts() {
    assertMoves(
        "Cost", "Cash, building (2024 USD)", "Total recorded (2024 USD)", 1_000, 1_000 + 8_500);
  }

  @Test
  void costPerDeviceFollowsDevices() {
    assertMoves(
        "Cost",
        "Devices with recorded cost",
        "Cost per device with records (2024 USD)",
        10,
        38_500.1 / 10);
  }

  @Test
  void costPerPropertyFollowsProperties() {
    assertMoves(
        "Cost per property",
        "Properties protected, verified",
        "Cash per property (2024 USD)",
        15,
        2_000);
  }

  @Test
  void shareOfCausesFollowsFailures() {
    assertMoves("Causes", "Failures", "Share", 31, 31 / 50.0);
  }

  @Test
  void ratioFollowsBenefit() {
    assertMoves(
        "Benefit and cost", "Benefit (2024 USD)", "Benefit per dollar of cost", 430_000, 200);
  }

  @Test
  void stateCountsFollowTheDevices() {
    XSSFCell working = cell("State of devices", "Devices");
    double before = working.getNumericCellValue();
    XSSFCell state = cell("Devices", "State");
    assertEquals("unverified", state.getStringCellValue());
    // A cell with its text inside cannot be overwritten by the library, so it is made anew.
    state.getRow().createCell(state.getColumnIndex()).setCellValue("working");
    evaluator.clearAllCachedResultValues();
    assertEquals(before + 1, evaluator.evaluate(working).getNumberValue());
  }

  @Test
  void hectaresFollowTheNamedCell() {
    XSSFCell hectares = cell("Wetland", "Retained, verified (hectares)");
    XSSFSheet settings = book.getSheet("Settings");
    for (Row row : settings) {
      if (row.getCell(0).getStringCellValue().equals("Hectares in an acre")) {
        row.getCell(1).setCellValue(2);
      }
    }
    evaluator.clearAllCachedResultValues();
    assertEquals(38, evaluator.evaluate(hectares).getNumberValue(), 1e-12);
  }

  /** Changes the first line's input and expects its output there. */
  private void assertMoves(
      String sheet, String input, String output, double value, double expected) {
    cell(sheet, input).setCellValue(value);
    evaluator.clearAllCachedResultValues();
    assertEquals(
        expected, evaluator.evaluate(cell(sheet, output)).getNumberValue(), 1e-9 * expected);
  }

  private XSSFCell cell(String sheet, String heading) {
    var table = book.getSheet(sheet).getTables().get(0);
    int column = table.findColumnIndex(heading);
    assertTrue(column >= 0, sheet + " has no column " + heading);
    return book.getSheet(sheet).getRow(table.getStartRowIndex() + 1).getCell(column);
  }
}
