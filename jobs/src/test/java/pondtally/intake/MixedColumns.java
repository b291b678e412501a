package pondtally.intake;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import pondtally.check.Finding;
import pondtally.check.Severity;
import pondtally.check.SheetReport;
import pondtally.record.Sourced;
import pondtally.record.Visit;

/**
 * Reads generated columns of revisits and compares each cell with what its writer meant: a text
 * file holds one column, a workbook one a sheet.
 */
final class MixedColumns {

  /**
   * A cell.
   *
   * @param text as it is written; null: {@code stored} is written as a cell of the spreadsheet's
   *     own
   * @param meant what its writer meant
   * @param isDecidable whether the column leaves one reading only
   */
  record Written(String text, Object stored, Object meant, boolean isDecidable) {}

  /** How many cells were read, and how many refused. */
  record Outcome(int read, int refused) {

    Outcome plus(Outcome other) {
      return new Outcome(read + other.read, refused + other.refused);
    }
  }

  private final Path folder;
  private final String heading;
  private final Function<Visit, Object> value;
  private final String refusal;

  /**
   * @param heading of the column that is generated
   * @param value of that column in a record
   * @param refusal the rule by which a cell that cannot be decided is refused
   */
  MixedColumns(Path folder, String heading, Function<Visit, Object> value, String refusal) {
    this.folder = folder;
    this.heading = heading;
    this.value = value;
    this.refusal = refusal;
  }

  Outcome inText(List<Written> column, String name) throws IOException {
    StringBuilder text = new StringBuilder(String.join(";", headings())).append('\n');
    for (Written cell : column) {
      text.append(String.join(";", row(cell.text()))).append('\n');
    }
    Read read = Read.text(folder, "revisits.csv", text.toString());
    return judge(column, read.report(), read.records(), name);
  }

  Outcome inWorkbook(List<List<Written>> columns, boolean is1904, String name) throws IOException {
    Path file = folder.resolve("revisits.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      book.getCTWorkbook().getWorkbookPr().setDate1904(is1904);
      CellStyle date = book.createCellStyle();
      date.setDataFormat((short) 14);
      for (int i = 0; i < columns.size(); i++) {
        fill(book.createSheet("Revisits " + (i + 1)), columns.get(i), date);
      }
      book.write(out);
    }
    Read read = Read.file(file);
    Outcome outcome = new Outcome(0, 0);
    for (int i = 0; i < columns.size(); i++) {
      int sheet = i;
      List<Sourced> records =
          read.records().stream().filter(row -> row.origin().sheet() == sheet).toList();
      outcome =
          outcome.plus(
              judge(columns.get(i), read.reports().get(i), records, name + " sheet " + (i + 1)));
    }
    return outcome;
  }

  private List<String> headings() {
    List<String> headings = new ArrayList<>(List.of("device_id", "visited_on", "condition"));
    headings.remove(heading);
    headings.add(heading);
    return headings;
  }

  private List<String> row(String cell) {
    List<String> row = new ArrayList<>();
    for (String other : headings()) {
      row.add(
          other.equals(heading)
              ? cell
              : Map.of("device_id", "D1", "visited_on", "2020-01-01", "condition", "working")
                  .get(other));
    }
    return row;
  }

  private void fill(Sheet sheet, List<Written> column, CellStyle date) {
    List<String> headings = headings();
    Row top = sheet.createRow(0);
    for (int i = 0; i < headings.size(); i++) {
      top.createCell(i).setCellValue(headings.get(i));
    }
    for (int r = 0; r < column.size(); r++) {
      Row row = sheet.createRow(r + 1);
      List<String> cells = row("");
      for (int i = 0; i < cells.size() - 1; i++) {
        row.createCell(i).setCellValue(cells.get(i));
      }
      set(row.createCell(cells.size() - 1), column.get(r), date);
    }
  }

  private static void set(Cell cell, Written written, CellStyle date) {
    if (written.text() != null) {
      cell.setCellValue(written.text());
    } else if (written.stored() instanceof Double number) {
      cell.setCellValue(number);
    } else {
      cell.setCellValue((LocalDate) written.stored());
      cell.setCellStyle(date);
    }
  }

  private Outcome judge(
      List<Written> column, SheetReport report, List<Sourced> records, String name) {
    Map<Integer, Visit> visits = new HashMap<>();
    records.forEach(row -> visits.put(row.origin().row(), (Visit) row));
    Map<Integer, Finding> faults = new HashMap<>();
    for (Finding finding : report.findings()) {
      if (finding.rule().equals(refusal) && finding.severity() != Severity.NOTICE) {
        faults.put(finding.origin().row(), finding);
      }
    }
    int refused = 0;
    for (int i = 0; i < column.size(); i++) {
      Written cell = column.get(i);
      Visit visit = visits.get(i + 2);
      Object found = visit == null ? null : value.apply(visit);
      Object expected = cell.isDecidable() ? cell.meant() : null;
      boolean isRefused = faults.containsKey(i + 2);
      if (!Objects.equals(expected, found) || isRefused == cell.isDecidable()) {
        throw new AssertionError(
            "%s, cell %s of %s: expected %s, found %s %s"
                .formatted(name, i + 1, texts(column), expected, found, faults.get(i + 2)));
      }
      refused += isRefused ? 1 : 0;
    }
    return new Outcome(column.size() - refused, refused);
  }

  private static List<Object> texts(List<Written> column) {
    List<Object> texts = new ArrayList<>();
    column.forEach(cell -> texts.add(cell.text() == null ? cell.stored() : cell.text()));
    return texts;
  }
}
