package pondtally.reports.workbook;

import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Writes sheets of sentences. */
final class ProseWriter {

  /** A single column is not scaled to the page by every program, so it must fit as it is. */
  private static final int WIDTH = 98;

  private final Styles styles;

  ProseWriter(Styles styles) {
    this.styles = styles;
  }

  void write(XSSFSheet sheet, ProseSheet prose) {
    sheet.setColumnWidth(0, WIDTH * 256);
    sheet.setDisplayGridlines(false);
    Cell title = sheet.createRow(0).createCell(0);
    title.setCellValue(SafeText.encoded(prose.title()));
    title.setCellStyle(styles.guarded(styles.title(), prose.title()));
    int row = 1;
    for (ProseSheet.Block block : prose.blocks()) {
      if (block.kind() == ProseSheet.Kind.SECTION) {
        row++;
      }
      write(sheet.createRow(row++).createCell(0), block);
    }
  }

  private void write(Cell cell, ProseSheet.Block block) {
    // With protected spaces some programs count the lines of a row wrongly.
    cell.setCellValue(SafeText.encoded(block.text().replace('\u00a0', ' ')));
    switch (block.kind()) {
      case SECTION -> cell.setCellStyle(styles.guarded(styles.section(), block.text()));
      case PARAGRAPH -> paragraph(cell, block.text());
      case LINK -> link(cell, block.target());
    }
  }

  private void paragraph(Cell cell, String text) {
    cell.setCellStyle(styles.guarded(styles.prose(), text));
    cell.getRow().setHeightInPoints(Widths.height(text, WIDTH));
  }

  private void link(Cell cell, String sheet) {
    cell.setCellStyle(styles.guarded(styles.link(), cell.getStringCellValue()));
    Hyperlink link =
        cell.getSheet().getWorkbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    link.setAddress("'" + sheet.replace("'", "''") + "'!A1");
    cell.setHyperlink(link);
  }
}
