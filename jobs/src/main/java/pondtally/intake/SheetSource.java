package pondtally.intake;

import java.io.IOException;
import java.util.function.Consumer;

/** One sheet of a workbook, or a text file: rows that can be read as often as needed. */
interface SheetSource {

  /** Index of the sheet in its workbook; 0 for text files. */
  int index();

  /** Name of the sheet; empty for text files. */
  String name();

  /** Whether a missing or an extra cell shifts those after it. */
  boolean isText();

  /** Whether its day numbers count from 1904, as some workbooks do. */
  default boolean countsFrom1904() {
    return false;
  }

  /**
   * Hands all rows over in order, blank ones included where they are stored. The row is reused.
   *
   * @return what the source noticed on the way
   * @throws IOException where the rest of the sheet cannot be read
   */
  SheetNotes read(Consumer<RawRow> rows) throws IOException;

  /**
   * Hands over the rows that stand above the place where the sheet breaks off, if it does; whoever
   * reads it first reports the break.
   *
   * @return whether the sheet is whole
   */
  default boolean readToBreak(Consumer<RawRow> rows) {
    try {
      read(rows);
      return true;
    } catch (IOException reported) {
      return false;
    }
  }
}
