package pondtally.reports.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Cautions;

class ProgramWorkbookTest {

  private static final List<String> PROSE = List.of("Summary");

  @TempDir static Path folder;
  private static TablePackage tables;
  private static Path file;
  private static XSSFWorkbook book;

  @BeforeAll
  static void write() throws Exception {
    tables = TablesFixture.open(folder.resolve("tables"), 40);
    file = folder.resolve("program.xlsx");
    ProgramWorkbook.write(tables, file);
    book = new XSSFWorkbook(file.toFile());
  }

  @AfterAll
  static void close() throws Exception {
    book.close();
  }

  @Test
  void sheetsStandInTheOrderOfReading() {
    List<String> names = new ArrayList<>();
    book.forEach(sheet -> names.add(sheet.getSheetName()));
    assertEquals(
        List.of(
            "Summary",
            "Five years",
            "State of devices",
            "Watersheds",
            "Pipe types",
            "Other groups",
            "Survival",
            "Survival by visits",
            "Causes",
            "Causes by group",
            "Cost",
            "Cost by year",
            "Cost per property",
            "Unit costs",
            "Benefit and cost",
            "Sensitivity",
            "Wetland",
            "Wetland by year",
            "Removals",
            "Removal went on",
            "Properties",
            "Properties by watershed",
            "Who paid",
            "Next season",
            "Next season by group",
            "Worklist",
            "Worklist to print",
            "Buying list",
            "Visit interval",
            "Visit interval curve",
            "Requests",
            "Agreements and permits",
            "Program expenses",
            "Tests",
            "Hazard ratios",
            "Devices",
            "Sites",
            "Data checks",
            "Data issues",
            "Completeness",
            "Survival points",
            "Methods",
            "Settings",
            "Provenance",
            "Fields"),
        names);
    assertTrue(names.stream().allMatch(name -> name.length() <= 31));
  }

  @Test
  void everyDataSheetHoldsOneFilteredTableWithAFrozenHeader() {
    Set<String> tableNames = new HashSet<>();
    for (int i = 0; i < book.getNumberOfSheets(); i++) {
      XSSFSheet sheet = book.getSheetAt(i);
      assertFalse(sheet.getRow(0).getCell(0).getStringCellValue().isEmpty(), sheet.getSheetName());
      assertEquals(0, sheet.getNumMergedRegions(), sheet.getSheetName());
      if (PROSE.contains(sheet.getSheetName())) {
        assertTrue(sheet.getTables().isEmpty());
        assertNull(sheet.getPaneInformation());
      } else {
        assertEquals(1, sheet.getTables().size(), sheet.getSheetName());
        XSSFTable table = sheet.getTables().get(0);
        assertTrue(tableNames.add(table.getName()));
        assertNotNull(table.getCTTable().getAutoFilter());
        assertEquals(
            table.getStartRowIndex() + 1, sheet.getPaneInformation().getHorizontalSplitTopRow());
        assertEquals(sheet.getLastRowNum(), table.getEndRowIndex());
      }
    }
  }

  @Test
  void headingsAreThoseOfTheTableAndNoneComesTwice() {
    for (int i = 1; i < book.getNumberOfSheets(); i++) {
      XSSFTable table = book.getSheetAt(i).getTables().get(0);
      Row header = book.getSheetAt(i).getRow(table.getStartRowIndex());
      Set<String> seen = new HashSet<>();
      table
          .getColumns()
          .forEach(
              column -> {
                assertEquals(
                    header.getCell(column.getColumnIndex()).getStringCellValue(), column.getName());
                assertTrue(
                    seen.add(column.getName().toLowerCase(Locale.ROOT)),
                    table.getName() + ": " + column.getName());
              });
    }
  }

  @Test
  void noCellOfATableIsBlank() {
    for (int i = 1; i < book.getNumberOfSheets(); i++) {
      XSSFTable table = book.getSheetAt(i).getTables().get(0);
      for (int r = table.getStartRowIndex() + 1; r <= table.getEndRowIndex(); r++) {
        for (int c = table.getStartColIndex(); c <= table.getEndColIndex(); c++) {
          XSSFCell cell = book.getSheetAt(i).getRow(r).getCell(c);
          assertNotNull(cell, table.getName());
          assertFalse(cell.toString().isEmpty(), table.getName() + " " + cell.getReference());
        }
      }
    }
  }

  @Test
  void numbersAreNumbersWithAFormat() {
    XSSFCell rate = cell("Watersheds", "99010101", "Failures per 100 device-years");
    assertEquals(CellType.FORMULA, rate.getCellType());
    assertEquals(12 / 110.5 * 100, rate.getNumericCellValue(), 1e-12);
    assertEquals("#,##0.0", rate.getCellStyle().getDataFormatString());
    XSSFCell share = cell("Causes", "fence-dammed", "Share");
    assertEquals("0.0%", share.getCellStyle().getDataFormatString());
    XSSFCell installed = cell("Devices", "D0001", "Installed on");
    assertEquals(CellType.NUMERIC, installed.getCellType());
    assertEquals("yyyy-mm-dd", installed.getCellStyle().getDataFormatString());
    assertEquals(
        "30,000",
        new org.apache.poi.ss.usermodel.DataFormatter(Locale.ROOT)
            .formatCellValue(cell("Cost", "99010101", "Cash, building (2024 USD)")));
  }

