package pondtally.reports.workbook;

/**
 * A column of a table sheet.
 *
 * @param column where its cells are read from
 * @param heading with the unit
 * @param width in characters; 0 fits the column to its texts
 * @param formula null where cells are constants
 * @param totaled whether the line of totals adds it up; a column with a formula shows that formula
 *     over the totals instead
 * @param source the result table that holds it; empty where no table does, so that the formula
 *     alone says its value
 */
record TableColumn(
    String column,
    String heading,
    Format format,
    int width,
    Formula formula,
    boolean totaled,
    String source) {

  /** Whether no table holds it. */
  boolean derived() {
    return source.isEmpty();
  }

  /** What the column is called in its table. */
  String sourceColumn() {
    String prefix = source + ".";
    return column.startsWith(prefix) ? column.substring(prefix.length()) : column;
  }

  TableColumn withHeading(String words) {
    return new TableColumn(column, words, format, width, formula, totaled, source);
  }

  TableColumn withFormat(Format other) {
    return new TableColumn(column, heading, other, width, formula, totaled, source);
  }

  TableColumn withWidth(int characters) {
    return new TableColumn(column, heading, format, characters, formula, totaled, source);
  }

  TableColumn withFormula(Formula live) {
    return new TableColumn(column, heading, format, width, live, totaled, source);
  }

  TableColumn withTotal() {
    return new TableColumn(column, heading, format, width, formula, true, source);
  }
}
