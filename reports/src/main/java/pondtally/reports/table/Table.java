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
  private final List<Field> fields;
  private final Map<String, Integer> index = new LinkedHashMap<>();
  private final List<Row> rows = new ArrayList<>();

  Table(String name, String title, List<Field> fields, List<String[]> cells) {
    this.name = name;
    this.title = title;
    this.fields = List.copyOf(fields);
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

  public List<Field> fields() {
    return fields;
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
