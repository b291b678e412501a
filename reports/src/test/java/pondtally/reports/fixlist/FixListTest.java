package pondtally.reports.fixlist;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.form.FormField;
import pondtally.reports.form.FormKind;
import pondtally.reports.form.FormNeed;
import pondtally.reports.form.FormTable;
import pondtally.reports.table.TablePackage;

class FixListTest {

  private static final FormField WALL =
      new FormField(
          "pipe_wall",
          "Pipe wall",
          FormKind.CODE,
          FormNeed.OPTIONAL,
          "",
          "How the wall is made.",
          List.of("single", "dual", "smooth", "none"),
          null,
          null);
  private static final ReturnMarks MARKS =
      new ReturnMarks(
          "the mark", List.of(new FormTable("installs", "Installs", "Devices.", List.of(WALL))));

  @TempDir static Path folder;
  private static TablePackage tables;
  private static Path file;
  private static XSSFWorkbook book;

  @BeforeAll
  static void write() throws Exception {
    tables = TablesFixture.open(folder.resolve("tables"), 20);
    file = folder.resolve("fix-list.xlsx");
    FixList.write(tables, MARKS, file);
    book = new XSSFWorkbook(file.toFile());
  }

  @AfterAll
  static void close() throws Exception {
    book.close();
  }

  @Test
  void eachPartnerHasASheetAfterTheReadMe() {
    List<String> names = new ArrayList<>();
    book.forEach(sheet -> names.add(sheet.getSheetName()));
    assertEquals(
        List.of(
            "Read me",
            "=HYPERLINK(\"http---example.inva",
            "History-",
            "North Reach crew",
            "Sedge & Sons - \"Culverts\"",
            "Upper Quillwater and Lower Quil"),
        names);
  }

  @Test
  void readMeCountsWhatEachPartnerHasToLookAt() {
    assertTrue(
        text(book.getSheet("Read me"))
            .contains(
                "Sheet \"North Reach crew\": 1 row set aside, 1 changed, 1 duplicate, 1 to look at; 1 note on whole columns, sheets or files."));
    assertTrue(text(book.getSheet("Read me")).contains("Sheet \"History-\": nothing to correct."));
  }

  @Test
  void issuesWithoutARowComeFirst() {
    List<String> lines = firstCells(book.getSheet("North Reach crew"));
    int wide = lines.indexOf("Whole columns, sheets and files");
    int first = lines.indexOf("north/installs-2024.csv");
    int second = lines.indexOf("north/visits.xlsx, sheet Visits 0");
    assertTrue(wide > 0 && wide < first && first < second, lines.toString());
  }

  @Test
  void rowsThatAreNotCountedComeBeforeOthers() {
    Sheet sheet = book.getSheet("North Reach crew");
    int header = rowOf(sheet, "north/installs-2024.csv") + 1;
    assertEquals("Set aside: not counted", cell(sheet, header + 1, 0));
    assertEquals(14, sheet.getRow(header + 1).getCell(1).getNumericCellValue());
    assertEquals("Counted, with a changed or dropped value", cell(sheet, header + 2, 0));
    assertEquals("Duplicate: not counted twice", cell(sheet, header + 3, 0));
  }

  @Test
  void headingsAndValuesAreThePartnersOwn() {
    Sheet sheet = book.getSheet("North Reach crew");
    int header = rowOf(sheet, "north/installs-2024.csv") + 1;
    assertEquals("Install date", cell(sheet, header, 7));
    assertEquals("31/02/2024", cell(sheet, header + 1, 7));
    int visits = rowOf(sheet, "north/visits.xlsx, sheet Visits 0") + 1;
    assertEquals("When", cell(sheet, visits, 6));
  }

  @Test
  void cellsAtFaultAreFramedAndNamedInTheMessage() {
    Sheet sheet = book.getSheet("North Reach crew");
    int row = rowOf(sheet, "north/installs-2024.csv") + 2;
    assertEquals(BorderStyle.MEDIUM, sheet.getRow(row).getCell(7).getCellStyle().getBorderLeft());
    assertEquals(BorderStyle.NONE, sheet.getRow(row).getCell(6).getCellStyle().getBorderLeft());
    assertTrue(cell(sheet, row, 2).startsWith("Install date: \"31/02/2024\" is not a real date."));
    assertTrue(cell(sheet, row, 2).contains("\nCrew: "));
    assertEquals("Wall: dual", cell(sheet, row + 1, 3));
  }

  @Test
  void cellsOfCodesOfferTheList() {
    Sheet sheet = book.getSheet("North Reach crew");
    int header = rowOf(sheet, "north/installs-2024.csv") + 1;
    DataValidation check = sheet.getDataValidations().get(0);
    assertEquals(
        new CellRangeAddress(header + 1, header + 3, 8, 8),
        check.getRegions().getCellRangeAddresses()[0]);
    assertEquals(
        List.of("single", "dual", "smooth", "none"),
        List.of(check.getValidationConstraint().getExplicitListValues()));
    assertEquals(DataValidation.ErrorStyle.WARNING, check.getErrorStyle());
    assertEquals(1, sheet.getDataValidations().size());
  }

  @Test
  void everyRowHasItsKeyUnderTheMark() {
    Sheet sheet = book.getSheet("North Reach crew");
    assertEquals("the mark", cell(sheet, 0, 4));
    int header = rowOf(sheet, "north/installs-2024.csv") + 1;
    assertEquals("key of row 14", cell(sheet, header + 1, 4));
    assertEquals("key of row 3", cell(sheet, header + 2, 4));
  }

  @Test
  void partnersTextStaysText() {
    int marked = 0;
    for (Sheet sheet : book) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          assertFalse(cell.getCellType() == CellType.FORMULA);
          if (cell.getCellType() == CellType.STRING
              && !cell.getStringCellValue().isEmpty()
              && "=+-@".indexOf(cell.getStringCellValue().charAt(0)) >= 0) {
            assertTrue(cell.getCellStyle().getQuotePrefixed(), cell.getStringCellValue());
            marked++;
          }
        }
      }
    }
    assertEquals(4, marked);
  }

  @Test
  void sameTablesGiveTheSameBytesOnAnyMachine() throws Exception {
    Path again = folder.resolve("again.xlsx");
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
      FixList.write(tables, MARKS, again);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
    assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(again));
  }

  @Test
  void issueWhoseRowIsNotInTheTablesIsNotLost() throws Exception {
    TablePackage without =
        TablesFixture.open(folder.resolve("without"), TablesFixture.only("data_issues"));
    Path other = folder.resolve("without.xlsx");
    FixList.write(without, MARKS, other);
    try (XSSFWorkbook noRows = new XSSFWorkbook(other.toFile())) {
      assertTrue(text(noRows.getSheet("North Reach crew")).contains("is not a real date"));
    }
  }

  private static String cell(Sheet sheet, int row, int column) {
    return sheet.getRow(row).getCell(column).getStringCellValue();
  }

  private static int rowOf(Sheet sheet, String first) {
    return firstCells(sheet).indexOf(first);
  }

  private static List<String> firstCells(Sheet sheet) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i <= sheet.getLastRowNum(); i++) {
      Row row = sheet.getRow(i);
      cells.add(row == null || row.getCell(0) == null ? "" : row.getCell(0).toString());
    }
    return cells;
  }

  private static String text(Sheet sheet) {
    StringBuilder all = new StringBuilder();
    sheet.forEach(row -> row.forEach(cell -> all.append(cell).append('\n')));
    return all.toString();
  }
}
