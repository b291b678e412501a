package pondtally.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pondtally.schema.FieldSchema;
import pondtally.schema.FieldType;
import pondtally.schema.TableSchema;
import pondtally.schema.Unit;

/** Reads one entry under {@code tables} of a {@code columns.yaml}. */
final class ColumnsEntry {

  private static final String SKIP = "skip";
  private static final String IGNORE = "ignore";
  private static final int LAST_HEADER_ROW = 10_000;
  private static final List<String> KEYS =
      List.of(
          "files",
          "sheets",
          "table",
          "header_row",
          "stop_at",
          "columns",
          "values",
          "units",
          "codes",
          "dates",
          "decimal",
          "delimiter",
          "encoding");

  private final Map<String, YamlPart> keys;
  private final SheetMap others;
  private final TableSchema table;
  private final List<String> fields;

  private ColumnsEntry(Map<String, YamlPart> keys, SheetMap others, TableSchema table) {
    this.keys = keys;
    this.others = others;
    this.table = table;
    this.fields =
        table == null ? List.of() : table.fields().stream().map(FieldSchema::name).toList();
  }

  /**
   * Reads the entry.
   *
   * @param others what is stated for all sheets
   */
  static ColumnsMap.Entry read(YamlPart item, SheetMap others) {
    Map<String, YamlPart> keys = item.entries(KEYS);
    if (!keys.containsKey("table")) {
      throw item.wrong("this entry has no `table`. Expected for example `table: installs`");
    }
    if (!keys.containsKey("files") && !keys.containsKey("sheets")) {
      throw item.wrong(
          "this entry says of no file or sheet. Expected for example `files: \"*.csv\"`");
    }
    List<String> names =
        new ArrayList<>(TableSchema.all().stream().map(TableSchema::name).toList());
    names.add(SKIP);
    String name = keys.get("table").oneOf("table", names);
    ColumnsEntry entry =
        new ColumnsEntry(keys, others, name.equals(SKIP) ? null : TableSchema.named(name));
    return new ColumnsMap.Entry(
        item.line(),
        entry.text("files"),
        entry.text("sheets"),
        entry.map(),
        ColumnsFile.text(keys));
  }

  private String text(String key) {
    return keys.containsKey(key) ? keys.get(key).text() : null;
  }

  private SheetMap map() {
    if (table == null) {
      return new SheetMap(
          null, true, 0, null, List.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), null);
    }
    int headerRow = headerRow();
    DecimalMark decimal = ColumnsFile.decimal(keys);
    Map<String, Unit> units = units();
    return new SheetMap(
        table.name(),
        false,
        headerRow,
        text("stop_at"),
        columns(headerRow),
        values(units),
        units,
        codes(),
        dates(),
        Map.of(),
        decimal == null ? others.decimal() : decimal);
  }

  private int headerRow() {
    if (!keys.containsKey("header_row")) {
      return SheetMap.SEARCHED;
    }
    String text = keys.get("header_row").text();
    if (text.equals("none")) {
      return SheetMap.NO_HEADINGS;
    }
    int row = text.matches("\\d{1,5}") ? Integer.parseInt(text) : 0;
    if (row < 1 || row > LAST_HEADER_ROW) {
      throw keys.get("header_row")
          .wrong(
              "`header_row` is `%s`. Expected the row number of the headings, from 1, or `none`",
              text);
    }
    return row;
  }

  private FieldSchema field(YamlPart key) {
    return table.field(key.oneOf("field of the table " + table.name(), fields));
  }

  private Map<YamlPart, YamlPart> entries(String key) {
    return keys.containsKey(key) ? keys.get(key).entries() : Map.of();
  }

  private List<NamedColumn> columns(int headerRow) {
    List<String> known = new ArrayList<>(fields);
    known.add(IGNORE);
    List<NamedColumn> columns = new ArrayList<>();
    entries("columns")
        .forEach(
            (heading, field) -> {
              String name = field.oneOf("field of the table " + table.name(), known);
              NamedColumn named = NamedColumn.of(heading.text(), name.equals(IGNORE) ? "" : name);
              if (headerRow == SheetMap.NO_HEADINGS && named.place() < 0) {
                throw heading.wrong(
                    "there is no row of headings, so `%s` cannot be found. Expected a place, as"
                        + " `column A`",
                    heading.text());
              }
              columns.add(named);
            });
    return List.copyOf(columns);
  }

  private Map<String, String> values(Map<String, Unit> units) {
    Map<String, String> values = new TreeMap<>();
    entries("values")
        .forEach(
            (key, value) -> {
              FieldSchema field = field(key);
              String fault = FixedValues.fault(table, field, units.get(field.name()), value.text());
              if (!fault.isEmpty()) {
                throw value.wrong("%s: %s", field.name(), fault);
              }
              values.put(field.name(), value.text());
            });
    return values;
  }

  private Map<String, Unit> units() {
    Map<String, Unit> units = new TreeMap<>();
    entries("units")
        .forEach(
            (key, value) -> {
              FieldSchema field = field(key);
              Unit unit = Unit.find(value.text()).orElse(null);
              if (field.unit() == null) {
                throw key.wrong("`%s` is a field without a unit", field.name());
              }
              if (unit == null || unit.dimension() != field.unit().dimension()) {
                throw value.wrong(
                    "`%s` is no unit that %s can have. Expected one of: %s",
                    value.text(), field.name(), NumberConverter.unitsLike(field.unit()));
              }
              units.put(field.name(), unit);
            });
    return units;
  }

  private Map<String, Map<String, String>> codes() {
    Map<String, Map<String, String>> codes = new TreeMap<>();
    entries("codes").forEach((key, map) -> codes.put(field(key).name(), codes(field(key), map)));
    return codes;
  }

  private static Map<String, String> codes(FieldSchema field, YamlPart map) {
    if (!Set.of(FieldType.STRING, FieldType.BOOLEAN).contains(field.type())) {
      throw map.wrong(
          "%s holds no codes, but a %s",
          field.name(), field.type().name().toLowerCase(java.util.Locale.ROOT));
    }
    List<String> known = field.type() == FieldType.BOOLEAN ? List.of("yes", "no") : field.codes();
    Map<String, String> meanings = new HashMap<>();
    map.entries()
        .forEach(
            (cell, code) -> {
              String meaning = code.text();
              if (meaning.isEmpty() && field.required()) {
                throw cell.wrong(
                    "%s is needed, so `%s` must stand for a code", field.name(), cell.text());
              }
              if (!meaning.isEmpty() && !known.isEmpty()) {
                code.oneOf("code of " + field.name(), known);
              }
              meanings.put(NamedColumn.key(cell.text()), meaning);
            });
    return meanings;
  }

  private Map<String, DateOrder> dates() {
    Map<String, DateOrder> dates = new HashMap<>(others.dates());
    YamlPart part = keys.get("dates");
    if (part == null) {
      return dates;
    }
    if (!part.isMapping()) {
      dates.put(SheetMap.ANY, ColumnsFile.order(part));
      return dates;
    }
    part.entries()
        .forEach(
            (key, order) -> {
              FieldSchema field = field(key);
              if (field.type() != FieldType.DATE) {
                throw key.wrong("%s holds no dates", field.name());
              }
              dates.put(field.name(), ColumnsFile.order(order));
            });
    return dates;
  }
}
