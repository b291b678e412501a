package pondtally.reports.table;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A folder of result tables with its descriptor, verified on opening: headings, row counts and
 * SHA-256 sums.
 */
public final class TablePackage {

  private final Map<String, String> facts;
  private final Map<String, Table> tables;

  private TablePackage(Map<String, String> facts, Map<String, Table> tables) {
    this.facts = facts;
    this.tables = tables;
  }

  /**
   * Opens the tables in {@code folder}.
   *
   * @throws BrokenTables when the descriptor is missing or a file does not fit it
   */
  public static TablePackage open(Path folder) {
    try {
      JsonNode root = descriptor(folder);
      Map<String, String> facts = new LinkedHashMap<>();
      root.path("pondtally")
          .properties()
          .forEach(e -> facts.put(e.getKey(), e.getValue().asText()));
      Map<String, Table> tables = new LinkedHashMap<>();
      for (JsonNode resource : root.path("resources")) {
        if (!resource.path("read_by_row").asBoolean()) {
          Table table = read(folder, resource);
          tables.put(table.name(), table);
        }
      }
      return new TablePackage(facts, tables);
    } catch (IOException e) {
      throw new BrokenTables("The tables in " + folder + " cannot be read: " + e.getMessage());
    }
  }

  private static JsonNode descriptor(Path folder) throws IOException {
    Path descriptor = folder.resolve("datapackage.json");
    if (!Files.isRegularFile(descriptor)) {
      throw new BrokenTables(
          "No datapackage.json in " + folder + "; expected the tables/ folder of a finished run.");
    }
    return new ObjectMapper().readTree(descriptor.toFile());
  }

  /** What the descriptor says of one table; empty where the run did not write it. */
  static Optional<JsonNode> descriptor(Path folder, String name) {
    try {
      for (JsonNode resource : descriptor(folder).path("resources")) {
        if (resource.path("name").asText().equals(name)) {
          return Optional.of(resource);
        }
      }
      return Optional.empty();
    } catch (IOException e) {
      throw new BrokenTables("The tables in " + folder + " cannot be read: " + e.getMessage());
    }
  }

  /**
   * A fact about the run that no table holds, for example {@code region} or {@code as_of}; empty if
   * there is none.
   */
  public String fact(String name) {
    return facts.getOrDefault(name, "");
  }

  /** All facts, by name. */
  public Map<String, String> facts() {
    return Map.copyOf(facts);
  }

  /** The table of that name, when the run made it. */
  public Optional<Table> table(String name) {
    return Optional.ofNullable(tables.get(name));
  }

  /** All tables in reading order; those too long for memory are not among them. */
  public List<Table> tables() {
    return List.copyOf(tables.values());
  }

  static List<Field> fields(JsonNode resource) {
    List<Field> fields = new ArrayList<>();
    for (JsonNode field : resource.at("/schema/fields")) {
      fields.add(
          new Field(
              field.get("name").asText(),
              field.get("type").asText(),
              field.path("unit").asText(""),
              field.path("description").asText(""),
              field.path("private").asBoolean(false)));
    }
    return fields;
  }

  private static Table read(Path folder, JsonNode resource) throws IOException {
    String name = resource.get("name").asText();
    List<Field> fields = fields(resource);
    List<String[]> cells = new ArrayList<>();
    String hash = readCsv(folder.resolve(resource.get("path").asText()), name, fields, cells);
    if (!("sha256:" + hash).equals(resource.path("hash").asText())) {
      throw new BrokenTables(
          name
              + ".csv is not the file that its run wrote (SHA-256 differs). Run the report again.");
    }
    return new Table(
        name, resource.path("title").asText(name), hash, fields, key(resource, fields), cells);
  }

  /** A key that lost a column, as in a public edition, singles out no row. */
  private static List<String> key(JsonNode resource, List<Field> fields) {
    List<String> names = fields.stream().map(Field::name).toList();
    List<String> key = new ArrayList<>();
    resource.path("rowKey").forEach(column -> key.add(column.asText()));
    return names.containsAll(key) ? key : List.of();
  }

  private static String readCsv(Path file, String name, List<Field> fields, List<String[]> cells)
      throws IOException {
    MessageDigest digest = sha256();
    try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest);
        CSVParser csv = CSVParser.parse(in, StandardCharsets.UTF_8, CSVFormat.RFC4180)) {
      boolean first = true;
      for (CSVRecord record : csv) {
        if (first) {
          checkHeadings(name, fields, record);
          first = false;
        } else if (record.size() != fields.size()) {
          throw new BrokenTables(name + ".csv has a row of " + record.size() + " cells.");
        } else {
          cells.add(record.values());
        }
      }
      in.readAllBytes();
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static void checkHeadings(String name, List<Field> fields, CSVRecord record) {
    List<String> expected = fields.stream().map(Field::name).toList();
    if (!record.toList().equals(expected)) {
      throw new BrokenTables(name + ".csv does not have the columns that datapackage.json names.");
    }
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
