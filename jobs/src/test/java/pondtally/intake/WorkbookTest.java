package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.SheetReport;
import pondtally.record.Area;
import pondtally.record.Install;
import pondtally.record.Removal;
import pondtally.record.Request;
import pondtally.record.Site;
import pondtally.record.Visit;

/** Workbooks written by Apache POI, with the traps that partners' workbooks hold. */
class WorkbookTest {

  @TempDir Path folder;

  private final XSSFWorkbook book = new XSSFWorkbook();

  private Read read() throws IOException {
    return read("north_records.xlsx");
  }

  private Read read(String name) throws IOException {
    Path file = folder.resolve(name);
    try (OutputStream out = Files.newOutputStream(file)) {
      book.write(out);
    }
    book.close();
    return Read.file(file);
  }

  private static Row row(Sheet sheet, int number, Object... cells) {
    Row row = sheet.createRow(number - 1);
    for (int i = 0; i < cells.length; i++) {
      if (cells[i] instanceof Number amount) {
        row.createCell(i).setCellValue(amount.doubleValue());
      } else if (cells[i] instanceof Boolean flag) {
        row.createCell(i).setCellValue(flag);
      } else if (cells[i] instanceof String text) {
        row.createCell(i).setCellValue(text);
      }
    }
    return row;
  }

  private static void date(Row row, int column, CellStyle style, double serial) {
    row.createCell(column).setCellValue(serial);
    row.getCell(column).setCellStyle(style);
  }

  private CellStyle dateStyle() {
    CellStyle style = book.createCellStyle();
    style.setDataFormat(book.createDataFormat().getFormat("dd/mm/yy"));
    return style;
  }

  private static String day(int day) {
    return LocalDate.ofEpochDay(day).toString();
  }

  @Test
  void sheetsAreTablesAndCellsKeepTheirTypes() throws IOException {
    CellStyle style = dateStyle();
    Sheet sheet = book.createSheet("Installs 2024");
    row(sheet, 1, "Device", "Site", "Installed", "Pipe dia (mm)", "Gas holes", "Weights", "Cost");
    date(row(sheet, 2, 101, "S1", null, 381, true, 4, 1.234), 2, style, 45413);
    row(sheet, 5, "D2", "S1", "2024-05-01", "", "no", "2", "1.2");
    Read read = read();
    SheetReport report = read.report();
    assertEquals("installs", report.table());
    assertEquals("Installs 2024", report.sheetName());
    Install first = (Install) read.records().get(0);
    assertEquals("101", first.deviceId());
    assertEquals("2024-05-01", day(first.installedOn()));
    assertEquals(15, first.pipeDiameterIn(), 0);
    assertEquals(4, first.weights());
    assertEquals(1.234, first.installCostUsd(), 0);
    assertEquals(5, read.records().get(1).origin().row());
    assertEquals(
        List.of(
            "0 pipe_diameter_in changed unit-converted: The heading says millimeters: 1 value was"
                + " converted to inches.",
            "2 gas_holes changed code-mapped: \"true\" is read as yes. -> yes"),
        read.findings());
  }

  @Test
  void theSystemThatCountsFrom1904IsHonored() throws IOException {
    book.getCTWorkbook().addNewWorkbookPr().setDate1904(true);
    Sheet sheet = book.createSheet("requests");
    row(sheet, 1, "site_id", "asked_on");
    date(row(sheet, 2, "S1"), 1, dateStyle(), 45413 - 1462);
    Read read = read();
    assertEquals("2024-05-01", day(((Request) read.records().get(0)).askedOn()));
    assertEquals("1=1+0+0", read.counts());
  }

  @Test
  void aNumberThatIsNoDateCellIsNoDate() throws IOException {
    Sheet sheet = book.createSheet("requests");
    row(sheet, 1, "site_id", "asked_on");
    row(sheet, 2, "S1", 45413);
    date(row(sheet, 3, "S1"), 1, dateStyle(), 45413.5);
    date(row(sheet, 4, "S1"), 1, dateStyle(), 60);
    date(row(sheet, 5, "S1"), 1, dateStyle(), -1);
    assertEquals(
        List.of(
            "2 asked_on set-aside unreadable-date: \"45413\" is no date, but may be a"
                + " spreadsheet's day number. Expected YYYY-MM-DD. Correct the cell. Row set aside. -> 2024-05-01",
            "3 asked_on changed date-from-text: \"2024-05-01 12:00\" is read as 2024-05-01. ->"
                + " 2024-05-01",
            "4 asked_on set-aside out-of-range: \"1900-03-01\" is not possible here. Expected a day"
                + " from 1950-01-01 to 2100-12-31. Row set aside.",
            "5 asked_on set-aside unreadable-date: \"-1\" is no date. Expected YYYY-MM-DD. Correct the cell. Row set"
                + " aside."),
        read().findings());
  }

