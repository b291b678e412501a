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
 * @param derived whether no table holds it, so that the formula alone says its value
 */
record TableColumn(
    String column,
    String heading,
    Format format,
    int width,
    Formula formula,
    boolean totaled,
    boolean derived) {

  TableColumn withHeading(String words) {
    return new TableColumn(column, words, format, width, formula, totaled, derived);
  }

  TableColumn withFormat(Format other) {
    return new TableColumn(column, heading, other, width, formula, totaled, derived);
  }

  TableColumn withWidth(int characters) {
    return new TableColumn(column, heading, format, characters, formula, totaled, derived);
  }

  TableColumn withFormula(Formula live) {
    return new TableColumn(column, heading, format, width, live, totaled, derived);
  }

  TableColumn withTotal() {
    return new TableColumn(column, heading, format, width, formula, true, derived);
  }
}
