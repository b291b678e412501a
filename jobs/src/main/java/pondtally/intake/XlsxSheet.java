package pondtally.intake;

import java.io.IOException;
import java.util.function.Consumer;

/** One sheet of an open workbook. */
final class XlsxSheet implements SheetSource {

  private final XlsxBook book;
  private final int index;
  private final WorkbookXml.Sheet sheet;

  XlsxSheet(XlsxBook book, int index, WorkbookXml.Sheet sheet) {
    this.book = book;
    this.index = index;
    this.sheet = sheet;
  }

  @Override
  public int index() {
    return index;
  }

  @Override
  public String name() {
    return sheet.name() == null ? "" : sheet.name();
  }

  @Override
  public boolean isText() {
    return false;
  }

  @Override
  public boolean countsFrom1904() {
    return book.countsFrom1904();
  }

  @Override
  public SheetNotes read(Consumer<RawRow> rows) throws IOException {
    SheetXml xml = new SheetXml(book, sheet.isHidden(), rows);
    book.stream(sheet, xml);
    return xml.notes();
  }
}
