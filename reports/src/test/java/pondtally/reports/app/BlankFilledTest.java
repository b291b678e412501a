package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.SheetReport;
import pondtally.intake.InputFile;
import pondtally.intake.IntakeSettings;
import pondtally.intake.PartnerFileReader;
import pondtally.record.Install;
import pondtally.record.Site;
import pondtally.record.Sourced;
import pondtally.reports.fixture.Office;
import pondtally.schema.FieldSchema;
import pondtally.schema.TableSchema;

/** The empty workbook, filled in and saved by a spreadsheet program, is read as it is. */
class BlankFilledTest {

  private static final int ROWS = 3;

  @TempDir Path folder;

  @Test
  void filledInItIsReadWithoutAnIssue() throws Exception {
    readsWithoutIssue(filled());
  }

  @Test
  void savedByLibreOfficeItIsReadWithoutAnIssue() throws Exception {
    Office.needed();
    Path saved = Office.convert(filled(), "xlsx", Files.createDirectories(folder.resolve("out")));
    readsWithoutIssue(saved);
    try (XSSFWorkbook book = new XSSFWorkbook(saved.toFile())) {
      // The lists are still there for whoever fills in the next row.
      assertTrue(book.getSheet("Revisits").getDataValidations().size() > 5);
      assertEquals(5 + 3, notes(book));
    }
  }

  @Test
  void emptyItIsReadWithoutAnIssue() throws Exception {
    Path file = folder.resolve("empty.xlsx");
    Main.run("blank", "--out", file.toString());
    List<Sourced> records = new ArrayList<>();
    for (SheetReport report : read(file, records)) {
      assertEquals(List.of(), report.findings());
      assertEquals(0, report.counts().read());
    }
    assertEquals(List.of(), records);
  }

  /** A planted fault shows that an issue would be seen. */
  @Test
  void whatIsWrittenOutsideTheListsIsFound() throws Exception {
    Path file = filled();
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      book.getSheet("Revisits").getRow(1).getCell(2).setCellValue("broke");
      try (OutputStream out = Files.newOutputStream(file)) {
        book.write(out);
      }
    }
    List<String> rules = new ArrayList<>();
    read(file, new ArrayList<>()).forEach(r -> r.findings().forEach(f -> rules.add(f.rule())));
    assertEquals(List.of("unknown-code"), rules);
  }

  private void readsWithoutIssue(Path file) {
    List<Sourced> records = new ArrayList<>();
    TreeMap<String, Long> used = new TreeMap<>();
    for (SheetReport report : read(file, records)) {
      assertEquals(List.of(), report.findings(), report.sheetName());
      used.put(report.table(), report.counts().used());
    }
    assertEquals(10, used.size());
    used.forEach((table, count) -> assertEquals(ROWS, count, table));
    assertEquals(10 * ROWS, records.size());
    values(records);
  }

  private static void values(List<Sourced> records) {
    Site site = first(records, Site.class);
    assertEquals("0012", site.siteId());
    assertEquals("01020304", site.watershed());
    Install install = first(records, Install.class);
    assertEquals((int) LocalDate.of(2024, 5, 6).toEpochDay(), install.installedOn());
    assertEquals(24.5, install.pipeDiameterIn());
    assertEquals(Boolean.TRUE, install.gasHoles());
    assertEquals("north crew", install.crew());
  }

  private static <T> T first(List<Sourced> records, Class<T> type) {
    return records.stream().filter(type::isInstance).map(type::cast).findFirst().orElseThrow();
  }

  /** Headings of budgets and of requests that have a note. */
  private static long notes(XSSFWorkbook book) {
    long notes = 0;
    for (String sheet : List.of("Budgets", "Requests")) {
      for (Cell cell : book.getSheet(sheet).getRow(0)) {
        notes += cell.getCellComment() == null ? 0 : 1;
      }
    }
    return notes;
  }

  private static List<SheetReport> read(Path file, List<Sourced> records) {
    return PartnerFileReader.read(
        new InputFile(0, "north/" + file.getFileName(), file.toString(), "north"),
        IntakeSettings.on(LocalDate.of(2025, 12, 31)),
        records::add);
  }

  /** Every cell of some rows of every sheet filled in with what its column asks for. */
  private Path filled() throws Exception {
    Path file = folder.resolve("filled.xlsx");
    Main.run("blank", "--out", file.toString());
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      for (XSSFSheet sheet : sheets(book)) {
        fill(sheet, TableSchema.find(sheet.getSheetName()).orElseThrow());
      }
      try (OutputStream out = Files.newOutputStream(file)) {
        book.write(out);
      }
    }
    return file;
  }

  private static List<XSSFSheet> sheets(XSSFWorkbook book) {
    List<XSSFSheet> sheets = new ArrayList<>();
    for (int i = 1; i < book.getNumberOfSheets() - 1; i++) {
      sheets.add(book.getSheetAt(i));
    }
    return sheets;
  }

  private static void fill(XSSFSheet sheet, TableSchema table) {
    for (int r = 1; r <= ROWS; r++) {
      Row row = sheet.createRow(r);
      for (Cell heading : sheet.getRow(0)) {
        FieldSchema field = table.match(heading.getStringCellValue()).orElseThrow().field();
        Cell cell = row.createCell(heading.getColumnIndex());
        CellStyle style = sheet.getColumnStyle(heading.getColumnIndex());
        cell.setCellStyle(style);
        put(cell, field, r);
      }
    }
  }

  private static void put(Cell cell, FieldSchema field, int row) {
    switch (field.type()) {
      case DATE -> cell.setCellValue(LocalDate.of(2024, 5, 5 + row));
      case YEAR -> cell.setCellValue(2020 + row);
      case INTEGER -> cell.setCellValue(row);
      case NUMBER -> cell.setCellValue((field.minimum() + Math.min(field.maximum(), 48)) / 2);
      case BOOLEAN -> cell.setCellValue("yes");
      default -> cell.setCellValue(text(field, row));
    }
  }

  private static String text(FieldSchema field, int row) {
    if (!field.codes().isEmpty()) {
      return field.codes().get(row % field.codes().size());
    }
    return switch (field.name()) {
      case "watershed" -> "01020304";
      case "crew" -> "north crew";
      default -> field.name().endsWith("_id") ? "00" + (11 + row) : "some text";
    };
  }
}
