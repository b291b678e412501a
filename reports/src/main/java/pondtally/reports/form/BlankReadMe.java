package pondtally.reports.form;

import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import pondtally.reports.text.Messages;
import pondtally.reports.workbook.Styles;
import pondtally.reports.workbook.Widths;

/** The first sheet: how to fill the workbook in. */
final class BlankReadMe {

  private static final int WIDTH = 98;
  private static final List<String> HOW =
      List.of(
          Messages.of("form.BlankReadMe.each-sheet-is-one-kind-of"),
          Messages.of("form.BlankReadMe.a-heading-marked-is-needed-in"),
          Messages.of("form.BlankReadMe.use-your-own-ids-the-same"),
          Messages.of("form.BlankReadMe.units-stand-in-the-headings-dates"),
          Messages.of("form.BlankReadMe.cells-that-are-pasted-are-not"),
          Messages.of("form.BlankReadMe.do-not-rename-the-sheets-or"),
          Messages.of("form.BlankReadMe.names-of-landowners-crews-and-funders"));

  private BlankReadMe() {}

  static void write(XSSFSheet sheet, Styles styles, List<FormTable> tables, String notRead) {
    sheet.setColumnWidth(0, WIDTH * 256);
    sheet.setDisplayGridlines(false);
    put(sheet, 0, Messages.of("form.BlankReadMe.how-to-fill-in-this-workbook"), styles.title());
    put(sheet, 1, notRead, styles.note());
    int at = 3;
    for (String text : HOW) {
      put(sheet, at++, text, styles.prose());
    }
    put(sheet, ++at, Messages.of("form.BlankReadMe.sheets"), styles.section());
    for (FormTable table : tables) {
      put(
          sheet,
          ++at,
          Messages.of(
              "form.BlankReadMe.sheet",
              Map.of("sheet", table.sheetName(), "description", table.description())),
          styles.prose());
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
