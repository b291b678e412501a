package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pondtally.check.SheetReport;
import pondtally.record.Sourced;
import pondtally.record.Visit;

/** The traps of text files: each is noticed, and none loses a row. */
class TextFileTest {

  @TempDir Path folder;

  private Read visits(String content) throws IOException {
    return Read.text(folder, "revisits.csv", content);
  }

  private static String note(Sourced record) {
    return ((Visit) record).notes();
  }

  private static List<Integer> rows(Read read) {
    return read.records().stream().map(record -> record.origin().row()).toList();
  }

  @Test
  void aByteOrderMarkIsNoPartOfTheFirstHeading() throws IOException {
    Read read = visits("\ufeffdevice_id,visited_on,condition\nD1,2024-01-01,working\n");
    assertEquals("device_id", read.report().headings().get("device_id"));
    assertEquals("1=1+0+0", read.counts());
    assertEquals(List.of(), read.findings());
  }

  @Test
  void shortRowsAreNoticedAndLongOnesSetAside() throws IOException {
    Read read =
        visits(
            """
            device_id,visited_on,condition,notes
            D1,2024-01-01,working
            D2,2024-01-01,working,wet, cold
            D3,2024-01-01,working,,,
            """);
    assertEquals("3=2+0+1", read.counts());
    assertEquals(
        List.of(
            "2 - notice ragged-row: The row has 3 cells where the table has 4 columns; the last ones"
                + " were read as empty.",
            "3 - set-aside ragged-row: The row has 5 cells where the table has 4 columns, so values may"
                + " stand in the wrong column. Expected quotation marks around a cell that holds the"
                + " separator. Row set aside."),
        read.findings());
  }

  @Test
  void oneOfTwoEqualHeadingsIsRead() throws IOException {
    Read read = visits("device_id,visited_on,condition,notes,Notes\nD1,2024-01-01,working,a,b\n");
    assertEquals("a", note(read.records().get(0)));
    assertEquals(
        List.of(
            "0 Notes notice duplicate-heading: Columns D and E both stand for notes, of which"
                + " column D was read. Keep one of them, or name the right one in columns.yaml. 1"
                + " cell of column E was not read."),
        read.findings());
  }

  @Test
  void aStrayQuoteCostsOneRow() throws IOException {
    Read read =
        visits(
            """
            device_id,visited_on,condition,notes
            D1,2024-01-01,working,"never closed
            D2,2024-01-01,working,ok
            "D3" x,2024-01-01,working,ok
            D4,2024-01-01,working,"a ""b"" c"
            D5,2024-01-01,working,"x" y
            D6,2024-01-01,working,12" pipe
            """);
    assertEquals(List.of(2, 3, 5, 6, 7), rows(read));
    assertEquals("6=5+0+1", read.counts());
    assertEquals(List.of("2 stray-quote", "4 stray-quote", "6 stray-quote"), read.rules());
    assertEquals("a \"b\" c", note(read.records().get(2)));
    assertEquals("12\" pipe", note(read.records().get(4)));
    assertEquals(
        "4 - set-aside stray-quote: A quotation mark opens a cell and is not closed as it must be."
            + " Expected the whole cell in quotation marks, those inside it doubled. Row set"
            + " aside.",
        read.findings().get(1));
  }

  @Test
  void twoStrayQuotesSwallowNoRowBetweenThem() throws IOException {
    Read read =
        visits(
            """
            device_id,visited_on,condition,notes
            D1,2024-01-01,working,"open
            D2,2024-01-01,working,ok
            D3,2024-01-01,working,close"
            """);
    assertEquals(List.of(2, 3, 4), rows(read));
    assertEquals(List.of("2 stray-quote"), read.rules());
  }

  @Test
  void aCellOfSeveralLinesIsOneRowAsInASpreadsheet() throws IOException {
    Read read =
        visits(
            """
            device_id,visited_on,condition,notes
            D1,2024-01-01,working,"one
            two, three

            four"
            D2,2024-01-01,working,x
            """);
    assertEquals("one\ntwo, three\n\nfour", note(read.records().get(0)));
    assertEquals(List.of(2, 3), rows(read));
  }

  @Test
  void blankLinesAreNoRowsButCount() throws IOException {
    Read read =
        visits(
            "\n\ndevice_id,visited_on,condition\n\nD1,2024-01-01,working\n,,\n \nD2,2024-01-01,working\n");
    assertEquals(List.of(5, 8), rows(read));
    assertEquals("2=2+0+0", read.counts());
    assertEquals(List.of(), read.findings());
  }

  @Test
  void titlesAboveTheHeadingsAreNoData() throws IOException {
    Read read =
        visits("Visits of 2024\n,as of June\nDevice,Visit date,Status\nD1,2024-01-01,working\n");
    assertEquals(List.of(4), rows(read));
    assertEquals(
        List.of(
            "0 - notice rows-above-headings: The headings stand in row 3; 2 rows above them were"
                + " not read as data."),
        read.findings());
  }