  @Test
  void formulasAreReadByTheirStoredValue() throws IOException {
    Sheet sheet = book.createSheet("removals");
    row(sheet, 1, "site_id", "year", "removals", "avoided");
    Row first = row(sheet, 2, "S1", 2024);
    first.createCell(2).setCellFormula("1+2");
    first.getCell(2).setCellValue(3);
    first.createCell(3).setCellFormula("A1/0");
    first.getCell(3).setCellErrorValue(FormulaError.DIV0.getCode());
    row(sheet, 3, "S1", 2023).createCell(2).setCellFormula("1+2");
    Read read = read();
    assertEquals(3, ((Removal) read.records().get(0)).removals(), 0);
    assertEquals("2=1+1+0", read.counts());
    assertTrue(
        read.findings()
            .contains(
                "0 removals notice formula-value: 2 cells hold formulas; the values last stored for"
                    + " them were read."),
        read.findings().toString());
    assertTrue(
        read.findings()
            .contains(
                "2 avoided changed error-cell: \"#DIV/0!\" is an error of the spreadsheet, not a"
                    + " value. Correct its formula, or write the value. Value left out; the row counts"
                    + " without it."),
        read.findings().toString());
  }

  @Test
  void hiddenSheetsAndMergedHeadingsAreNoticed() throws IOException {
    Sheet sheet = book.createSheet("areas");
    book.createSheet("Readme").createRow(0).createCell(0).setCellValue("How to fill this in");
    book.createSheet("Sheet3");
    row(sheet, 1, "Pond areas of 2024");
    row(sheet, 2, "Site", "Date", "Area (ha)", null, "Method");
    row(sheet, 3, "S1", "2024-05-01", 1, "by eye", "walked");
    sheet.addMergedRegion(CellRangeAddress.valueOf("C2:D2"));
    sheet.addMergedRegion(CellRangeAddress.valueOf("A1:E1"));
    book.setSheetVisibility(0, SheetVisibility.HIDDEN);
    book.setActiveSheet(1);
    Read read = read();
    assertEquals(2.471053814671653, read.only(Area.class).acres(), 1e-12);
    assertEquals(
        List.of(
            "0 - notice rows-above-headings: The headings stand in row 2; 1 row above them was not"
                + " read as data.",
            "0 acres changed unit-converted: The heading says hectares: 1 value was converted to"
                + " acres.",
            "0  notice unknown-column: Column D has no heading. 1 cell in it was not read.",
            "0 - notice hidden-sheet: The sheet is hidden. It was read all the same.",
            "0 - notice merged-heading: The cells C2:D2 in the row of headings are merged; the"
                + " heading was taken for the first column only. Give each column a heading of"
                + " its own, or name it by its place in columns.yaml.",
            "0 - notice unrecognised-table: This sheet holds explanations, as its name says. Its 1"
                + " row was not read."),
        read.findings());
    assertEquals(2, read.reports().size());
  }

  @Test
  void hiddenRowsAreReadAndTold() throws IOException {
    Sheet sheet = book.createSheet("removals");
    row(sheet, 1, "site_id", "year", "removals");
    row(sheet, 2, "S1", 2023, 1);
    row(sheet, 3, "S2", 2023, 2).setZeroHeight(true);
    row(sheet, 5, "S3", 2023, 3).setZeroHeight(true);
    sheet.createRow(7).setZeroHeight(true);
    Read read = read();
    assertEquals("3=3+0+0", read.counts());
    assertEquals(
        List.of(
            "0 - notice hidden-rows: 2 rows are hidden, the first of them row 3. Hidden rows were"
                + " read all the same."),
        read.findings());
  }

  @Test
  void aDayNumberIsSuggestedAsTheWorkbookCounts() throws IOException {
    book.getCTWorkbook().getWorkbookPr().setDate1904(true);
    Sheet sheet = book.createSheet("requests");
    row(sheet, 1, "Site", "Asked");
    row(sheet, 2, "S1", 43951);
    assertEquals(
        List.of(
            "2 asked_on set-aside unreadable-date: \"43951\" is no date, but may be a"
                + " spreadsheet's day number. Expected YYYY-MM-DD. Correct the cell. Row set aside."
                + " -> 2024-05-01"),
        read().findings());
  }

