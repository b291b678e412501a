package pondtally.intake;

/** Turns the cells of one column into values of its field, strictly. */
interface CellConverter {

  /**
   * The value of a cell that is not empty.
   *
   * @param text the cleaned cell
   * @param isNumeric whether it is a number of the spreadsheet's own rather than text
   * @return the value; null where it cannot be used, which has been reported then
   */
  Object convert(String text, boolean isNumeric);

  /** Reports what concerns the column as a whole, after its last cell. */
  default void finish() {}
}