  @Test
  void totalsAndRepeatedHeadingsAreNoRecords() throws IOException {
    Read read =
        visits(
            """
            device_id,visited_on,condition,cost
            D1,2024-01-01,working,3
            device_id,visited_on,condition,cost
            Total,,,3
            ,,Grand total:,3
            Totem pole,2024-01-01,working,3
            """);
    assertEquals("5=2+0+3", read.counts());
    assertEquals(
        List.of(
            "3 - set-aside repeated-heading: The headings stand here once more. Row set aside.",
            "4 - set-aside totals-row: \"Total\" marks totals, not a record. Row set aside.",
            "5 - set-aside totals-row: \"Grand total:\" marks totals, not a record. Row set aside."),
        read.findings());
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t", "|"})
  void theSeparatorIsDecidedForEachFile(String separator) throws IOException {
    Read read =
        visits(
            "device_id,visited_on,condition,notes\nD1,2024-01-01,working,x\n"
                .replace(",", separator));
    assertEquals("1=1+0+0", read.counts());
  }

  @Test
  void commasInNotesDoNotMakeTheCommaTheSeparator() throws IOException {
    Read read =
        visits(
            """
            device_id;visited_on;condition;notes
            D1;2024-01-01;working;a, b, c, d, e
            D2;2024-01-02;working;a, b, c, d, e
            """);
    assertEquals("2=2+0+0", read.counts());
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void allLineEndsAreKnown(String end) throws IOException {
    Read read =
        visits(
            "device_id,visited_on,condition\nD1,2024-01-01,working\n\nD2,2024-01-01,working"
                .replace("\n", end));
    assertEquals(List.of(2, 4), rows(read));
  }

  @Test
  void windows1252IsAnnounced() throws IOException {
    String content = "device_id,visited_on,condition,notes\nD1,2024-01-01,working,café €\n";
    Read read =
        Read.bytes(folder, "revisits.csv", content.getBytes(Charset.forName("windows-1252")));
    assertEquals("café €", note(read.records().get(0)));
    assertEquals(
        List.of(
            "0 - notice encoding-guessed: The text is not UTF-8 and was read as Windows-1252. Check"
                + " letters with accents, or save the file as UTF-8."),
        read.findings());
    assertEquals(List.of(), visits(content).findings());
  }

  @Test
  void aMarkThatLiesIsAnnounced() throws IOException {
    String content =
        "\u00ef\u00bb\u00bfdevice_id,visited_on,condition,notes\nD1,2024-01-01,working,caf\u00e9\n";
    Read read = Read.bytes(folder, "revisits.csv", content.getBytes(StandardCharsets.ISO_8859_1));
    assertEquals("café", note(read.records().get(0)));
    assertEquals(List.of("0 encoding-guessed"), read.rules());
  }

  @Test
  void aFileThatIsGoneIsReported() {
    Read read = Read.file(folder.resolve("absent.csv"));
    assertEquals(
        List.of(
            "0 - set-aside file-unreadable: The file cannot be read: it is gone. Nothing of it is"
                + " counted."),
        read.findings());
    assertEquals(read.findings(), Read.file(folder.resolve("absent.xlsx")).findings());
  }

  @Test
  void utf16IsReadWithAndWithoutMark() throws IOException {
    String content = "device_id,visited_on,condition,notes\nD1,2024-01-01,working,café\n";
    for (Charset charset :
        List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
      Read read = Read.bytes(folder, "revisits.csv", content.getBytes(charset));
      assertEquals("café", note(read.records().get(0)), charset.name());
    }
  }

  @Test
  void emptyAndBinaryFilesAreReported() throws IOException {
    assertEquals(List.of("0 file-empty"), visits("").rules());
    assertEquals(
        List.of(
            "0 - set-aside file-unreadable: The file cannot be read: it is not a text file (it"
                + " holds zero bytes). Nothing of it is counted."),
        Read.bytes(folder, "sites.csv", new byte[] {65, 0, 0, 0, 66, 0, 0, 0, 1}).findings());
    assertTrue(visits("x".repeat(1_100_000)).findings().get(0).contains("longer than 1,000,000"));
  }

  @Test
  void cellsComeBackAsTheyStand() throws IOException {
    Path file = folder.resolve("revisits.csv");
    visits("Title\nDevice,Visit date,Status,Hue\nD1, 31/02/2024 ,working,red\nD2,\"a\nb\",x\n");
    List<SourceRow> rows =
        PartnerFileReader.cells(Read.input(file), Map.of(0, new TreeSet<>(List.of(3, 4, 9))));
    assertEquals(
        List.of(
            new SourceRow(
                7,
                0,
                3,
                List.of("Device", "Visit date", "Status", "Hue"),
                List.of("device_id", "visited_on", "condition", ""),
                List.of("D1", " 31/02/2024 ", "working", "red")),
            new SourceRow(
                7,
                0,
                4,
                List.of("Device", "Visit date", "Status", "Hue"),
                List.of("device_id", "visited_on", "condition", ""),
                List.of("D2", "a\nb", "x", ""))),
        rows);
  }

  @Test
  void aFaultOfTheSinkIsNotTakenForABrokenFile() throws IOException {
    visits("device_id,visited_on,condition\nD1,2024-01-01,working\n");
    InputFile file = Read.input(folder.resolve("revisits.csv"));
    UncheckedIOException full = new UncheckedIOException(new IOException("disk full"));
    assertSame(
        full,
        assertThrows(
            UncheckedIOException.class,
            () ->
                PartnerFileReader.read(
                    file,
                    Read.SETTINGS,
                    record -> {
                      throw full;
                    })));
  }

  @Test
  void thePriceIndexIsReadByYear() throws IOException {
    Path file = folder.resolve("prices.csv");
    Read read =
        Read.text(folder, "prices.csv", "year,index\n2023,304.7\n2024,313.7\n2024,1\nx,2\n");
    assertEquals("4=2+0+2", read.counts());
    assertEquals(
        "4 - set-aside repeated-year: The year 2024 has the index 313.7 already, in a row above."
            + " Row set aside.",
        read.findings().get(0));
    assertEquals(
        "{2023=304.7, 2024=313.7}",
        PartnerFileReader.prices(Read.input(file), Read.SETTINGS).toString());
    SheetReport report = read.report();
    assertEquals("prices", report.table());
    assertEquals(List.of(), read.records());
  }
}
