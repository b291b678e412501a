package pondtally.sample;

/**
 * One fault in one place.
 *
 * @param row null for a whole column, sheet or file
 * @param field null where the row or more is meant
 * @param value the cell as it stands in the file; for a column, how many cells; for a row, empty
 * @param twin the row it collides with, null where there is none
 */
record Planted(
    Sheet sheet,
    Row row,
    String field,
    String value,
    FaultKind kind,
    Outcome outcome,
    Sheet twinSheet,
    Row twin) {

  /** The heading as the partner wrote it. */
  String heading() {
    return field == null ? "" : sheet.column(field).orElseThrow().heading();
  }

  /** The row as a spreadsheet shows it; empty for a whole column, sheet or file. */
  String rowNumber() {
    return row == null ? "" : String.valueOf(sheet.number(row));
  }

  /** Where the other row of a collision is; empty where there is none. */
  String twinPlace() {
    if (twin == null) {
      return "";
    }
    String name = twinSheet.name().isEmpty() ? "" : ", sheet " + twinSheet.name();
    return twinSheet.file() + name + ", row " + twinSheet.number(twin);
  }
}
