package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the published data sets and reference results kept with the tests. */
final class Published {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private Published() {}

  /** Rows of a file below {@code published/}; fails if there are none. */
  static List<CSVRecord> rows(String file) {
    try (InputStream in = Published.class.getResourceAsStream("/published/" + file)) {
      assertTrue(in != null, file + " is missing");
      List<CSVRecord> rows =
          FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8)).getRecords();
      assertTrue(!rows.isEmpty(), file + " is empty");
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  static long count(CSVRecord row, String column) {
    return Long.parseLong(row.get(column));
  }

  /** The cell's value agrees within 1e-9 relative (1e-12 absolute near 0). */
  static void assertCell(CSVRecord row, String column, double actual) {
    double expected = number(row, column);
    assertEquals(expected, actual, Math.max(1e-12, 1e-9 * Math.abs(expected)), place(row, column));
  }

  /** As the other, where an empty cell means that there is no value. */
  static void assertCell(CSVRecord row, String column, OptionalDouble actual) {
    assertEquals(!row.get(column).isEmpty(), actual.isPresent(), place(row, column) + " present");
    if (actual.isPresent()) {
      assertCell(row, column, actual.getAsDouble());
    }
  }

  private static String place(CSVRecord row, String column) {
    return column + " in " + row.toMap();
  }
}
