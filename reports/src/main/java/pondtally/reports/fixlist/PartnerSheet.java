package pondtally.reports.fixlist;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddressList;
import pondtally.reports.form.FormCheck;
import pondtally.reports.text.Messages;
import pondtally.reports.workbook.Format;
import pondtally.reports.workbook.SafeText;
import pondtally.reports.workbook.Styles;
import pondtally.reports.workbook.Widths;

/** Writes the sheet of one partner, from top to bottom. */
final class PartnerSheet {

  /** Columns before the partner's own: what happened, row, what to correct, suggestion, key. */
  private static final int[] WIDTHS = {26, 8, 58, 30, 8};

  private static final int KEY = 4;

  private static final List<String> HEADINGS =
      List.of(
          Messages.of("fixlist.PartnerSheet.what-happened"),
          Messages.of("fixlist.PartnerSheet.row"),
          Messages.of("fixlist.PartnerSheet.what-to-correct"),
          Messages.of("fixlist.PartnerSheet.suggestion"),
          Messages.of("fixlist.PartnerSheet.key"));
  private static final int OWN_WIDTH = 16;
  private static final int MOST_COLUMNS = 60;
  private static final float LEAST_ROW_POINTS = 32;
  private static final float HIGHEST_ROW_POINTS = 409;

  private final Sheet sheet;
  private final Styles styles;
  private final ReturnMarks marks;
  private int next;

  PartnerSheet(Sheet sheet, Styles styles, ReturnMarks marks) {
    this.marks = marks;
    this.sheet = sheet;
    this.styles = styles;
  }

  void write(PartnerFixes partner) {
    widths(partner);
    sheet.createFreezePane(2, 0);
    line(
        Messages.of("fixlist.PartnerSheet.rows-of", Map.of("partner", partner.partner())),
        styles.title());
    small(sheet.getRow(0), marks.mark());
    if (partner.isEmpty()) {
      line(Messages.of("fixlist.PartnerSheet.nothing-to-correct-every-row-that"), styles.note());
      return;
    }
    line(Messages.of("fixlist.PartnerSheet.correct-the-cells-here-and-send"), styles.note());
    wide(partner.wide());
    partner.blocks().forEach(this::block);
  }

  private void widths(PartnerFixes partner) {
    int own =
        partner.blocks().stream().mapToInt(block -> block.headings().lastKey()).max().orElse(0);
    for (int i = 0; i < WIDTHS.length + Math.min(own, MOST_COLUMNS); i++) {
      sheet.setColumnWidth(i, (i < WIDTHS.length ? WIDTHS[i] : OWN_WIDTH) * 256);
    }
  }

  private void wide(List<Issue> issues) {
    if (issues.isEmpty()) {
      return;
    }
    next++;
    line(Messages.of("fixlist.PartnerSheet.whole-columns-sheets-and-files"), styles.section());
    Row header = sheet.createRow(next++);
    header(header, 0, Messages.of("fixlist.PartnerSheet.what-happened"));
    header(header, 1, Messages.of("fixlist.PartnerSheet.row"));
    header(header, 2, Messages.of("fixlist.PartnerSheet.what-to-correct"));
    header(header, 3, Messages.of("fixlist.PartnerSheet.suggestion"));
    header(header, KEY, "");
    header(header, 5, Messages.of("fixlist.PartnerSheet.column"));
    header(header, 6, Messages.of("fixlist.PartnerSheet.file"));
    header(header, 7, Messages.of("fixlist.PartnerSheet.sheet"));
    for (Issue issue : issues) {
      Row row = sheet.createRow(next++);
      text(
          row,
          0,
          issue.row() == 0
              ? Messages.of("fixlist.PartnerSheet.whole-column-sheet-or-file")
              : issue.fate());
      if (issue.row() > 0) {
        number(row, issue.row());
      } else {
        text(row, 1, Messages.of("fixlist.PartnerSheet.all"));
      }
      text(row, 2, issue.message());
      text(row, 3, orNone(issue.suggestion()));
      text(row, 5, orNone(issue.column()));
      text(row, 6, issue.file());
      text(row, 7, orNone(issue.sheet()));
      height(row, issue.message(), issue.suggestion());
    }
  }

  private void block(SheetBlock block) {
    next++;
    line(block.title(), styles.section());
    Row header = sheet.createRow(next++);
    for (int i = 0; i < HEADINGS.size(); i++) {
      header(header, i, HEADINGS.get(i));
    }
    block.headings().forEach((position, heading) -> header(header, column(position), heading));
    int first = next;
    block.rows().forEach(row -> row(block, row));
    block.fields().forEach((position, field) -> choices(block.table(), field, position, first));
  }

  /** Codes to choose from; another value is warned of, since the partner's own may be right. */
  private void choices(String table, String field, int position, int first) {
    int column = column(position);
    marks
        .listed(table, field)
        .ifPresent(
            codes ->
                FormCheck.set(
                    sheet,
                    codes,
                    new CellRangeAddressList(first, next - 1, column, column),
                    false));
  }

  private void row(SheetBlock block, FaultyRow faulty) {
    Row row = sheet.createRow(next++);
    text(row, 0, faulty.fate());
    number(row, faulty.number());
    text(row, 2, faulty.messages());
    text(row, 3, orNone(faulty.suggestions()));
    small(row, faulty.key());
    Set<String> faults = faulty.faultyHeadings();
    for (Map.Entry<Integer, String> heading : block.headings().entrySet()) {
      Cell cell = row.createCell(column(heading.getKey()));
      String value = faulty.cells().getOrDefault(heading.getKey(), "");
      SafeText.put(cell, value, styles, Format.TEXT);
      if (faults.contains(heading.getValue())) {
        cell.setCellStyle(styles.fault(SafeText.looksLikeFormula(value)));
      }
    }
    height(row, faulty.messages(), faulty.suggestions());
  }

  private static int column(int position) {
    return WIDTHS.length + position - 1;
  }

  private static String orNone(String text) {
    return text.isEmpty() ? "–" : text;
  }

  private void line(String text, CellStyle style) {
    Cell cell = sheet.createRow(next++).createCell(0);
    SafeText.put(cell, text, styles, Format.TEXT);
    cell.setCellStyle(styles.guarded(style, text));
  }

  private void header(Row row, int column, String text) {
    Cell cell = row.createCell(column);
    SafeText.put(cell, text, styles, Format.TEXT);
    cell.setCellStyle(styles.header(SafeText.looksLikeFormula(text)));
  }

  private void text(Row row, int column, String text) {
    SafeText.put(row.createCell(column), text, styles, Format.WRAPPED);
  }

  private void small(Row row, String text) {
    Cell cell = row.createCell(KEY);
    cell.setCellValue(text);
    cell.setCellStyle(styles.small());
  }

  private void number(Row row, int number) {
    Cell cell = row.createCell(1);
    cell.setCellValue(number);
    cell.setCellStyle(styles.number(Format.GENERAL));
  }

  private static void height(Row row, String messages, String suggestions) {
    float height =
        Math.max(Widths.height(messages, WIDTHS[2]), Widths.height(suggestions, WIDTHS[3]));
    row.setHeightInPoints(Math.min(HIGHEST_ROW_POINTS, Math.max(height, LEAST_ROW_POINTS)));
  }
}
