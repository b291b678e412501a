package pondtally.reports.edition;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pondtally.reports.table.Field;
import pondtally.reports.view.Line;

/** Writes the public tables as an open data package. */
final class PublicPackage {

  private static final ObjectMapper JSON =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private PublicPackage() {}

  static void write(Path folder, List<PublicTable> tables, Map<String, String> facts)
      throws IOException {
    ObjectNode root = JSON.createObjectNode();
    root.put("profile", "tabular-data-package");
    root.put("name", "pondtally-tables");
    ObjectNode named = root.putObject("pondtally");
    new TreeMap<>(facts).forEach(named::put);
    ArrayNode resources = root.putArray("resources");
    for (PublicTable table : tables) {
      byte[] csv = csv(table);
      Files.write(folder.resolve(table.name() + ".csv"), csv);
      describe(resources.addObject(), table, csv);
    }
    Files.writeString(folder.resolve("datapackage.json"), JSON.writeValueAsString(root) + "\n");
  }

  private static byte[] csv(PublicTable table) throws IOException {
    StringWriter text = new StringWriter();
    try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
      csv.printRecord(table.fields().stream().map(Field::name));
      for (List<String> row : table.rows()) {
        csv.printRecord(row);
      }
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void describe(ObjectNode resource, PublicTable table, byte[] csv) {
    resource.put("name", table.name()).put("title", table.title());
    resource.put("path", table.name() + ".csv").put("format", "csv").put("encoding", "utf-8");
    resource.put("hash", "sha256:" + sha256(csv)).put("rows", table.rows().size());
    ObjectNode schema = resource.putObject("schema");
    ArrayNode fields = schema.putArray("fields");
    for (Field field : table.fields()) {
      ObjectNode node = fields.addObject();
      node.put("name", field.name()).put("type", field.type());
      if (!field.unit().isEmpty()) {
        node.put("unit", field.unit());
      }
      node.put("description", field.description());
    }
    schema.putArray("missingValues").add("").add(Line.WITHHELD);
    if (!table.key().isEmpty()) {
      ArrayNode key = resource.putArray("rowKey");
      table.key().forEach(key::add);
    }
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
