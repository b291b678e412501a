package pondtally.reports.fixlist;

import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import pondtally.reports.text.Messages;
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
          Messages.of("fixlist.ReadMe.each-partner-has-a-sheet-of"),
          Messages.of("fixlist.ReadMe.correct-the-cells-here-under-your"),
          Messages.of("fixlist.ReadMe.a-correction-counts-only-if-its"),
          Messages.of("fixlist.ReadMe.leave-the-narrow-column-key-as"),
          Messages.of("fixlist.ReadMe.a-cell-at-fault-is-framed"),
          Messages.of("fixlist.ReadMe.rows-that-were-set-aside-come"),
          Messages.of("fixlist.ReadMe.nothing-is-ever-changed-in-your"));

  private ReadMe() {}

  static void write(XSSFSheet sheet, Styles styles, Map<String, PartnerFixes> partners) {
    sheet.setColumnWidth(0, WIDTH * 256);
    sheet.setDisplayGridlines(false);
    put(sheet.createRow(0), Messages.of("fixlist.ReadMe.rows-to-correct"), styles.title());
    int at = 1;
    for (String text : HOW) {
      Row row = sheet.createRow(at++);
      put(row, text, styles.prose());
      row.setHeightInPoints(Widths.height(text, WIDTH));
    }
    at++;
    put(sheet.createRow(at++), Messages.of("fixlist.ReadMe.sheets"), styles.section());
    for (Map.Entry<String, PartnerFixes> entry : partners.entrySet()) {
      Row row = sheet.createRow(at++);
      SafeText.put(row.createCell(0), line(entry), styles, Format.WRAPPED);
      row.setHeightInPoints(Widths.height(line(entry), WIDTH));
    }
  }

  private static String line(Map.Entry<String, PartnerFixes> entry) {
    PartnerFixes partner = entry.getValue();
    if (partner.isEmpty()) {
      return Messages.of("fixlist.ReadMe.nothing", Map.of("sheet", entry.getKey()));
    }
    return Messages.of(
        "fixlist.ReadMe.rows",
        Map.of(
            "sheet", entry.getKey(),
            "setAside", plain(NumberText.count(partner.rows(0), "rows")),
            "changed", NumberText.count(partner.rows(1)),
            "duplicate", NumberText.count(partner.rows(2)),
            "look", NumberText.count(partner.rows(3)),
            "notes", plain(NumberText.count(partner.wide().size(), "notes"))));
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