  @Test
  void notKnownIsASignAndNeverZero() {
    assertEquals("–", cell("Devices", "D0000", "Recorded cost (2024 USD)").getStringCellValue());
    assertEquals("–", cell("Wetland", "99020101", "Acre-years, verified").getStringCellValue());
    XSSFCell none = cell("Cost per property", "99020101", "Cash per property (2024 USD)");
    assertEquals("–", none.getStringCellValue());
    assertEquals(
        "–",
        book.getSheet("Wetland").getRow(totalsRow("Wetland")).getCell(10).getStringCellValue());
  }

  @Test
  void partnersTextStaysText() {
    int marked = 0;
    for (int i = 0; i < book.getNumberOfSheets(); i++) {
      for (Row row : book.getSheetAt(i)) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA) {
            assertFalse(cell.getCellFormula().contains("HYPERLINK"), cell.getCellFormula());
          } else if (cell.getCellType() == CellType.STRING
              && SafeText.looksLikeFormula(cell.getStringCellValue())) {
            assertTrue(cell.getCellStyle().getQuotePrefixed(), cell.getStringCellValue());
            marked++;
          }
        }
      }
    }
    assertTrue(marked > 10);
    assertEquals("-D0003", cell("Devices", "-D0003", "Device").getStringCellValue());
  }

  @Test
  void chartsAreNativeAndDescribed() {
    Set<String> names = new HashSet<>();
    Set<Long> ids = new HashSet<>();
    int charts = 0;
    for (int i = 0; i < book.getNumberOfSheets(); i++) {
      if (book.getSheetAt(i).getDrawingPatriarch() == null) {
        continue;
      }
      var drawing = book.getSheetAt(i).getDrawingPatriarch().getCTDrawing();
      for (var anchor : drawing.getTwoCellAnchorArray()) {
        var frame = anchor.getGraphicFrame().getNvGraphicFramePr().getCNvPr();
        assertTrue(frame.getDescr().length() > 40, frame.getName());
        assertTrue(names.add(frame.getName()));
        assertTrue(ids.add(frame.getId()));
        charts++;
      }
    }
    assertEquals(14, charts);
  }

  @Test
  void survivalCurveIsDrawnByDoubledPointsWithALine() {
    XSSFChart chart = book.getSheet("Survival").getDrawingPatriarch().getCharts().get(1);
    var series = chart.getCTChart().getPlotArea().getScatterChartArray(0).getSerArray();
    assertEquals(3, series.length);
    for (var one : series) {
      assertTrue(one.getSpPr().getLn().isSetSolidFill());
      var x = one.getXVal().getNumRef().getNumCache();
      var y = one.getYVal().getNumRef().getNumCache();
      assertEquals("0.0", x.getPtArray(0).getV());
      assertEquals("1.0", y.getPtArray(0).getV());
      // A step: two points at one age.
      assertEquals(x.getPtArray(1).getV(), x.getPtArray(2).getV());
      assertFalse(y.getPtArray(1).getV().equals(y.getPtArray(2).getV()));
    }
  }

  @Test
  void errorBarsAreReferencesToCells() {
    XSSFChart chart = book.getSheet("Pipe types").getDrawingPatriarch().getCharts().get(0);
    var bars = chart.getCTChart().getPlotArea().getBarChartArray(0).getSerArray(0).getErrBars();
    assertTrue(bars.getPlus().getNumRef().getF().startsWith("'Pipe types'!$"));
    assertEquals(3, bars.getPlus().getNumRef().getNumCache().getPtCount().getVal());
  }

  @Test
  void smallGroupsAreShownButNotDrawn() {
    assertEquals(
        "fewer than 5 devices", cell("Pipe types", "unknown", "Note").getStringCellValue());
    XSSFChart chart = book.getSheet("Watersheds").getDrawingPatriarch().getCharts().get(0);
    var names =
        chart.getCTChart().getPlotArea().getBarChartArray(0).getSerArray(0).getCat().getStrRef();
    assertEquals(4, names.getStrCache().getPtCount().getVal());
  }

  @Test
  void propertiesComeFromTheDataNotTheClock() {
    var core = book.getProperties().getCoreProperties();
    assertEquals("Pondtally", core.getCreator());
    assertTrue(core.getTitle().contains("Quillwater Basin"));
    assertEquals(Instant.parse("2025-12-31T00:00:00Z"), core.getCreated().toInstant());
    assertEquals(Instant.parse("2025-12-31T00:00:00Z"), core.getModified().toInstant());
  }

  @Test
  void printsAcrossOnePageWithItsHeaderRepeated() {
    XSSFSheet sheet = book.getSheet("Causes");
    assertTrue(sheet.getPrintSetup().getLandscape());
    assertTrue(sheet.getFitToPage());
    assertEquals(1, sheet.getPrintSetup().getFitWidth());
    assertEquals(
        sheet.getTables().get(0).getStartRowIndex(), sheet.getRepeatingRows().getFirstRow());
    assertTrue(sheet.getFooter().getLeft().contains("2025-12-31"));
  }

  /** Nineteen columns on a letter page would be letters of three points. */
  @Test
  void aWideSheetPrintsOnWidePaper() {
    XSSFSheet sheet = book.getSheet("Devices");
    assertEquals(1, sheet.getPrintSetup().getFitWidth());
    assertEquals(PrintSetup.TABLOID_PAPERSIZE, sheet.getPrintSetup().getPaperSize());
    assertNull(sheet.getRepeatingColumns());
    assertEquals(
        sheet.getTables().get(0).getStartRowIndex(), sheet.getRepeatingRows().getFirstRow());
    assertEquals(
        PrintSetup.LETTER_PAPERSIZE, book.getSheet("Causes").getPrintSetup().getPaperSize());
  }

  /** Repeated key columns would cut title and notes off, so these have a page of their own. */
  @Test
  void aSheetTooWideForAnyPaperRepeatsItsKeyAndNotItsTitle() {
    XSSFSheet sheet = book.getSheet("Benefit and cost");
    int header = sheet.getTables().get(0).getStartRowIndex();
    assertTrue(sheet.getPrintSetup().getFitWidth() > 1);
    assertEquals(0, sheet.getRepeatingColumns().getFirstColumn());
    String[] areas = book.getPrintArea(book.getSheetIndex(sheet)).split(",", -1);
    assertEquals(2, areas.length);
    assertTrue(areas[0].contains("$A$1:"), areas[0]);
    assertTrue(new AreaReference(areas[0], null).getLastCell().getRow() < header);
    assertTrue(new AreaReference(areas[1], null).getFirstCell().getRow() <= header);
  }

  /** Lengths of error bars feed a chart; their limits are printed in columns before them. */
  @Test
  void columnsForAChartAreNotPrinted() {
    XSSFSheet sheet = book.getSheet("Watersheds");
    var columns = sheet.getTables().get(0).getCTTable().getTableColumns().getTableColumnList();
    assertEquals("Bar up to upper limit", columns.get(columns.size() - 1).getName());
    String area = book.getPrintArea(book.getSheetIndex(sheet));
    assertEquals(columns.size() - 3, new AreaReference(area, null).getLastCell().getCol());
  }

  @Test
  void assumptionsHaveNames() {
    assertEquals(
        "'Settings'!$B$", book.getName("Revisit_every_days").getRefersToFormula().substring(0, 14));
    XSSFCell value = cell("Settings", "Days between visits", "Value");
    assertEquals(180, value.getNumericCellValue());
    assertTrue(
        cell("Worklist", "1", "Expected loss until the next visit (2024 USD)")
            .getCellFormula()
            .contains("Revisit_every_days"));
  }

  @Test
  void summaryEndsWithTheCautions() {
    XSSFSheet sheet = book.getSheet("Summary");
    String last = sheet.getRow(sheet.getLastRowNum()).getCell(0).getStringCellValue();
    assertEquals(Cautions.all().get(Cautions.all().size() - 1), last);
  }

  @Test
  void sameTablesGiveTheSameBytesOnAnyMachine() throws Exception {
    Path again = folder.resolve("again.xlsx");
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
      ProgramWorkbook.write(tables, again);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
    assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(again));
  }

  private static int totalsRow(String sheet) {
    return book.getSheet(sheet).getTables().get(0).getStartRowIndex() - 1;
  }

  /** The cell of the column with that heading in the first line that starts with that text. */
  private static XSSFCell cell(String sheetName, String first, String heading) {
    XSSFSheet sheet = book.getSheet(sheetName);
    XSSFTable table = sheet.getTables().get(0);
    int column = table.findColumnIndex(heading);
    assertTrue(column >= 0, sheetName + " has no column " + heading);
    for (int r = table.getStartRowIndex() + 1; r <= table.getEndRowIndex(); r++) {
      XSSFCell start = sheet.getRow(r).getCell(0);
      String text =
          start.getCellType() == CellType.NUMERIC
              ? Long.toString((long) start.getNumericCellValue())
              : start.getStringCellValue();
      if (text.equals(first)) {
        return sheet.getRow(r).getCell(column);
      }
    }
    throw new AssertionError(sheetName + " has no line " + first);
  }
}