  @Test
  void totalsAndNotesBelowTheTableAreNoRecords() throws IOException {
    Sheet sheet = book.createSheet("revisits");
    row(sheet, 1, "device_id", "visited_on", "condition", "hours");
    row(sheet, 2, "Total dam 7", "2024-05-01", "working", 2);
    row(sheet, 3, "Total visits", 1, null, 2);
    row(sheet, 5, "Printed at the office");
    row(sheet, 6, "D8");
    Read read = read();
    assertEquals("4=1+0+3", read.counts());
    assertEquals(
        List.of(
            "3 - set-aside totals-row: \"Total visits\" marks totals, not a record. Row set aside.",
            "5 - set-aside lone-text: Nothing but \"Printed at the office\" stands in this row: a"
                + " note, or a record still to be filled in. Fill it in, or delete it; what stands"
                + " below the table can be cut off in columns.yaml (stop_at). Row set aside.",
            "6 visited_on set-aside missing-required: This cell is empty, and the row cannot be"
                + " used without it. Expected a day, as YYYY-MM-DD. Fill it in. Row set aside.",
            "6 condition set-aside missing-required: This cell is empty, and the row cannot be"
                + " used without it. Expected one of: working, reduced, failed, retired. Fill it in. Row set"
                + " aside."),
        read.findings());
  }

  @Test
  void longNumbersAndSharedTextsComeWhole() throws IOException {
    Sheet sheet = book.createSheet("sites");
    row(sheet, 1, "site_id", "watershed", "latitude");
    row(sheet, 2, "S1", 990101010101d, 44.1234567890123);
    row(sheet, 3, 1e15, "09010203", 1e-7);
    Read read = read();
    Site first = (Site) read.records().get(0);
    assertEquals("990101010101", first.watershed());
    assertEquals(44.1234567890123, first.latitude(), 0);
    assertEquals("1000000000000000", ((Site) read.records().get(1)).siteId());
    assertEquals(1e-7, ((Site) read.records().get(1)).latitude(), 0);
    assertEquals("2=2+0+0", read.counts());
  }

  @Test
  void textDatesOfAWorkbookAreDecidedByTheirColumn() throws IOException {
    Sheet sheet = book.createSheet("revisits");
    row(sheet, 1, "device_id", "visited_on", "condition");
    row(sheet, 2, "D1", "03/04/2024", "working");
    row(sheet, 3, "D1", "13/04/2024", "working");
    assertEquals("2024-04-03", day(((Visit) read().records().get(0)).visitedOn()));
  }

  @Test
  void cellsOfAWorkbookComeBackBySheetAndRow() throws IOException {
    row(book.createSheet("Notes"), 1, "x");
    Sheet sheet = book.createSheet("requests");
    row(sheet, 1, "Site", "Asked");
    date(row(sheet, 2, "S1"), 1, dateStyle(), 45413);
    read();
    assertEquals(
        List.of(
            new SourceRow(
                7,
                1,
                2,
                List.of("Site", "Asked"),
                List.of("site_id", "asked_on"),
                List.of("S1", "2024-05-01"))),
        PartnerFileReader.cells(
            Read.input(folder.resolve("north_records.xlsx")),
            Map.of(1, new TreeSet<>(List.of(2)))));
  }

  private String unreadable(String name, byte[] content) throws IOException {
    Read read = Read.bytes(folder, name, content);
    assertEquals(List.of("0 file-unreadable"), read.rules());
    assertEquals("0=0+0+0", read.counts());
    return read.findings()
        .get(0)
        .replace("0 - set-aside file-unreadable: The file cannot be read: ", "")
        .replace(". Nothing of it is counted.", "");
  }

  @Test
  void workbooksThatCannotBeReadAreOneFinding() throws Exception {
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    row(book.createSheet("sites"), 1, "site_id", "town");
    book.write(whole);
    for (int kept : List.of(30, 50, 66, 90, 99)) {
      byte[] cut = Arrays.copyOf(whole.toByteArray(), whole.size() * kept / 100);
      assertEquals(
          "it is broken off or damaged. Save it anew",
          unreadable("cut.xlsx", cut),
          kept + " per cent of it");
    }
    assertEquals("it is empty", unreadable("empty.xlsx", new byte[0]));
    assertEquals(
        "it is not a workbook, or it is broken",
        unreadable("text.xlsx", "site_id,town\n".getBytes(StandardCharsets.UTF_8)));
    assertEquals(
        "it is protected by a password. Save it without one",
        unreadable("locked.xlsx", encrypted(whole.toByteArray())));
    ByteArrayOutputStream old = new ByteArrayOutputStream();
    try (HSSFWorkbook xls = new HSSFWorkbook()) {
      xls.createSheet("sites");
      xls.write(old);
    }
    assertEquals(
        "it is a workbook of the old .xls kind. Save it as .xlsx",
        unreadable("old.xlsx", old.toByteArray()));
  }

  private static byte[] encrypted(byte[] workbook) throws Exception {
    ByteArrayOutputStream locked = new ByteArrayOutputStream();
    try (POIFSFileSystem parts = new POIFSFileSystem()) {
      Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("pond");
      try (OutputStream out = encryptor.getDataStream(parts)) {
        out.write(workbook);
      }
      parts.writeFilesystem(locked);
    }
    return locked.toByteArray();
  }
}
