package pondtally.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One CSV file, or one sheet of a workbook, as a partner sends it. */
final class Sheet {
  private final Partner partner;
  private final String fileName;
  private final String name;
  private final Table table;
  private final List<Column> columns;
  private final List<Row> rows = new ArrayList<>();

  /**
   * @param name the sheet's name; empty for a CSV file
   */
  Sheet(Partner partner, String fileName, String name, Table table, List<Column> columns) {
    this.partner = partner;
    this.fileName = fileName;
    this.name = name;
    this.table = table;
    this.columns = columns;
  }

  Partner partner() {
    return partner;
  }

  /** The path below the program folder. */
  String file() {
    return partner.folder + "/" + fileName;
  }

  String name() {
    return name;
  }

  Table table() {
    return table;
  }

  List<Column> columns() {
    return columns;
  }

  /** The rows in order; one without any value is a blank line. */
  List<Row> rows() {
    return rows;
  }

  boolean isWorkbook() {
    return !name.isEmpty();
  }

  boolean holds(String field) {
    return column(field).isPresent();
  }

  Optional<Column> column(String field) {
    return columns.stream().filter(column -> column.field().equals(field)).findFirst();
  }

  /** Adds rows, less what this partner does not keep. */
  Sheet add(List<Row> more) {
    for (Row row : more) {
      row.values().keySet().retainAll(columns.stream().map(Column::field).toList());
      rows.add(row);
    }
    return this;
  }

  /** Whether nothing of that row would be lost here. */
  boolean canHold(Row row) {
    return row.values().keySet().stream().allMatch(this::holds);
  }

  /** The row's number as a spreadsheet shows it: the heading is row 1, and blank lines count. */
  int number(Row row) {
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i) == row) {
        return i + 2;
      }
    }
    throw new IllegalArgumentException(
        "No such row in " + file() + " " + name + ": " + row.values());
  }
}
