package pondtally.reports.form;

import java.util.Map;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import pondtally.reports.text.Messages;
import pondtally.reports.workbook.Format;
import pondtally.reports.workbook.Styles;
import pondtally.reports.workbook.Widths;

/** The sheet of one table: headings with notes, and columns that check what is typed. */
final class BlankSheet {

  private static final int LAST_ROW = SpreadsheetVersion.EXCEL2007.getLastRowIndex();
  private static final int NARROWEST = 12;
  private static final int WIDEST = 30;
  private static final int NOTE_COLUMNS = 3;
  private static final int NOTE_ROWS = 8;

  private BlankSheet() {}

  static void write(XSSFSheet sheet, Styles styles, FormTable table) {
    Row header = sheet.createRow(0);
    float height = 0;
    for (int i = 0; i < table.fields().size(); i++) {
      FormField field = table.fields().get(i);
      int width = width(field);
      sheet.setColumnWidth(i, width * 256);
      sheet.setDefaultColumnStyle(i, style(styles, field));
      Cell cell = header.createCell(i);
      cell.setCellValue(field.markedHeading());
      cell.setCellStyle(styles.header(Format.TEXT));
      note(sheet, cell, field);
      FormCheck.set(sheet, field, new CellRangeAddressList(1, LAST_ROW, i, i), true);
      height = Math.max(height, Widths.height(field.markedHeading(), width - 3));
    }
    header.setHeightInPoints(height);
    sheet.createFreezePane(1, 1);
    // As wide as the page, thirty columns could not be read.
    sheet.setFitToPage(false);
    sheet.setRepeatingRows(CellRangeAddress.valueOf("1:1"));
    sheet.setRepeatingColumns(CellRangeAddress.valueOf("A:A"));
  }

  /** Wide enough for the longest code and the longest word of the heading. */
  private static int width(FormField field) {
    int longest = NARROWEST;
    for (String code : field.codes()) {
      longest = Math.max(longest, code.length() + 4);
    }
    for (String word : field.markedHeading().split(" ", -1)) {
      longest = Math.max(longest, word.length() + 4);
    }
    boolean isName = field.kind() == FormKind.TEXT && !field.name().endsWith("_id");
    return Math.min(WIDEST, Math.max(longest, isName ? 20 : 0));
  }

  private static CellStyle style(Styles styles, FormField field) {
    return switch (field.kind()) {
      case TEXT, CODE, YES_NO -> styles.number(Format.TEXT);
      case DATE -> styles.number(Format.DATE);
      case WHOLE, YEAR, NUMBER -> styles.number(Format.GENERAL);
    };
  }

  private static void note(XSSFSheet sheet, Cell cell, FormField field) {
    int column = cell.getColumnIndex();
    XSSFClientAnchor anchor =
        new XSSFClientAnchor(0, 0, 0, 0, column + 1, 1, column + 1 + NOTE_COLUMNS, 1 + NOTE_ROWS);
    anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
    Comment note = sheet.createDrawingPatriarch().createCellComment(anchor);
    note.setString(new XSSFRichTextString(text(field)));
    note.setAuthor("Pondtally");
    cell.setCellComment(note);
  }

  private static String text(FormField field) {
    return Messages.of(
        "form.BlankSheet.note",
        Map.of(
            "need", field.need().word(),
            "description", field.description(),
            "expected", FormCheck.expected(field)));
  }
}
