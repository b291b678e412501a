package pondtally.reports.fixlist;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.workbook.BookProperties;
import pondtally.reports.workbook.SafeText;
import pondtally.reports.workbook.StableZip;
import pondtally.reports.workbook.Styles;

/**
 * The workbook that partners correct from: one sheet a partner, with the partner's own headings and
 * values, the cells at fault marked, and beside each row what is wrong and what became of it.
 */
public final class FixList {

  private static final String READ_ME = Messages.of("fixlist.FixList.read-me");
  private static final LocalDate NO_DATE = LocalDate.of(2000, 1, 1);
  private static final int ROWS_IN_MEMORY = 100;

  private FixList() {}

  /**
   * Writes the list.
   *
   * @param marks what makes it possible to read the corrected list
   * @param file the {@code .xlsx} file to write; the same tables give the same bytes
   * @throws IOException when the file cannot be written
   */
  public static void write(TablePackage tables, ReturnMarks marks, Path file) throws IOException {
    Map<String, PartnerFixes> sheets = named(PartnerFixes.all(tables));
    BookProperties properties = properties(tables);
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Styles styles = new Styles(book);
      properties.set(book);
      ReadMe.write(add(book, READ_ME, properties), styles, sheets);
      sheets.keySet().forEach(name -> add(book, name, properties));
      try (SXSSFWorkbook stream = new SXSSFWorkbook(book, ROWS_IN_MEMORY)) {
        for (Map.Entry<String, PartnerFixes> entry : sheets.entrySet()) {
          Sheet sheet = stream.getSheet(entry.getKey());
          new PartnerSheet(sheet, styles, marks).write(entry.getValue());
        }
        StableZip.write(stream, file);
      }
    }
  }

  private static XSSFSheet add(XSSFWorkbook book, String name, BookProperties properties) {
    XSSFSheet sheet = book.createSheet(name);
    properties.page(sheet, !name.equals(READ_ME), false);
    return sheet;
  }

  private static Map<String, PartnerFixes> named(List<PartnerFixes> partners) {
    Set<String> taken = new HashSet<>(Set.of(READ_ME.toLowerCase(java.util.Locale.ROOT)));
    Map<String, PartnerFixes> sheets = new LinkedHashMap<>();
    for (PartnerFixes partner : partners) {
      sheets.put(SafeText.sheetName(partner.partner(), taken), partner);
    }
    return sheets;
  }

  private static BookProperties properties(TablePackage tables) {
    String asOf = tables.fact("as_of");
    return new BookProperties(
        Messages.of("fixlist.ReadMe.rows-to-correct"),
        Messages.of("fixlist.FixList.what-partners-can-correct-in-their"),
        asOf.isEmpty() ? NO_DATE : LocalDate.parse(asOf),
        asOf.isEmpty()
            ? Messages.of("fixlist.ReadMe.rows-to-correct")
            : Messages.of("fixlist.FixList.records-up-to", Map.of("asOf", asOf)));
  }
}
