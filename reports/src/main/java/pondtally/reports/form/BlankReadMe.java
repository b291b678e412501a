package pondtally.reports.form;

import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import pondtally.reports.workbook.Styles;
import pondtally.reports.workbook.Widths;

/** The first sheet: how to fill the workbook in. */
final class BlankReadMe {

  private static final int WIDTH = 98;
  private static final List<String> HOW =
      List.of(
          "Each sheet is one kind of record; fill in those that you keep, one row for each record, and leave the others empty. To begin with, Sites, Installs and Revisits are enough.",
          "A heading marked * is needed in every row. Of the headings marked † in a sheet, each row needs one at least. Everything else may stay empty: empty means \"not known\", and 0 means that you know there was none.",
          "Use your own ids, the same in every sheet: the device id of a revisit is the one of its install. Ids are text, so leading zeros stay.",
          "Units stand in the headings. Dates are typed as year-month-day, such as 2025-06-30. Where a cell has a list, pick from it; point at a heading to read what belongs in the column. The last sheet has all of this to print.",
          "Cells that are pasted are not checked by the spreadsheet program. They are checked when the records are read, and nothing is lost: what cannot be used comes back to you in a list of rows to correct.",
          "Do not rename the sheets or the headings, and put nothing above them. Columns may be moved, left out or hidden, and columns of your own may be added at the right: they are not read.",
          "Names of landowners, crews and funders are left out of the public edition of the report.");

  private BlankReadMe() {}

  static void write(XSSFSheet sheet, Styles styles, List<FormTable> tables, String notRead) {
    sheet.setColumnWidth(0, WIDTH * 256);
    sheet.setDisplayGridlines(false);
    put(sheet, 0, "How to fill in this workbook", styles.title());
    put(sheet, 1, notRead, styles.note());
    int at = 3;
    for (String text : HOW) {
      put(sheet, at++, text, styles.prose());
    }
    put(sheet, ++at, "Sheets", styles.section());
    for (FormTable table : tables) {
      put(sheet, ++at, table.sheetName() + ": " + table.description(), styles.prose());
    }
  }

  private static void put(XSSFSheet sheet, int at, String text, CellStyle style) {
    Row row = sheet.createRow(at);
    Cell cell = row.createCell(0);
    cell.setCellValue(text);
    cell.setCellStyle(style);
    if (style.getWrapText()) {
      row.setHeightInPoints(Widths.height(text, WIDTH) + 4);
    }
  }
}
