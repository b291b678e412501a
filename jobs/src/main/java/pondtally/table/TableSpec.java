package pondtally.table;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A declared result table. All are declared in {@code result-tables.json}, in the order in which a
 * reader meets them.
 *
 * @param name also the name of the file
 * @param title one line
 * @param keyColumns how many columns, from the left, order the rows
 * @param columns from left to right
 */
public record TableSpec(String name, String title, int keyColumns, List<Column> columns) {

  private static final Map<String, TableSpec> DECLARED = read();

  /** The table declared as {@code name}. */
  public static TableSpec named(String name) {
    TableSpec spec = DECLARED.get(name);
    if (spec == null) {
      throw new IllegalArgumentException("no result table is declared as " + name);
    }
    return spec;
  }

  /** All declared tables, in reading order. */
  public static List<TableSpec> all() {
    return List.copyOf(DECLARED.values());
  }

  private static Map<String, TableSpec> read() {
    try (InputStream in = TableSpec.class.getResourceAsStream("result-tables.json")) {
      Map<String, TableSpec> specs = new LinkedHashMap<>();
      for (JsonNode table : new ObjectMapper().readTree(in)) {
        TableSpec spec = spec(table);
        specs.put(spec.name, spec);
      }
      return specs;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static TableSpec spec(JsonNode table) {
    List<Column> columns = new ArrayList<>();
    for (JsonNode field : table.get("fields")) {
      columns.add(
          new Column(
              field.get("name").asText(),
              ColumnType.valueOf(field.get("type").asText().toUpperCase(Locale.ROOT)),
              field.path("unit").asText(""),
              field.get("description").asText(),
              field.path("private").asBoolean(false)));
    }
    return new TableSpec(
        table.get("name").asText(),
        table.get("title").asText(),
        table.get("keyColumns").asInt(),
        List.copyOf(columns));
  }
}
