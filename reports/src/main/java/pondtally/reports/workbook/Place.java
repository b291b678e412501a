package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;
import pondtally.reports.text.Messages;

/**
 * Where the parts of a table sheet stand. Row and column numbers count from 0, as in the library
 * that writes them.
 */
final class Place {

  private static final int NARROWEST_NOTE = 90;
  private static final int WIDEST_NOTE = 150;
  private static final String LEGEND =
      Messages.of(
          "workbook.Place.not-known-or-cannot-be-estimated", Map.of("notknown", Formula.NOT_KNOWN));

  private final TableSheet sheet;
  private final int[] widths;
  private final List<String> noteLines = new ArrayList<>();
  private final Map<String, Integer> index = new HashMap<>();

  Place(TableSheet sheet) {
    this.sheet = sheet;
    this.widths = Widths.of(sheet);
    for (int i = 0; i < sheet.columns().size(); i++) {
      index.put(sheet.columns().get(i).column(), i);
    }
    int total = 0;
    for (int width : widths) {
      total += width;
    }
    // Letters of a sentence are narrower than the digits that widths are counted in.
    int noteWidth = Math.max(NARROWEST_NOTE, Math.min(WIDEST_NOTE, total * 9 / 8));
    sheet.notes().forEach(note -> noteLines.addAll(Widths.wrapped(note, noteWidth)));
    noteLines.add(LEGEND);
  }

  TableSheet sheet() {
    return sheet;
  }

  int[] widths() {
    return widths;
  }

  /** Notes broken into lines as wide as the table. */
  List<String> noteLines() {
    return noteLines;
  }

  /** Row of the totals; meaningful only where the sheet has totals. */
  int totalsRow() {
    return 1 + noteLines.size();
  }

  int headerRow() {
    return totalsRow() + (sheet.hasTotals() ? 1 : 0);
  }

  int firstRow() {
    return headerRow() + 1;
  }

  int lastRow() {
    return headerRow() + sheet.lines().size();
  }

  int columnIndex(String column) {
    Integer at = index.get(column);
    if (at == null) {
      throw new IllegalArgumentException("sheet " + sheet.name() + " has no column " + column);
    }
    return at;
  }

  boolean has(String column) {
    return index.containsKey(column);
  }

  /** All cells of a column, for example {@code $D$7:$D$40}. */
  String range(String column) {
    return range(column, 0, sheet.lines().size());
  }

  /** Some lines of a column. */
  String range(String column, int from, int count) {
    String letter = CellReference.convertNumToColString(columnIndex(column));
    int first = firstRow() + from + 1;
    String to = "$" + letter + "$";
    return to + first + ":" + to + (first + count - 1);
  }

  /** The same with the name of the sheet, for use on others. */
  String farRange(String column, int from, int count) {
    return quotedName() + "!" + range(column, from, count);
  }

  /** The sheet's name as formulas write it. */
  String quotedName() {
    return "'" + sheet.name().replace("'", "''") + "'";
  }
}
