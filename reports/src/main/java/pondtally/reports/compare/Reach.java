package pondtally.reports.compare;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import pondtally.reports.table.Field;
import pondtally.reports.text.Messages;

/** Which figures each setting and each kind of record can move, from {@code reach.json}. */
final class Reach {

  private static final String ALL = "*";

  private final TreeMap<String, Setting> settings = new TreeMap<>();
  private final TreeMap<String, List<String>> inputs = new TreeMap<>();

  /** Empty lists of groupings, units or columns mean all. */
  private record Setting(
      String source,
      List<String> tables,
      List<String> but,
      List<String> groupings,
      List<String> units,
      List<String> columns) {

    boolean reaches(String table, String grouping, Field field) {
      return (tables.contains(ALL) || tables.contains(table))
          && !but.contains(table)
          && (groupings.isEmpty() || groupings.contains(grouping))
          && (units.isEmpty() || field == null || units.contains(field.unit()))
          && (columns.isEmpty() || field == null || hasName(field));
    }

    /** Limits of a dollar figure have its unit and names of their own. */
    private boolean hasName(Field field) {
      return field.unit().equals("usd") || columns.stream().anyMatch(field.name()::contains);
    }
  }

  private Reach() {}

  static Reach read() {
    try (InputStream in = Reach.class.getResourceAsStream("reach.json")) {
      JsonNode root = new ObjectMapper().readTree(in);
      Reach reach = new Reach();
      root.path("inputs")
          .properties()
          .forEach(entry -> reach.inputs.put(entry.getKey(), texts(entry.getValue())));
      root.path("settings")
          .properties()
          .forEach(entry -> reach.settings.put(entry.getKey(), setting(entry.getValue())));
      return reach;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Setting setting(JsonNode node) {
    return new Setting(
        node.path("source").asText(),
        texts(node.path("tables")),
        texts(node.path("but")),
        texts(node.path("groupings")),
        texts(node.path("units")),
        texts(node.path("columns")));
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(node -> texts.add(node.asText()));
    return List.copyOf(texts);
  }

  /** Input tables whose records a result table is made from. */
  List<String> inputs(String table) {
    return inputs.getOrDefault(table, inputs.get(""));
  }

  /**
   * Whether a setting can move a figure.
   *
   * @param field null for a whole row
   */
  boolean reaches(String setting, String table, String grouping, Field field) {
    Setting found = settings.get(setting);
    return found != null && found.reaches(table, grouping, field);
  }

  /** The kind of difference that a setting is: {@code rule}, {@code price-base} and so on. */
  String source(String setting) {
    return settings.get(setting).source();
  }

  /** What a setting can move, for a reader. */
  String words(String setting) {
    String key = "compare.moves." + setting;
    Messages messages = Messages.reports();
    return messages.text(messages.has(key) ? key : "compare.moves.nothing");
  }
}
