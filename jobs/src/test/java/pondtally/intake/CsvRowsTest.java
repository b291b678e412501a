package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cutting text into cells, against RFC 4180 and against Apache Commons CSV. */
class CsvRowsTest {

  private static List<List<String>> cells(String text) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    try (LineReader lines = new LineReader(new StringReader(text))) {
      CsvRows records = new CsvRows(lines, ',');
      RawRow row = new RawRow();
      while (records.next(row)) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.width; i++) {
          cells.add(row.cell(i));
        }
        rows.add(cells);
      }
    }
    return rows;
  }

  /** Section 2 of RFC 4180 (Shafranovich 2005), its examples. */
  @Test
  void rfc4180Examples() throws IOException {
    assertEquals(
        List.of(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx")),
        cells("aaa,bbb,ccc\r\nzzz,yyy,xxx"));
    assertEquals(
        List.of(List.of("aaa", "b\nbb", "ccc"), List.of("zzz", "yyy", "xxx")),
        cells("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"));
    assertEquals(List.of(List.of("aaa", "b\"bb", "ccc")), cells("\"aaa\",\"b\"\"bb\",\"ccc\""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      value = {
        "a,b~a|b",
        "a,~a|",
        ",~|",
        "\"a\",\"\"~a|",
        "\"a,b\",c~a,b|c",
        "\"a\"\"b\"~a\"b",
        "\"\"\"\"~\"",
        "\"a\" ,b~a|b",
        " \"a\",b~a|b",
        "12\",b~12\"|b"
      })
  void lines(String line, String expected) throws IOException {
    assertEquals(List.of(List.of(expected.split("\\|", -1))), cells(line));
  }

  @Test
  void whatCommonsCsvWritesIsReadAsCommonsCsvReadsIt() throws IOException {
    String[] pieces = {"a", "b c", "\"", ",", "\n", " ", "", "''", "é", "1,5", "\"\"", "#"};
    CSVFormat format = CSVFormat.DEFAULT.builder().setIgnoreEmptyLines(false).get();
    for (int seed = 0; seed < 5000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      StringBuilder text = new StringBuilder();
      try (CSVPrinter printer = new CSVPrinter(text, format)) {
        for (int row = 1 + random.nextInt(4); row > 0; row--) {
          List<String> cells = new ArrayList<>();
          for (int cell = 0; cell < 3; cell++) {
            cells.add(
                pieces[random.nextInt(pieces.length)] + pieces[random.nextInt(pieces.length)]);
          }
          printer.printRecord(cells);
        }
      }
      List<List<String>> expected = new ArrayList<>();
      try (CSVParser parser = CSVParser.parse(text.toString(), format)) {
        parser.forEach(record -> expected.add(record.toList()));
      }
      assertEquals(expected, cells(text.toString()), "seed " + seed);
    }
  }
}
