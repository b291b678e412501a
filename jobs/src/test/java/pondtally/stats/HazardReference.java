package pondtally.stats;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Assertions;

/** Reads the published data sets and their reference results under {@code published/hazards}. */
final class HazardReference {
  private HazardReference() {}

  /** The rows of a file, by column heading. */
  static List<Map<String, String>> rows(String file) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader in =
            new InputStreamReader(
                HazardReference.class.getResourceAsStream("/published/hazards/" + file + ".csv"),
                StandardCharsets.UTF_8);
        CSVParser parser = format.parse(in)) {
      return parser.stream().map(CSVRecord::toMap).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The rows of a file whose column holds the value. */
  static List<Map<String, String>> rows(String file, String column, String value) {
    List<Map<String, String>> rows =
        rows(file).stream().filter(r -> r.get(column).equals(value)).toList();
    Assertions.assertFalse(rows.isEmpty(), file + " has no row with " + column + " = " + value);
    return rows;
  }

  /** A number; {@code Inf} is infinite. */
  static double number(Map<String, String> row, String column) {
    String text = row.get(column);
    return text.equals("Inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(text);
  }

  /** A whole number. */
  static long whole(Map<String, String> row, String column) {
    return Long.parseLong(row.get(column));
  }

  /** Compares relative to the expected size, absolutely where that is below {@code floor}. */
  static void close(double expected, double actual, double relative, double floor, String what) {
    double allowed = relative * Math.max(floor, Math.abs(expected));
    Assertions.assertEquals(expected, actual, allowed, what);
  }
}
