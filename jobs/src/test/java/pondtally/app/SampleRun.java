package pondtally.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import pondtally.table.ResultPackage;
import pondtally.table.ResultTable;

/** Runs of the job for tests: the sample once for all of them, other folders on demand. */
public final class SampleRun {

  /** The sample data, from the folder of the module that tests run in. */
  static final Path SAMPLE = Path.of("..", "sample-data");

  private static JobResult sample;

  private SampleRun() {}

  /** The result of the sample; the job runs once. */
  public static synchronized JobResult sample() {
    if (sample == null) {
      sample = of(SAMPLE);
    }
    return sample;
  }

  /** The result of a program folder, on a fixed day. */
  static JobResult of(Path folder) {
    return Job.run(
        new JobRequest(
            folder,
            (int) LocalDate.of(2026, 2, 1).toEpochDay(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            2));
  }

  /** The table of that name as written to its file and read again, headings by name. */
  public static List<CSVRecord> rows(JobResult result, String name) {
    ResultTable table =
        result.tables().stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    try {
      Path folder = Files.createTempDirectory("pondtally-table");
      ResultPackage.write(folder, List.of(table), result.facts());
      List<CSVRecord> rows = read(folder.resolve(name + ".csv"));
      Files.delete(folder.resolve(name + ".csv"));
      Files.delete(folder.resolve("datapackage.json"));
      Files.delete(folder);
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The rows of a CSV file with headings. */
  public static List<CSVRecord> read(Path file) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser csv = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
      return csv.getRecords();
    }
  }
}
