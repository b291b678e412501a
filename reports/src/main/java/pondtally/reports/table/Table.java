package pondtally.reports.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** One result table: fields and rows in the order of the file. */
public final class Table {

  private final String name;
  private final String title;
  private final String sha256;
  private final List<Field> fields;
  private final List<String> key;
  private final Map<String, Integer> index = new LinkedHashMap<>();
  private final List<Row> rows = new ArrayList<>();

  Table(
      String name,
      String title,
      String sha256,
      List<Field> fields,
      List<String> key,
      List<String[]> cells) {
    this.name = name;
    this.title = title;
    this.sha256 = sha256;
    this.fields = List.copyOf(fields);
    this.key = List.copyOf(key);
    for (int i = 0; i < fields.size(); i++) {
      index.put(fields.get(i).name(), i);
    }
    cells.forEach(row -> rows.add(new Row(this, row)));
  }

  public String name() {
    return name;
  }

  /** One line that says what the table holds. */
  public String title() {
    return title;
  }

  /** Fingerprint of the file that was read; empty for a table that is read as it is needed. */
  public String sha256() {
    return sha256;
  }

  public List<Field> fields() {
    return fields;
  }

  /** Columns that together single out each row; empty where none do. */
  public List<String> key() {
    return key;
  }

  /** Whether there is a column of that name. */
  public boolean has(String column) {
    return index.containsKey(column);
  }

  public List<Row> rows() {
    return List.copyOf(rows);
  }

  /** Rows of one grouping, in file order. */
  public Stream<Row> grouping(String grouping) {
    return rows.stream().filter(row -> row.text("grouping").equals(grouping));
  }

  int index(String column) {
    Integer at = index.get(column);
    if (at == null) {
      throw new IllegalArgumentException("table " + name + " has no column " + column);
    }
    return at;
  }
}
