package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.SheetReport;
import pondtally.record.Sourced;
import pondtally.record.Visit;

/** A list of rows to correct that comes back: what it replaces, and what is refused. */
class FixListsTest {

  private static final String VISITS = "north/visits.csv";
  private static final String HEADINGS = "Device,Visit date,Condition,Notes";
  private static final List<String> BROKEN = List.of("D-1", "2024-05-01", "broke", "a, b");

  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    Files.createDirectory(folder.resolve("north"));
    visits("D-1,2024-05-01,broke,\"a, b\"", "D-2,2024-05-02,working,");
  }

  @Test
  void aChangedRowReplacesTheOneThatItNames() throws IOException {
    list("back.xlsx", line(2, BROKEN, "D-1", "2024-05-01", "failed", "a, b"));

    Read read = read(VISITS);

    assertEquals("2=1+1+0", read.counts());
    assertEquals(
        List.of(
            "2 condition changed row-mended: \"broke\" was corrected to \"failed\" (north/back.xlsx, sheet north, row 2)."),
        read.findings());
    assertEquals("a, b", ((Visit) read.records().get(0)).notes());
  }

  @Test
  void theListItselfHasNoRowsAndSaysWhatItHolds() throws IOException {
    list(
        "back.xlsx",
        line(2, BROKEN, "D-1", "2024-05-01", "failed", "a, b"),
        line(3, List.of("D-2", "2024-05-02", "working"), "D-2", "2024-05-02", "working"));

    Read read = read("north/back.xlsx");

    assertEquals("0=0+0+0", read.counts());
    assertEquals(
        List.of(
            "0 - notice fix-list: This is a list of rows to correct and holds no records of its own. 1 row was changed in it, 1 left as they were."),
        read.findings());
  }

  @Test
  void aRowThatNobodyTouchedChangesNothing() throws IOException {
    list("back.xlsx", line(2, BROKEN, "D-1", "2024-05-01", "broke", "a, b"));
    assertEquals(List.of("2 unknown-code"), read(VISITS).rules());
  }

  @Test
  void aRowThatHasChangedSinceIsNotReplaced() throws IOException {
    list("back.xlsx", line(2, BROKEN, "D-1", "2024-05-01", "failed", "a, b"));
    visits("D-1,2024-05-01,reduced,\"a, b\"");

    Read read = read(VISITS);

    assertEquals("1=1+0+0", read.counts());
    assertEquals(
        List.of(
            "2 - notice mend-refused: The correction of north/visits.csv, row 2 in north/back.xlsx, sheet north, row 2 is not used: the row has changed since the list was written. The row counts as it stands here. Correct it here, or in the list that comes with the next report."),
        read.findings());
  }

  @Test
  void aRowThatWasCorrectedInTheFileAsWellIsFine() throws IOException {
    list("back.xlsx", line(2, BROKEN, "D-1", "2024-05-01", "failed", "a, b"));
    visits("D-1,2024-05-01,failed,\"a, b\"");
    assertEquals(List.of(), read(VISITS).findings());
  }

  @Test
  void rowsSheetsAndFilesThatAreGoneAreNamed() throws IOException {
    FixKey sheet = new FixKey(VISITS, "Visits", 2, FixPrint.of(BROKEN));
    FixKey file = new FixKey("north/gone.csv", "", 2, FixPrint.of(BROKEN));
    list(
        "back.xlsx",
        line(9, BROKEN, "D-1", "2024-05-01", "failed"),
        line(sheet, "D-1", "2024-05-01", "failed"),
        line(file, "D-1", "2024-05-01", "failed"));

    assertTrue(read(VISITS).findings().get(0).contains("no such sheet any more"));
    assertEquals(
        List.of("0 mend-refused", "2 unknown-code", "9 mend-refused"), read(VISITS).rules());
    assertTrue(read("north/back.xlsx").findings().get(1).contains("there is no such file"));
  }

  @Test
  void twoCorrectionsThatDisagreeAreBothRefused() throws IOException {
    list("a.xlsx", line(2, BROKEN, "D-1", "2024-05-01", "failed", "a, b"));
    list("b.xlsx", line(2, BROKEN, "D-1", "2024-05-01", "reduced", "a, b"));
    assertEquals(List.of("2 unknown-code"), read(VISITS).rules());
    assertEquals(List.of("0 fix-list", "0 mend-refused"), read("north/a.xlsx").rules());
    assertEquals(List.of("0 fix-list", "0 mend-refused"), read("north/b.xlsx").rules());
  }

  @Test
  void theSameListSentTwiceCountsOnce() throws IOException {
    list("a.xlsx", line(2, BROKEN, "D-1", "2024-05-01", "failed", "a, b"));
    list("b.xlsx", line(2, BROKEN, "D-1", "2024-05-01", "failed", "a, b"));
    assertEquals(List.of("2 row-mended"), read(VISITS).rules());
  }

  /** The next list names the row as the list before it left it. */
  @Test
  void aLaterListCorrectsWhatAnEarlierOneLeft() throws IOException {
    list("a.xlsx", line(2, BROKEN, "D-1", "2024-05-01", "faild", "a, b"));
    List<String> left = List.of("D-1", "2024-05-01", "faild", "a, b");
    assertEquals(left, cells(2));
    list("b.xlsx", line(2, left, "D-1", "2024-05-01", "failed", "a, b"));
    assertEquals(List.of("2 row-mended", "2 row-mended"), read(VISITS).rules());
    assertEquals("2=1+1+0", read(VISITS).counts());
  }

  @Test
  void anEmptiedRowIsRefused() throws IOException {
    list("back.xlsx", line(2, BROKEN, ""));
    assertEquals(List.of("2 unknown-code"), read(VISITS).rules());
    assertTrue(read("north/back.xlsx").findings().get(1).contains("it was emptied"));
  }

  @Test
  void cellsThatNobodyTouchedKeepTheirType() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      XSSFSheet sheet = book.createSheet("Revisits");
      texts(sheet.createRow(0), 0, List.of("Device", "Visit date", "Condition", "Hours"));
      Row row = sheet.createRow(1);
      texts(row, 0, List.of("D-1", "2024-05-01", "broke"));
      row.createCell(3).setCellValue(1.234);
      save(book, "book.xlsx");
    }
    List<String> old = List.of("D-1", "2024-05-01", "broke", "1.234");
    FixKey key = new FixKey("north/book.xlsx", "Revisits", 2, FixPrint.of(old));
    list("back.xlsx", line(key, "D-1", "2024-05-01", "failed", "1.234"));
    Read read = read("north/book.xlsx");
    assertEquals(List.of("2 row-mended"), read.rules());
    assertEquals(1.234, read.only(Visit.class).hours());
  }

  @Test
  void fingerprintsTellRowsApartAndOverlookWhatSavingDoes() {
    assertEquals(FixPrint.of(List.of("a", "b")), FixPrint.of(List.of(" a", "b\u00a0", "")));
    assertEquals(FixPrint.of(List.of("a\r\nb")), FixPrint.of(List.of("a\nb")));
    assertEquals(FixPrint.of(List.of("a\u0001")), FixPrint.of(List.of("a\\u0001")));
    assertEquals(FixPrint.of(List.of("\u0001\ta")), FixPrint.of(List.of("\\u0001\ta")));
    assertNotEquals(FixPrint.of(List.of("ab", "")), FixPrint.of(List.of("a", "b")));
    assertNotEquals(FixPrint.of(List.of("", "a")), FixPrint.of(List.of("a")));
    // FIPS 180-4: SHA-256 of nothing begins with e3b0c44298fc1c14.
    assertEquals("e3b0c44298fc1c14", FixPrint.of(List.of("")));
  }

  @Test
  void keysSurviveAnyName() {
    FixKey key = new FixKey("nörth/a|b %20=1.csv", "S|1", 7, "0123456789abcdef");
    assertEquals(key, FixKey.parse(key.text()).orElseThrow());
    assertTrue(FixKey.parse("fix1|0123|7|a|").isEmpty());
    assertTrue(FixKey.parse("fix1|0123456789abcdef|7|%zz|").isEmpty());
  }

  private record Line(FixKey key, List<String> cells) {}

  private static Line line(int row, List<String> old, String... cells) {
    return line(new FixKey(VISITS, "", row, FixPrint.of(old)), cells);
  }

  private static Line line(FixKey key, String... cells) {
    return new Line(key, List.of(cells));
  }

  /** A list with its keys in column C, below a title. */
  private void list(String name, Line... lines) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      book.createSheet("Read me").createRow(0).createCell(0).setCellValue("How");
      XSSFSheet sheet = book.createSheet("north");
      texts(sheet.createRow(0), 0, List.of("Rows to correct", "", FixMarks.FIX_LIST));
      for (int i = 0; i < lines.length; i++) {
        Row row = sheet.createRow(i + 1);
        texts(row, 0, List.of("Set aside", "see", lines[i].key().text()));
        texts(row, 3, lines[i].cells());
      }
      save(book, name);
    }
  }

  private static void texts(Row row, int from, List<String> texts) {
    for (int i = 0; i < texts.size(); i++) {
      row.createCell(from + i).setCellValue(texts.get(i));
    }
  }

  private void save(XSSFWorkbook book, String name) throws IOException {
    try (OutputStream out = Files.newOutputStream(folder.resolve("north").resolve(name))) {
      book.write(out);
    }
  }

  private void visits(String... rows) throws IOException {
    String text = HEADINGS + "\n" + String.join("\n", rows) + "\n";
    Files.writeString(folder.resolve("north/visits.csv"), text);
  }

  private Read read(String path) {
    List<Sourced> records = new ArrayList<>();
    List<SheetReport> reports = PartnerFileReader.read(input(path), Read.SETTINGS, records::add);
    return new Read(reports, records);
  }

  private List<String> cells(int row) throws IOException {
    return PartnerFileReader.cells(input(VISITS), Map.of(0, new TreeSet<>(List.of(row))))
        .get(0)
        .cells();
  }

  private InputFile input(String path) {
    return FixLists.applied(ProgramFolder.files(folder)).stream()
        .filter(file -> file.path().equals(path))
        .findFirst()
        .orElseThrow();
  }
}
