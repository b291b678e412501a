package pondtally.reports.form;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import pondtally.reports.text.Messages;
import pondtally.reports.workbook.BookProperties;
import pondtally.reports.workbook.StableZip;
import pondtally.reports.workbook.Styles;

/**
 * The empty workbook that partners fill in: a sheet for each table, with headings that are read
 * without a map, and two sheets that explain.
 */
public final class BlankWorkbook {

  private static final LocalDate NO_DATE = LocalDate.of(2000, 1, 1);
  private static final BookProperties PROPERTIES =
      new BookProperties(
          Messages.of("form.BlankWorkbook.records-of-a-partner"),
          Messages.of("form.BlankWorkbook.empty-workbook-to-fill-in"),
          NO_DATE,
          Messages.of("form.BlankWorkbook.records-of-a-partner"));

  private BlankWorkbook() {}

  /**
   * Writes the workbook; the same tables give the same bytes.
   *
   * @param notRead the line by which reading knows the sheets that only explain
   * @throws IOException when the file cannot be written
   */
  public static void write(List<FormTable> tables, String notRead, Path file) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Styles styles = new Styles(book);
      PROPERTIES.set(book);
      BlankReadMe.write(
          add(book, Messages.of("form.BlankWorkbook.read-me"), false), styles, tables, notRead);
      for (FormTable table : tables) {
        BlankSheet.write(add(book, table.sheetName(), true), styles, table);
      }
      BlankColumns.write(
          add(book, Messages.of("form.BlankWorkbook.notes-on-columns"), true),
          styles,
          tables,
          notRead);
      StableZip.write(book, file);
    }
  }

  private static XSSFSheet add(XSSFWorkbook book, String name, boolean landscape) {
    XSSFSheet sheet = book.createSheet(name);
    PROPERTIES.page(sheet, landscape, false);
    return sheet;
  }
}
