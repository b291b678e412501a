package pondtally.app;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/** Program folders cut out of the sample for tests. */
final class FolderOfRows {

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private FolderOfRows() {}

  /**
   * Writes the settings of the sample and those rows of one partner's CSV files that name one of
   * {@code ids}, as they stand and under their own headings.
   */
  static void write(Path folder, String partner, Set<String> ids) throws IOException {
    Path own = Files.createDirectories(folder.resolve(partner));
    Files.copy(SampleRun.SAMPLE.resolve("program.yaml"), folder.resolve("program.yaml"));
    for (Path file : csvFiles(SampleRun.SAMPLE.resolve(partner))) {
      List<List<String>> rows = rows(file);
      List<List<String>> kept = new ArrayList<>();
      for (List<String> row : rows.subList(1, rows.size())) {
        if (row.stream().anyMatch(ids::contains)) {
          kept.add(row);
        }
      }
      if (!kept.isEmpty()) {
        kept.add(0, rows.get(0));
        write(own.resolve(file.getFileName().toString()), kept);
      }
    }
  }

  /** The CSV files in a folder and below it, by path. */
  static List<Path> csvFiles(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".csv")).sorted().toList();
    }
  }

  /** The cells of a CSV file, the headings first; blank lines are no rows. */
  static List<List<String>> rows(Path file) throws IOException {
    String text = Files.readString(file, StandardCharsets.UTF_8).replace(BYTE_ORDER_MARK, "");
    CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();
    try (CSVParser csv = CSVParser.parse(text, format)) {
      return csv.getRecords().stream().map(CSVRecord::toList).toList();
    }
  }

  /** Writes cells as a CSV file. */
  static void write(Path file, List<List<String>> rows) throws IOException {
    try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
        CSVPrinter csv = new CSVPrinter(out, CSVFormat.RFC4180)) {
      for (List<String> row : rows) {
        csv.printRecord(row);
      }
    }
  }
}
