package pondtally.reports.workbook;

import org.apache.poi.ss.usermodel.ClientAnchor;
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
  private static final int DEFAULT_COLUMN_PIXELS = 64;

  private final Place place;
  private int row;
  private final int column;

  ChartAnchors(Place place) {
    this.place = place;
    boolean under = standUnder(place);
    row = under ? place.lastRow() + 2 : place.headerRow();
    // Beside the key columns, which print again on every page of a wide table.
    int repeated = PagesWide.isWide(place) ? place.sheet().keyColumns() : 0;
    column = under ? repeated : place.sheet().columns().size() + 1;
  }

  /** Whether the charts of a sheet stand under its table. */
  static boolean standUnder(Place place) {
    return place.sheet().lines().size() <= LONGEST_ABOVE_CHART;
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

  private int pixels(int at) {
    return at < place.widths().length
        ? place.widths()[at] * PIXELS_A_CHARACTER
        : DEFAULT_COLUMN_PIXELS;
  }
}
