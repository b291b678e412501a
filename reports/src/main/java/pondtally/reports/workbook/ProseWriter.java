package pondtally.reports.workbook;

import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Writes sheets of sentences. */
final class ProseWriter {

  /** Characters a line of the page holds. */
  private static final int WIDTH = 96;

  private final Styles styles;

  ProseWriter(Styles styles) {
    this.styles = styles;
  }

  void write(XSSFSheet sheet, ProseSheet prose) {
    sheet.setColumnWidth(0, WIDTH * 256);
    sheet.setDisplayGridlines(false);
    Cell title = sheet.createRow(0).createCell(0);
    title.setCellValue(SafeText.encoded(prose.title()));
    title.setCellStyle(styles.title());
    int row = 1;
    for (ProseSheet.Block block : prose.blocks()) {
      if (block.kind() == ProseSheet.Kind.SECTION) {
        row++;
      }
      write(sheet.createRow(row++).createCell(0), block);
    }
  }

  private void write(Cell cell, ProseSheet.Block block) {
    cell.setCellValue(SafeText.encoded(block.text()));
    switch (block.kind()) {
      case SECTION -> cell.setCellStyle(styles.section());
      case PARAGRAPH -> paragraph(cell);
      case LINK -> link(cell, block.target());
    }
  }

  private void paragraph(Cell cell) {
    // No height of its own: programs fit the row to the lines that their font needs.
    cell.setCellStyle(styles.prose());
  }

  private void link(Cell cell, String sheet) {
    cell.setCellStyle(styles.link());
    Hyperlink link =
        cell.getSheet().getWorkbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    link.setAddress("'" + sheet.replace("'", "''") + "'!A1");
    cell.setHyperlink(link);
  }
}
