package pondtally.reports.chart;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pondtally.reports.table.TablePackage;

/** Writes a folder of tables with the declared columns; cells not given are empty. */
final class TestTables {

  private static final ObjectMapper JSON = new ObjectMapper();

  private final Map<String, List<String>> columns = new LinkedHashMap<>();
  private final Map<String, List<String[]>> rows = new LinkedHashMap<>();
  private final Map<String, String> facts = new TreeMap<>();

  TestTables() throws Exception {
    try (InputStream in =
        TestTables.class.getResourceAsStream("/pondtally/table/result-tables.json")) {
      for (JsonNode table : JSON.readTree(in)) {
        List<String> names = new ArrayList<>();
        table.get("fields").forEach(field -> names.add(field.get("name").asText()));
        columns.put(table.get("name").asText(), names);
      }
    }
  }

  TestTables fact(String name, String value) {
    facts.put(name, value);
    return this;
  }

  /** A column that the declared table does not have yet; before the first row of that table. */
  TestTables column(String table, String name) {
    columns.get(table).add(name);
    return this;
  }

  /** A table without rows, unless rows are added. */
  TestTables table(String name) {
    rows.computeIfAbsent(name, key -> new ArrayList<>());
    return this;
  }

  /** A row: column, value, column, value …; a null value is an empty cell. */
  TestTables row(String table, Object... cells) {
    List<String> names = columns.get(table);
    String[] row = new String[names.size()];
    Arrays.fill(row, "");
    for (int i = 0; i < cells.length; i += 2) {
      int at = names.indexOf(cells[i]);
      if (at < 0) {
        throw new IllegalArgumentException(table + " has no column " + cells[i]);
      }
      row[at] = cell(cells[i + 1]);
    }
    table(table);
    rows.get(table).add(row);
    return this;
  }

  TablePackage open(Path folder) throws Exception {
    write(folder);
    return TablePackage.open(folder);
  }

  private static String cell(Object value) {
    if (value == null) {
      return "";
    }
    return value instanceof Double number
        ? BigDecimal.valueOf(number).toPlainString()
        : value.toString();
  }

  private void write(Path folder) throws Exception {
    Files.createDirectories(folder);
    ObjectNode root = JSON.createObjectNode();
    ObjectNode factNode = root.putObject("pondtally");
    facts.forEach(factNode::put);
    ArrayNode resources = root.putArray("resources");
    for (var table : rows.entrySet()) {
      byte[] csv = csv(columns.get(table.getKey()), table.getValue());
      Files.write(folder.resolve(table.getKey() + ".csv"), csv);
      ObjectNode resource = resources.addObject();
      resource.put("name", table.getKey());
      resource.put("path", table.getKey() + ".csv");
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(csv);
      resource.put("hash", "sha256:" + HexFormat.of().formatHex(hash));
      ArrayNode fields = resource.putObject("schema").putArray("fields");
      columns
          .get(table.getKey())
          .forEach(name -> fields.addObject().put("name", name).put("type", "string"));
    }
    Files.writeString(folder.resolve("datapackage.json"), root.toString());
  }

  private static byte[] csv(List<String> header, List<String[]> rows) throws IOException {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.printRecord(header);
      for (String[] row : rows) {
        printer.printRecord((Object[]) row);
      }
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
