package pondtally.intake;

/**
 * Finds the row below a table with which, as {@code columns.yaml} states, something else begins.
 */
final class TableEnd {

  private final String beginning;

  /**
   * @param stopAt how the first filled cell of that row begins; null: there is no such row
   */
  TableEnd(String stopAt) {
    this.beginning = stopAt == null ? null : NamedColumn.key(stopAt);
  }

  boolean isAt(RawRow row) {
    return beginning != null && NamedColumn.key(firstInk(row)).startsWith(beginning);
  }

  /** The first cell that is filled; empty: there is none. */
  static String firstInk(RawRow row) {
    for (int i = 0; i < row.width; i++) {
      if (!Blank.clean(row.cell(i)).isEmpty()) {
        return row.cell(i);
      }
    }
    return "";
  }
}
