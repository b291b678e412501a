package pondtally.intake;

import java.io.Serializable;
import java.util.List;

/**
 * A row that somebody changed in a list of rows to correct.
 *
 * @param key the row that it replaces
 * @param cells its cells now, in the columns of that row's sheet
 * @param list path of the list below the program folder
 * @param listSheet sheet of the list
 * @param listRow its row there
 */
record FixRow(FixKey key, List<String> cells, String list, String listSheet, int listRow)
    implements Serializable {

  /** Where the correction stands, for people. */
  String where() {
    return "%s, sheet %s, row %s".formatted(list, listSheet, listRow);
  }

  /** Whether it says the same as another correction of the same row. */
  boolean saysTheSame(FixRow other) {
    return FixPrint.of(cells).equals(FixPrint.of(other.cells));
  }

  boolean isEmpty() {
    return cells.stream().allMatch(cell -> Blank.clean(cell).isEmpty());
  }
}
