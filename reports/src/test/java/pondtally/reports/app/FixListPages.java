package pondtally.reports.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A list of rows to correct in the hands of somebody who corrects it. */
final class FixListPages implements AutoCloseable {

  private static final int NUMBER = 1;
  private static final int KEY = 4;

  private final XSSFWorkbook book;

  /** Row of the list and the row of its headings, by sheet title and row number. */
  private final Map<String, Row[]> rows = new HashMap<>();

  FixListPages(Path file) throws IOException {
    book = new XSSFWorkbook(Files.newInputStream(file));
    book.forEach(this::index);
  }

  private void index(Sheet sheet) {
    String title = "";
    Row headings = null;
    for (Row row : sheet) {
      if (text(row, KEY).startsWith("fix1|")) {
        int number = (int) row.getCell(NUMBER).getNumericCellValue();
        rows.put(title + "#" + number, new Row[] {headings, row});
      } else if (text(row, KEY).equals("Key")) {
        headings = row;
      } else {
        title = text(row, 0);
      }
    }
  }

  private static String text(Row row, int column) {
    Cell cell = row.getCell(column);
    return cell == null ? "" : cell.toString();
  }

  /** What stands under a heading in the line of a row of a file. */
  String text(String file, String sheet, String row, String heading) {
    return cell(file, sheet, row, heading).getStringCellValue();
  }

  /** Types over what stands there. */
  void type(String file, String sheet, String row, String heading, String value) {
    Cell old = cell(file, sheet, row, heading);
    Row line = old.getRow();
    CellStyle style = old.getCellStyle();
    line.removeCell(old);
    Cell typed = line.createCell(old.getColumnIndex());
    typed.setCellStyle(style);
    typed.setCellValue(value);
  }

  private Cell cell(String file, String sheet, String row, String heading) {
    Row[] found = rows.get((sheet.isEmpty() ? file : file + ", sheet " + sheet) + "#" + row);
    if (found == null) {
      throw new AssertionError("not in the list: " + file + " " + sheet + " " + row);
    }
    for (Cell head : found[0]) {
      if (head.getColumnIndex() > KEY && head.getStringCellValue().equals(heading)) {
        return found[1].getCell(head.getColumnIndex());
      }
    }
    throw new AssertionError("no column " + heading + " for " + file + " " + sheet + " " + row);
  }

  void save(Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      book.write(out);
    }
  }

  @Override
  public void close() throws IOException {
    book.close();
  }
}
