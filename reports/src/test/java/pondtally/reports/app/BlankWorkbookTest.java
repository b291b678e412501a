package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.schema.FieldSchema;
import pondtally.schema.TableSchema;

/** The empty workbook, as a spreadsheet program opens it. */
class BlankWorkbookTest {

  private static final List<String> TABLES =
      List.of(
          "sites",
          "installs",
          "materials",
          "revisits",
          "removals",
          "properties",
          "areas",
          "budgets",
          "expenses",
          "requests");

  @TempDir static Path folder;
  private static XSSFWorkbook book;

  @BeforeAll
  static void write() throws Exception {
    Path file = folder.resolve("blank.xlsx");
    assertEquals(0, Main.run("blank", "--out", file.toString()));
    book = new XSSFWorkbook(file.toFile());
  }

  @AfterAll
  static void close() throws Exception {
    book.close();
  }

  @Test
  void thereIsASheetForEachTableBetweenTwoThatExplain() {
    List<String> names = new ArrayList<>();
    book.forEach(sheet -> names.add(sheet.getSheetName()));
    assertEquals("Read me", names.get(0));
    assertEquals("Notes on columns", names.get(names.size() - 1));
    assertEquals(
        TABLES,
        names.subList(1, names.size() - 1).stream()
            .map(n -> TableSchema.find(n).orElseThrow().name())
            .toList());
  }

  @Test
  void everyHeadingIsReadAsItsField() {
    for (String name : TABLES) {
      TableSchema table = TableSchema.named(name);
      List<String> fields = new ArrayList<>();
      for (Cell cell : sheet(name).getRow(0)) {
        var match = table.match(cell.getStringCellValue()).orElseThrow(AssertionError::new);
        assertEquals("", match.comment(), cell.getStringCellValue());
        fields.add(match.field().name());
        boolean isMarked = cell.getStringCellValue().endsWith("\u00a0*");
        assertEquals(match.field().required(), isMarked, cell.getStringCellValue());
      }
      List<String> all = new ArrayList<>(table.fields().stream().map(FieldSchema::name).toList());
      all.remove("partner");
      assertEquals(all, fields);
    }
  }

  @Test
  void headingsHaveNotesAndStayInView() {
    for (String name : TABLES) {
      XSSFSheet sheet = sheet(name);
      assertEquals(1, sheet.getPaneInformation().getHorizontalSplitPosition());
      TableSchema table = TableSchema.named(name);
      for (Cell cell : sheet.getRow(0)) {
        FieldSchema field = table.match(cell.getStringCellValue()).orElseThrow().field();
        String note = cell.getCellComment().getString().getString();
        assertTrue(note.contains(field.description().substring(0, 10)), note);
        assertTrue(note.startsWith(field.required() ? "Needed." : "O"), note);
        assertFalse(note.contains("_"), note);
      }
    }
  }

  @Test
  void cellsOfCodesOfferTheWholeList() {
    for (String name : TABLES) {
      for (FieldSchema field : TableSchema.named(name).fields()) {
        if (!field.codes().isEmpty()) {
          XSSFDataValidation check = check(sheet(name), field.position());
          assertEquals(
              field.codes(),
              Arrays.asList(check.getValidationConstraint().getExplicitListValues()));
          assertEquals(DataValidation.ErrorStyle.STOP, check.getErrorStyle());
          assertTrue(check.getShowErrorBox());
        }
      }
    }
  }

  @Test
  void numbersAndDaysAreCheckedDownToTheLastRow() {
    Set<String> types = new HashSet<>();
    for (String name : TABLES) {
      for (FieldSchema field : TableSchema.named(name).fields()) {
        boolean isText = field.type() == pondtally.schema.FieldType.STRING;
        if (!isText) {
          XSSFDataValidation check = check(sheet(name), field.position());
          assertEquals(1_048_575, check.getRegions().getCellRangeAddresses()[0].getLastRow());
          types.add(field.type() + " " + check.getValidationConstraint().getValidationType());
        }
      }
    }
    assertEquals(Set.of("DATE 4", "NUMBER 2", "INTEGER 1", "YEAR 1", "BOOLEAN 3"), types);
    XSSFDataValidation diameter = check(sheet("installs"), 5);
    assertEquals("1", diameter.getValidationConstraint().getFormula1());
    assertEquals("48", diameter.getValidationConstraint().getFormula2());
    // 1 January 1950 is day 18,264 of the 1900 system (ECMA-376 part 1, 18.17.4.1).
    assertEquals("18264", check(sheet("installs"), 2).getValidationConstraint().getFormula1());
  }

  @Test
  void idsAreTextAndDaysAreDays() {
    XSSFSheet installs = sheet("installs");
    assertEquals("@", installs.getColumnStyle(0).getDataFormatString());
    assertEquals("yyyy-mm-dd", installs.getColumnStyle(2).getDataFormatString());
  }

  @Test
  void theSameBytesEachTime() throws Exception {
    Path again = folder.resolve("again.xlsx");
    Main.run("blank", "--out", again.toString());
    assertArrayEquals(Files.readAllBytes(folder.resolve("blank.xlsx")), Files.readAllBytes(again));
  }

  @Test
  void whatIsThereIsOverwrittenOnDemandOnly() throws Exception {
    Path file = folder.resolve("mine.xlsx");
    Files.writeString(file, "mine");
    assertEquals(4, Main.run("blank", "--out", file.toString()));
    assertEquals("mine", Files.readString(file));
    assertEquals(0, Main.run("blank", "--out", file.toString(), "--replace"));
    assertTrue(Files.size(file) > 5_000);
    assertEquals(2, Main.run("blank", "--out", folder.resolve("mine.ods").toString()));
    Path inTheWay = Files.createDirectory(folder.resolve("folder.xlsx"));
    assertEquals(4, Main.run("blank", "--out", inTheWay.toString(), "--replace"));
  }

  private static XSSFSheet sheet(String table) {
    return book.getSheetAt(1 + TABLES.indexOf(table));
  }

  private static XSSFDataValidation check(XSSFSheet sheet, int column) {
    return sheet.getDataValidations().stream()
        .filter(v -> v.getRegions().getCellRangeAddresses()[0].getFirstColumn() == column)
        .findFirst()
        .orElseThrow(() -> new AssertionError(sheet.getSheetName() + " column " + column));
  }
}
