package pondtally.reports.table;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a finished run left: its tables, and which files it read.
 *
 * @param tables the result tables
 * @param inputs SHA-256 of each input file by its path; empty where no {@code run.json} names any
 */
public record RunFolder(TablePackage tables, SortedMap<String, String> inputs) {

  /**
   * Opens the folder of a run, or its {@code tables/} folder.
   *
   * @throws BrokenTables when there are no tables, or they are not as the run wrote them
   */
  public static RunFolder open(Path folder) {
    Path inside = folder.resolve("tables");
    boolean isRun = Files.isRegularFile(inside.resolve("datapackage.json"));
    if (!isRun && !Files.isRegularFile(folder.resolve("datapackage.json"))) {
      throw new BrokenTables(
          "No tables in %s; expected the folder of a finished run, with tables/datapackage.json in it."
              .formatted(folder));
    }
    Path record = isRun ? folder.resolve("run.json") : folder.resolveSibling("run.json");
    return new RunFolder(TablePackage.open(isRun ? inside : folder), inputs(record));
  }

  private static SortedMap<String, String> inputs(Path record) {
    SortedMap<String, String> inputs = new TreeMap<>();
    if (!Files.isRegularFile(record)) {
      return inputs;
    }
    try {
      for (JsonNode input : new ObjectMapper().readTree(record.toFile()).path("inputs")) {
        inputs.put(input.path("file").asText(), input.path("sha256").asText());
      }
      return inputs;
    } catch (IOException e) {
      throw new BrokenTables("%s cannot be read: %s".formatted(record, e.getMessage()));
    }
  }
}
