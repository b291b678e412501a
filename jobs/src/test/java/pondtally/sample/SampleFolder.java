package pondtally.sample;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Where the committed sample and its lists are, seen from the module under test. */
final class SampleFolder {
  private static final Path MODULE = Path.of(System.getProperty("basedir", "")).toAbsolutePath();

  static final Path PROGRAM = MODULE.resolveSibling("sample-data");
  static final Path LISTS = MODULE.resolve("src/test/resources/pondtally/sample");

  private SampleFolder() {}

  /** The lines of a list by heading, for example of {@code planted-faults.csv}. */
  static List<CSVRecord> list(String name) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    String text = Files.readString(LISTS.resolve(name), StandardCharsets.UTF_8);
    try (CSVParser parser = CSVParser.parse(text, format)) {
      return parser.getRecords();
    }
  }
}
