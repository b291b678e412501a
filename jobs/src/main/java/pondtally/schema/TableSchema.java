package pondtally.schema;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Definition of one input table. All are declared as open Table Schema descriptors in {@code
 * schemas/*.json}; {@code unit}, {@code synonyms}, {@code private}, {@code kind}, {@code notBefore}
 * and {@code anyOf} are properties of our own beside the standard ones.
 */
public final class TableSchema {

  private static final Map<String, TableSchema> DECLARED = declared();

  private final String name;
  private final String title;
  private final String description;
  private final List<String> synonyms;
  private final List<List<String>> anyOf;
  private final List<FieldSchema> fields;
  private final Map<String, FieldSchema> byName = new HashMap<>();
  private final HeadingIndex headings;

  TableSchema(
      String name,
      String title,
      String description,
      List<String> synonyms,
      List<List<String>> anyOf,
      List<FieldSchema> fields) {
    this.name = name;
    this.title = title;
    this.description = description;
    this.synonyms = List.copyOf(synonyms);
    this.anyOf = List.copyOf(anyOf);
    this.fields = List.copyOf(fields);
    fields.forEach(field -> byName.put(field.name(), field));
    this.headings = new HeadingIndex(name, fields);
  }

  private static Map<String, TableSchema> declared() {
    Map<String, TableSchema> tables = new LinkedHashMap<>();
    for (String name :
        List.of(
            "sites",
            "installs",
            "materials",
            "revisits",
            "removals",
            "properties",
            "areas",
            "prices",
            "budgets",
            "expenses",
            "requests")) {
      tables.put(name, SchemaFile.read(name));
    }
    return tables;
  }

  /** All input tables, in the order in which they are explained. */
  public static List<TableSchema> all() {
    return List.copyOf(DECLARED.values());
  }

  /** The table called {@code name}. */
  public static TableSchema named(String name) {
    TableSchema table = DECLARED.get(name);
    if (table == null) {
      throw new IllegalArgumentException("no input table is declared as " + name);
    }
    return table;
  }

  /** The table that goes by {@code word} as its name or a synonym, without regard to case. */
  public static Optional<TableSchema> find(String word) {
    String key = HeadingText.key(word);
    return DECLARED.values().stream().filter(table -> table.isCalled(key)).findFirst();
  }

  private boolean isCalled(String key) {
    return name.equals(key) || synonyms.contains(key);
  }

  /** Name of the table, for example {@code revisits}. */
  public String name() {
    return name;
  }

  /** Name for people. */
  public String title() {
    return title;
  }

  /** What one row is. */
  public String description() {
    return description;
  }

  /** Other names under which partners keep it. */
  public List<String> synonyms() {
    return synonyms;
  }

  /** Groups of fields of which a row needs one at least. */
  public List<List<String>> anyOf() {
    return anyOf;
  }

  /** The fields, in the order in which they are shown. */
  public List<FieldSchema> fields() {
    return fields;
  }

  /** The field called {@code field}. */
  public FieldSchema field(String field) {
    FieldSchema found = byName.get(field);
    if (found == null) {
      throw new IllegalArgumentException(name + " has no field " + field);
    }
    return found;
  }

  /**
   * The field that a partner's heading stands for: its name or a synonym, without regard to case,
   * spaces and signs, and with a unit parsed off where the field has one.
   */
  public Optional<HeadingMatch> match(String heading) {
    return headings.match(heading);
  }

  /**
   * The match of a heading that is said to stand for {@code field}, whatever its words: only its
   * unit, if it is one of the field's, and what stands in brackets are taken from it.
   */
  public HeadingMatch matchAs(String heading, FieldSchema field) {
    HeadingText text = HeadingText.of(heading);
    boolean isOwnUnit =
        text.unit() != null
            && field.unit() != null
            && text.unit().dimension() == field.unit().dimension();
    return new HeadingMatch(field, isOwnUnit ? text.unit() : null, text.comment(), true);
  }
}
