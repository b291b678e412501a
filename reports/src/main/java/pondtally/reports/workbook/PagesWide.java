package pondtally.reports.workbook;

import java.util.Arrays;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * How many pages side by side a sheet is printed on. A table too wide to be read at the width of a
 * page goes on on the next, where its key columns are repeated; charts beside it have a page of
 * their own.
 */
final class PagesWide {

  /** Characters that letters of 7 points still leave room for on a landscape page. */
  private static final int MOST_CHARACTERS = 190;

  private PagesWide() {}

  /** Whether the table takes more than one page side by side. */
  static boolean isWide(Place place) {
    return pages(place) > 1;
  }

  private static int pages(Place place) {
    int table = Arrays.stream(place.widths()).sum();
    return Math.max(1, (table + MOST_CHARACTERS - 1) / MOST_CHARACTERS);
  }

  /** Sets what is repeated and where pages end; returns the number of pages. */
  static int set(XSSFSheet sheet, Place place) {
    int pages = pages(place);
    boolean isBeside = !place.sheet().charts().isEmpty() && !ChartAnchors.standUnder(place);
    if (pages > 1 || isBeside) {
      int keys = place.sheet().keyColumns();
      sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, keys - 1));
    }
    if (isBeside) {
      sheet.setColumnBreak(place.sheet().columns().size() - 1);
      pages++;
    }
    return pages;
  }
}
