package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * How a table sheet is printed: on pages wide enough to be read, the charts beside a long table on
 * a page of their own, and without the columns that only feed a chart. A table that is too wide for
 * one page goes on on the next, where its key columns are repeated; its title and notes then have a
 * page to themselves, since repeated columns would cut them off.
 */
final class PagesWide {

  /** Characters that letters of 7 points leave room for on a landscape letter page. */
  private static final int MOST_ON_LETTER = 190;

  private static final int MOST_ON_LEGAL = 250;
  private static final int MOST_ON_TABLOID = 310;

  /** Columns with the lengths of a chart's error bars; their limits stand in columns before. */
  private static final Set<String> FOR_CHARTS = Set.of("minus", "plus");

  private PagesWide() {}

  /** Whether the table takes more than one page side by side. */
  static boolean isWide(Place place) {
    return pages(place) > 1;
  }

  private static int pages(Place place) {
    int table = width(place);
    return table <= MOST_ON_TABLOID ? 1 : (table + MOST_ON_LETTER - 1) / MOST_ON_LETTER;
  }

  private static int width(Place place) {
    int width = 0;
    for (int i = 0; i < printed(place); i++) {
      width += place.widths()[i];
    }
    return width;
  }

  /** Columns from the left that are printed. */
  private static int printed(Place place) {
    List<TableColumn> columns = place.sheet().columns();
    int printed = columns.size();
    while (printed > 1 && FOR_CHARTS.contains(columns.get(printed - 1).column())) {
      printed--;
    }
    return printed;
  }

  /** The paper that the sheet is printed on. */
  static short paper(Place place) {
    int width = width(place);
    if (width <= MOST_ON_LETTER || width > MOST_ON_TABLOID) {
      return PrintSetup.LETTER_PAPERSIZE;
    }
    return width <= MOST_ON_LEGAL ? PrintSetup.LEGAL_PAPERSIZE : PrintSetup.TABLOID_PAPERSIZE;
  }

  /**
   * Sets what is printed and what is repeated; returns the number of pages side by side.
   *
   * @param charts where the sheet's charts stand
   */
  static int set(XSSFSheet sheet, Place place, List<CellRangeAddress> charts) {
    if (isWide(place)) {
      sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, place.sheet().keyColumns() - 1));
    }
    boolean under = ChartAnchors.standUnder(place);
    boolean isBeside = !charts.isEmpty() && !under;
    boolean hasHidden = printed(place) < place.sheet().columns().size();
    if (isWide(place) || isBeside || hasHidden) {
      print(sheet, areas(place, charts, under));
    }
    return pages(place);
  }

  private static List<CellRangeAddress> areas(
      Place place, List<CellRangeAddress> charts, boolean under) {
    List<CellRangeAddress> areas = new ArrayList<>();
    int right = Math.max(printed(place), ChartAnchors.columnsOfTitle(place)) - 1;
    int top = 0;
    if (isWide(place)) {
      top = place.totalsRow();
      right = printed(place) - 1;
      areas.add(new CellRangeAddress(0, top - 1, 0, right));
    }
    int bottom = Math.max(place.lastRow(), top);
    CellRangeAddress table = new CellRangeAddress(top, bottom, 0, right);
    areas.add(table);
    for (CellRangeAddress chart : charts) {
      if (under) {
        table.setLastRow(Math.max(table.getLastRow(), chart.getLastRow()));
        table.setLastColumn(Math.max(table.getLastColumn(), chart.getLastColumn()));
      } else {
        areas.add(chart);
      }
    }
    return areas;
  }

  private static void print(XSSFSheet sheet, List<CellRangeAddress> areas) {
    List<String> ranges = areas.stream().map(area -> area.formatAsString(null, true)).toList();
    sheet
        .getWorkbook()
        .setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), String.join(",", ranges));
  }
}
