package pondtally.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Reads the descriptor of one input table. */
final class SchemaFile {

  private static final ObjectMapper JSON = new ObjectMapper();

  private SchemaFile() {}

  static TableSchema read(String name) {
    String resource = "/schemas/" + name + ".json";
    try (InputStream in = SchemaFile.class.getResourceAsStream(resource)) {
      return table(JSON.readTree(in));
    } catch (IOException e) {
      throw new UncheckedIOException(resource, e);
    }
  }

  private static TableSchema table(JsonNode table) {
    List<FieldSchema> fields = new ArrayList<>();
    for (JsonNode field : table.get("fields")) {
      fields.add(field(fields.size(), field));
    }
    List<List<String>> anyOf = new ArrayList<>();
    table.path("anyOf").forEach(group -> anyOf.add(texts(group)));
    return new TableSchema(
        table.get("name").asText(),
        table.get("title").asText(),
        table.get("description").asText(),
        texts(table.path("synonyms")),
        anyOf,
        fields);
  }

  private static FieldSchema field(int position, JsonNode field) {
    JsonNode constraints = field.path("constraints");
    return new FieldSchema(
        position,
        field.get("name").asText(),
        FieldType.valueOf(constant(field.get("type").asText())),
        TextKind.valueOf(constant(field.path("kind").asText("plain"))),
        field.has("unit") ? Unit.find(field.get("unit").asText()).orElseThrow() : null,
        constraints.path("required").asBoolean(false),
        texts(constraints.path("enum")),
        limit(constraints.get("minimum")),
        limit(constraints.get("maximum")),
        textOrNull(field.get("notBefore")),
        textOrNull(field.get("default")),
        field.get("description").asText(),
        texts(field.path("synonyms")),
        field.path("private").asBoolean(false));
  }

  private static String constant(String text) {
    return text.toUpperCase(Locale.ROOT).replace('-', '_');
  }

  private static Double limit(JsonNode limit) {
    if (limit == null) {
      return null;
    }
    return limit.isTextual()
        ? (double) LocalDate.parse(limit.asText()).toEpochDay()
        : limit.asDouble();
  }

  private static String textOrNull(JsonNode text) {
    return text == null ? null : text.asText();
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(text -> texts.add(text.asText()));
    return List.copyOf(texts);
  }
}
