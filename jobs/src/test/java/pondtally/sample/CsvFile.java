package pondtally.sample;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;

/** Writes CSV: UTF-8, one heading line, lines ended by a line feed on every machine. */
final class CsvFile {
  private static final CSVFormat FORMAT = CSVFormat.RFC4180;

  private CsvFile() {}

  /** A partner's file; the volunteers' spreadsheet begins it with a byte-order mark. */
  static void write(Path path, Sheet sheet) {
    StringBuilder text = new StringBuilder(sheet.partner() == Partner.QUARRINDALE ? "\uFEFF" : "");
    text.append(line(sheet.columns().stream().map(Column::heading)));
    for (Row row : sheet.rows()) {
      boolean blank = row.values().isEmpty();
      text.append(
          blank ? "\n" : line(sheet.columns().stream().map(column -> column.cell(row).text())));
    }
    save(path, text.toString());
  }

  /** Lines of plain values under a heading line. */
  static void write(Path path, List<String> headings, List<List<String>> lines) {
    StringBuilder text = new StringBuilder(line(headings.stream()));
    lines.forEach(values -> text.append(line(values.stream())));
    save(path, text.toString());
  }

  private static String line(Stream<String> values) {
    return FORMAT.format(values.toArray()) + "\n";
  }

  static void save(Path path, String text) {
    try {
      Files.createDirectories(path.getParent());
      Files.writeString(path, text, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
