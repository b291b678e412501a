package pondtally.reports.fixlist;

import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import pondtally.reports.text.NumberText;
import pondtally.reports.workbook.Format;
import pondtally.reports.workbook.SafeText;
import pondtally.reports.workbook.Styles;
import pondtally.reports.workbook.Widths;

/** The first sheet: how to use the list, and how much each partner has to look at. */
final class ReadMe {

  private static final int WIDTH = 98;
  private static final List<String> HOW =
      List.of(
          "Each partner has a sheet of its own. Send a partner only that sheet: the others hold other partners' records.",
          "Correct the cells here, under your own headings, and save the workbook. Put into the folder of its partner, under any name, it is read with the next run: rows that were changed here replace the rows that they name, all others stay. Leave an earlier list in the folder when a later one is added.",
          "A correction counts only if its row still stands in the partner's file as it did. If the row was changed in the file itself as well, the file wins, and the next report says so. Or correct your own file only, at the file, sheet and row given here.",
          "Leave the narrow column \"Key\" as it is: it tells which row is meant. Rows may be sorted or deleted here; a deleted row changes nothing. To take a record out, delete it in the file itself.",
          "A cell at fault is framed, filled and bold; the column \"What to correct\" names it by your own heading.",
          "Rows that were set aside come first: they count nowhere until they are corrected. Then come rows counted with a changed or dropped value, then duplicates, then rows that are counted and that somebody should look at.",
          "Nothing is ever changed in your files. Codes are never corrected by guessing; where a near one is known it is suggested, and cells of codes have a list to choose from.");

  private ReadMe() {}

  static void write(XSSFSheet sheet, Styles styles, Map<String, PartnerFixes> partners) {
    sheet.setColumnWidth(0, WIDTH * 256);
    sheet.setDisplayGridlines(false);
    put(sheet.createRow(0), "Rows to correct", styles.title());
    int at = 1;
    for (String text : HOW) {
      Row row = sheet.createRow(at++);
      put(row, text, styles.prose());
      row.setHeightInPoints(Widths.height(text, WIDTH));
    }
    at++;
    put(sheet.createRow(at++), "Sheets", styles.section());
    for (Map.Entry<String, PartnerFixes> entry : partners.entrySet()) {
      Row row = sheet.createRow(at++);
      SafeText.put(row.createCell(0), line(entry), styles, Format.WRAPPED);
      row.setHeightInPoints(Widths.height(line(entry), WIDTH));
    }
  }

  private static String line(Map.Entry<String, PartnerFixes> entry) {
    PartnerFixes partner = entry.getValue();
    String sheet = "Sheet \"" + entry.getKey() + "\": ";
    if (partner.isEmpty()) {
      return sheet + "nothing to correct.";
    }
    return sheet
        + plain(NumberText.count(partner.rows(0), "rows"))
        + " set aside, "
        + NumberText.count(partner.rows(1))
        + " changed, "
        + NumberText.count(partner.rows(2))
        + " duplicate, "
        + NumberText.count(partner.rows(3))
        + " to look at; "
        + plain(NumberText.count(partner.wide().size(), "notes"))
        + " on whole columns, sheets or files.";
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  private static void put(Row row, String text, CellStyle style) {
    Cell cell = row.createCell(0);
    cell.setCellValue(text);
    cell.setCellStyle(style);
  }
}
