package pondtally.reports.document;

import java.math.BigInteger;
import java.util.List;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.apache.poi.xwpf.usermodel.XWPFTableCell;
import org.apache.poi.xwpf.usermodel.XWPFTableRow;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTblGrid;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTblLook;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTblPr;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STTblLayoutType;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STTblWidth;
import pondtally.reports.view.GrantTable;
import pondtally.reports.view.Sentence;
import pondtally.reports.workbook.SafeText;

/**
 * Tables that a reader, a screen reader and a spreadsheet can follow: one heading row that repeats
 * on each page, a description, no merged and no empty cell.
 */
final class TableWriter {

  /** A longer table may go on on the next page, where its headings are repeated. */
  private static final int MOST_ROWS_KEPT_TOGETHER = 6;

  /** So that no page ends with a heading and a row, or begins with a row and a note. */
  private static final int KEPT_AT_EITHER_END = 2;

  private TableWriter() {}

  static void write(XWPFDocument document, Paragraphs paragraphs, GrantTable content) {
    paragraphs.tableCaption(content.title());
    int columns = content.columns().size();
    XWPFTable table = document.createTable(content.rows().size() + 1, columns);
    look(table, content, ColumnWidths.of(content));
    XWPFTableRow heading = table.getRow(0);
    heading.setRepeatHeader(true);
    for (int c = 0; c < columns; c++) {
      put(heading.getCell(c), content.columns().get(c), content.isNumber(c), true);
    }
    for (int r = 0; r < content.rows().size(); r++) {
      List<Sentence> cells = content.rows().get(r);
      boolean keepsNext = keepsNext(r, content.rows().size());
      for (int c = 0; c < columns; c++) {
        put(table.getRow(r + 1).getCell(c), cells.get(c).text(), content.isNumber(c), keepsNext);
      }
    }
    table.getRows().forEach(row -> row.setCantSplitRow(true));
    paragraphs.add("TableNote", content.note());
  }

  /** The last row keeps the note below it on its page. */
  private static boolean keepsNext(int row, int rows) {
    return rows <= MOST_ROWS_KEPT_TOGETHER
        || row < KEPT_AT_EITHER_END
        || row >= rows - KEPT_AT_EITHER_END;
  }

  private static void look(XWPFTable table, GrantTable content, int[] widths) {
    table.setStyleID("FigureTable");
    CTTblPr properties = table.getCTTbl().getTblPr();
    if (properties.isSetTblBorders()) {
      properties.unsetTblBorders();
    }
    table.setWidth(ColumnWidths.sum(widths));
    properties.addNewTblLayout().setType(STTblLayoutType.FIXED);
    CTTblLook look = properties.addNewTblLook();
    look.setVal(new byte[] {0x04, 0x20});
    look.setFirstRow(true);
    look.setNoHBand(true);
    look.setNoVBand(true);
    properties.addNewTblCaption().setVal(SafeText.visible(content.title()));
    properties.addNewTblDescription().setVal(SafeText.visible(content.description()));
    grid(table, widths);
  }

  private static void grid(XWPFTable table, int[] widths) {
    CTTblGrid grid =
        table.getCTTbl().getTblGrid() == null
            ? table.getCTTbl().addNewTblGrid()
            : table.getCTTbl().getTblGrid();
    while (grid.sizeOfGridColArray() > 0) {
      grid.removeGridCol(0);
    }
    for (int width : widths) {
      grid.addNewGridCol().setW(BigInteger.valueOf(width));
    }
    for (XWPFTableRow row : table.getRows()) {
      for (int c = 0; c < widths.length; c++) {
        var cell = row.getCell(c).getCTTc();
        var properties = cell.isSetTcPr() ? cell.getTcPr() : cell.addNewTcPr();
        var width = properties.isSetTcW() ? properties.getTcW() : properties.addNewTcW();
        width.setW(BigInteger.valueOf(widths[c]));
        width.setType(STTblWidth.DXA);
      }
    }
  }

  private static void put(XWPFTableCell cell, String text, boolean number, boolean keepsNext) {
    XWPFParagraph paragraph = cell.getParagraphs().get(0);
    paragraph.setStyle(number ? "TableNumber" : "TableText");
    paragraph.setKeepNext(keepsNext);
    Paragraphs.run(paragraph, text);
  }
}
