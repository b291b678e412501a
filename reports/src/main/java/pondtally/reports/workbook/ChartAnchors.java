package pondtally.reports.workbook;

import java.util.List;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;

/**
 * Finds room for the charts of a sheet: under a short table, where they are seen and printed with
 * it, beside a long one.
 */
final class ChartAnchors {

  private static final int LONGEST_ABOVE_CHART = 30;
  private static final int ROWS = 20;
  private static final int WIDTH_PIXELS = 820;
  private static final int PIXELS_A_CHARACTER = 7;

  /** A title is set in larger letters than the digits that widths are counted in. */
  private static final double TITLE_LETTER_CHARACTERS = 1.4;

  private static final int DEFAULT_COLUMN_PIXELS = 64;

  private final Place place;
  private int row;
  private final int column;

  ChartAnchors(Place place) {
    this.place = place;
    boolean under = standUnder(place);
    // Below the heading, which prints again on every page with whatever stands in its row.
    row = under ? place.lastRow() + 2 : place.firstRow();
    // Beside the key columns, which print again on every page of a wide table.
    int repeated = PagesWide.isWide(place) ? place.sheet().keyColumns() : 0;
    column = under ? repeated : Math.max(place.sheet().columns().size(), columnsOfTitle(place)) + 1;
  }

  /** Whether the charts of a sheet stand under its table. */
  static boolean standUnder(Place place) {
    return place.sheet().lines().size() <= LONGEST_ABOVE_CHART;
  }

  /** Where the charts of a sheet stand. */
  static List<CellRangeAddress> ranges(Place place) {
    ChartAnchors anchors = new ChartAnchors(place);
    return place.sheet().charts().stream()
        .map(chart -> anchors.next())
        .map(at -> new CellRangeAddress(at.getRow1(), at.getRow2(), at.getCol1(), at.getCol2()))
        .toList();
  }

  /** Room for the next chart. */
  XSSFClientAnchor next() {
    int last = column;
    int left = WIDTH_PIXELS;
    while (left > pixels(last)) {
      left -= pixels(last);
      last++;
    }
    XSSFClientAnchor anchor =
        new XSSFClientAnchor(0, 0, left * Units.EMU_PER_PIXEL, 0, column, row, last, row + ROWS);
    anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
    row += ROWS + 1;
    return anchor;
  }

  /** Columns over which title and notes reach. */
  static int columnsOfTitle(Place place) {
    int left = (int) (place.sheet().title().length() * TITLE_LETTER_CHARACTERS);
    for (String line : place.noteLines()) {
      left = Math.max(left, line.length());
    }
    left *= PIXELS_A_CHARACTER;
    int columns = 0;
    while (left > 0) {
      left -= pixels(place, columns++);
    }
    return columns;
  }

  private int pixels(int at) {
    return pixels(place, at);
  }

  private static int pixels(Place place, int at) {
    return at < place.widths().length
        ? place.widths()[at] * PIXELS_A_CHARACTER
        : DEFAULT_COLUMN_PIXELS;
  }
}
