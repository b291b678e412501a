package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.QuoteMode;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import pondtally.record.Sourced;
import pondtally.record.Visit;

/** Files and strings that others collected to break readers; {@code corpora/SOURCES.md}. */
@Tag("reliability")
class CorporaTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  private static final Pattern PLAIN = Pattern.compile("-?(\\d+\\.?\\d*|\\.\\d+)");

  @TempDir Path folder;

  private static Path corpus(String path) {
    try {
      return Path.of(CorporaTest.class.getResource("/corpora/" + path).toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Every row with the number a spreadsheet shows, and whether a mark in it was a stray. */
  private static List<RawRow> rows(Path file) throws IOException {
    List<RawRow> rows = new ArrayList<>();
    CsvSource.of(file, TextForm.UNSTATED).read(row -> rows.add(row.copy()));
    return rows;
  }

  private static List<List<String>> cells(Path file) throws IOException {
    return rows(file).stream().map(row -> row.cells().stream().map(Blank::clean).toList()).toList();
  }

  // csv-spectrum

  @ParameterizedTest
  @ValueSource(
      strings = {
        "comma_in_quotes",
        "empty",
        "empty_crlf",
        "escaped_quotes",
        "json",
        "location_coordinates",
        "newlines",
        "newlines_crlf",
        "quotes_and_newlines",
        "simple",
        "simple_crlf",
        "utf8"
      })
  void csvSpectrumIsRead(String name) throws IOException {
    JsonNode json = JSON.readTree(corpus("csv-spectrum/" + name + ".json").toFile());
    List<RawRow> rows = rows(corpus("csv-spectrum/" + name + ".csv"));
    List<String> headings = rows.get(0).cells();
    List<JsonNode> expected = new ArrayList<>();
    (json.isArray() ? json : List.of(json)).forEach(expected::add);
    assertEquals(expected.size(), rows.size() - 1);
    for (int i = 0; i < expected.size(); i++) {
      assertEquals(expected.get(i).size(), headings.size());
      for (int j = 0; j < headings.size(); j++) {
        // Line ends within a cell are kept as line feeds; the slip of the source is in SOURCES.md.
        String value = expected.get(i).get(headings.get(j)).asText().replace("\r\n", "\n");
        if (!headings.get(j).equals("Contact Phone Number")) {
          assertEquals(value, rows.get(i + 1).cell(j), headings.get(j));
        }
      }
    }
  }

  // Commons CSV's own test files

  @Test
  void commonsTestFileIsReadAsItsExpectedRowsSay() throws IOException {
    List<String> expected =
        Files.readAllLines(corpus("commons-csv/test_rfc4180_trim.txt")).stream()
            .skip(2)
            .map(line -> line.replaceAll(" +", " "))
            .toList();
    List<String> found =
        cells(corpus("commons-csv/test.csv")).stream()
            .map(row -> (row.size() + ":" + row).replaceAll(" +", " "))
            .toList();
    // It keeps the spaces within quotation marks; here cells lose them in the end.
    List<String> cleaned =
        expected.stream().map(line -> line.replace("[ i , j , k , l ]", "[i, j, k, l]")).toList();
    assertEquals(cleaned, found);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bom.csv",
        "emoji.csv",
        "japanese.csv",
        "testCSV85.csv",
        "testCSV246.csv",
        "999751170.patch.csv",
        "psql.csv",
        "sample.txt"
      })
  void commonsFilesAreReadAsCommonsDoes(String name) throws IOException {
    Path file = corpus("commons-csv/" + name);
    char delimiter = name.startsWith("999") ? ';' : ',';
    CSVFormat format =
        CSVFormat.RFC4180.builder().setDelimiter(delimiter).setIgnoreEmptyLines(false).get();
    String text = Files.readString(file).replace("\ufeff", "").replace("\r\n", "\n");
    List<List<String>> expected = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      for (CSVRecord row : parser) {
        expected.add(row.stream().map(Blank::clean).toList());
      }
    }
    assertEquals(expected, cells(file));
  }

  @Test
  void strayMarksOfCommonsFilesCostNoRow() throws IOException {
    List<RawRow> issue141 = rows(corpus("commons-csv/csv-141.csv"));
    assertEquals(4, issue141.size());
    assertEquals("pass sem1 _84:\\", issue141.get(1).cell(4), "a backslash escapes nothing");
    assertEquals(
        List.of(false, false, true, true), issue141.stream().map(r -> r.hasStrayQuote).toList());
    List<RawRow> issue254 = rows(corpus("commons-csv/csv-254.csv"));
    assertEquals(
        List.of(List.of("AA", "33", ""), List.of("AA", "", ""), List.of("", "33", "CC")),
        issue254.stream().map(RawRow::cells).toList());
    List<RawRow> issue167 = rows(corpus("commons-csv/sample1.csv"));
    assertEquals(8, issue167.size());
    assertEquals("1989", issue167.get(2).cell(2));
    assertEquals("The Hitchhiker's \\\"Guide\\\" to the Galaxy", issue167.get(6).cell(1));
    List<RawRow> issue290 = rows(corpus("commons-csv/psql.tsv"));
    assertEquals(List.of(5, 5, 5), issue290.stream().map(r -> r.width).toList());
    // A database's own form quotes nothing; what spreadsheets save with tabs is quoted as in CSV.
    assertEquals("quoted", issue290.get(2).cell(3));
  }

  @ParameterizedTest
  @ValueSource(strings = {"bom.csv", "emoji.csv", "csv-141.csv", "sample1.csv", "psql.csv"})
  void whatIsNoTableOfOursIsRefusedByName(String name) throws IOException {
    Path copy = Files.copy(corpus("commons-csv/" + name), folder.resolve(name));
    Read read = Read.file(copy);
    assertEquals(List.of(), read.records());
    assertTrue(read.rules().contains("0 unrecognised-table"), read.findings().toString());
  }

  // The big list of naughty strings

  private static List<String> naughty() throws IOException {
    List<String> strings = new ArrayList<>();
    JSON.readTree(corpus("naughty-strings/blns.json").toFile())
        .forEach(node -> strings.add(node.asText()));
    assertEquals(461, strings.size());
    return strings;
  }

  /** Where a naughty string stands. */
  enum Column {
    DEVICE("device_id"),
    DAY("visited_on"),
    CONDITION("condition"),
    NOTES("notes"),
    HOURS("hours"),
    ACRES("wetland_acres"),
    SEEN("beaver_present"),
    PAYER("paid_by");

    private static final Map<String, String> SOUND =
        Map.of("device_id", "D1", "visited_on", "2024-05-01", "condition", "working");

    private final String heading;

    Column(String heading) {
      this.heading = heading;
    }

    List<String> headings() {
      Set<String> all = new HashSet<>(SOUND.keySet());
      all.add(heading);
      return all.stream().sorted().toList();
    }

    List<String> row(String text) {
      return headings().stream().map(h -> h.equals(heading) ? text : SOUND.get(h)).toList();
    }

    Object in(Visit visit) {
      return switch (this) {
        case DEVICE -> visit.deviceId();
        case DAY -> visit.visitedOn();
        case CONDITION -> visit.condition();
        case NOTES -> visit.notes();
        case HOURS -> visit.hours();
        case ACRES -> visit.wetlandAcres();
        case SEEN -> visit.beaverPresent();
        case PAYER -> visit.paidBy();
      };
    }
  }

  @ParameterizedTest
  @EnumSource
  void naughtyStringsInTextAreKeptOrNamed(Column column) throws IOException {
    for (QuoteMode mode : List.of(QuoteMode.MINIMAL, QuoteMode.ALL)) {
      Path file = folder.resolve(mode + "/revisits.csv");
      Files.createDirectories(file.getParent());
      CSVFormat format = CSVFormat.RFC4180.builder().setQuoteMode(mode).get();
      try (CSVPrinter printer =
          new CSVPrinter(Files.newBufferedWriter(file, StandardCharsets.UTF_8), format)) {
        printer.printRecord(column.headings());
        for (String text : naughty()) {
          printer.printRecord(column.row(text));
        }
      }
      judge(column, Read.file(file), naughty(), false);
    }
  }

  @ParameterizedTest
  @EnumSource
  void naughtyStringsInWorkbooksAreKeptOrNamed(Column column) throws IOException {
    Path file = folder.resolve("revisits.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      Sheet sheet = book.createSheet("revisits");
      fill(sheet.createRow(0), column.headings());
      for (String text : naughty()) {
        fill(sheet.createRow(sheet.getLastRowNum() + 1), column.row(text));
      }
      book.write(out);
    }
    // POI itself writes a question mark for what XML cannot hold.
    judge(column, Read.file(file), naughty().stream().map(CorporaTest::asXml).toList(), true);
  }

  private static String asXml(String text) {
    return text.replaceAll(
        "[^\\t\\n\\r\\x20-\\x{d7ff}\\x{e000}-\\x{fffd}\\x{10000}-\\x{10ffff}]", "?");
  }

  private static void fill(Row row, List<String> cells) {
    for (String cell : cells) {
      row.createCell(Math.max(0, row.getLastCellNum())).setCellValue(cell);
    }
  }

  /** Each row is a record whose value is the string, or there is a finding about it. */
  private static void judge(Column column, Read read, List<String> strings, boolean isWorkbook) {
    Map<Integer, Visit> visits = new HashMap<>();
    for (Sourced record : read.records()) {
      visits.put(record.origin().row(), (Visit) record);
    }
    Set<Integer> named = new HashSet<>();
    read.report().findings().forEach(finding -> named.add(finding.origin().row()));
    assertEquals(strings.size(), read.report().counts().read(), read.findings().toString());
    int row = 2;
    for (String text : strings) {
      String clean = Blank.clean(text.replace("\r\n", "\n"));
      Visit visit = visits.get(row);
      boolean isKept = visit != null && isSame(clean, column.in(visit));
      assertTrue(isKept || named.contains(row), row + " " + text + " " + visit);
      row += isWorkbook ? 1 : 1 + (int) text.chars().filter(c -> c == '\n').count();
    }
  }

  private static boolean isSame(String clean, Object value) {
    if (value == null) {
      return clean.isEmpty();
    }
    return value instanceof Double number
        ? PLAIN.matcher(clean).matches() && Double.parseDouble(clean) == number
        : value.toString().equals(clean);
  }
}
