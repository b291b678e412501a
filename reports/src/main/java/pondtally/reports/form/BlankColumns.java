package pondtally.reports.form;

import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import pondtally.reports.text.Messages;
import pondtally.reports.workbook.Format;
import pondtally.reports.workbook.Styles;
import pondtally.reports.workbook.Widths;

/** The last sheet: every column of every sheet, to read and to print. */
final class BlankColumns {

  private static final int[] WIDTHS = {14, 30, 14, 46, 46};
  private static final List<String> HEADINGS =
      List.of(
          Messages.of("form.BlankColumns.sheet"),
          Messages.of("form.BlankColumns.heading"),
          Messages.of("form.BlankColumns.needed"),
          Messages.of("form.BlankColumns.what-it-is"),
          Messages.of("form.BlankColumns.what-a-cell-holds"));
  private static final int HEADER_ROW = 3;

  private BlankColumns() {}

  static void write(XSSFSheet sheet, Styles styles, List<FormTable> tables, String notRead) {
    for (int i = 0; i < WIDTHS.length; i++) {
      sheet.setColumnWidth(i, WIDTHS[i] * 256);
    }
    put(sheet.createRow(0), 0, Messages.of("form.BlankColumns.every-column"), styles.title());
    put(sheet.createRow(1), 0, notRead, styles.note());
    Row header = sheet.createRow(HEADER_ROW);
    for (int i = 0; i < HEADINGS.size(); i++) {
      put(header, i, HEADINGS.get(i), styles.header(Format.TEXT));
    }
    int at = HEADER_ROW + 1;
    for (FormTable table : tables) {
      for (FormField field : table.fields()) {
        line(sheet.createRow(at++), styles, table, field);
      }
    }
    sheet.setAutoFilter(new CellRangeAddress(HEADER_ROW, at - 1, 0, HEADINGS.size() - 1));
    sheet.createFreezePane(0, HEADER_ROW + 1);
    sheet.setRepeatingRows(new CellRangeAddress(HEADER_ROW, HEADER_ROW, -1, -1));
  }

  private static void line(Row row, Styles styles, FormTable table, FormField field) {
    CellStyle style = styles.number(Format.WRAPPED);
    String expected = FormCheck.expected(field);
    put(row, 0, table.sheetName(), style);
    put(row, 1, field.heading(), style);
    put(row, 2, field.need().word() + field.need().mark(), style);
    put(row, 3, field.description(), style);
    put(row, 4, expected, style);
    row.setHeightInPoints(
        Math.max(
            Widths.height(field.description(), WIDTHS[3] - 3),
            Widths.height(expected, WIDTHS[4] - 3)));
  }

  private static void put(Row row, int column, String text, CellStyle style) {
    Cell cell = row.createCell(column);
    cell.setCellValue(text);
    cell.setCellStyle(style);
  }
}
