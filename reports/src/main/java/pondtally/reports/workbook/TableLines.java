package pondtally.reports.workbook;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import pondtally.reports.view.Line;

/** Writes the lines of a table sheet, one after the other, so that long tables can be streamed. */
final class TableLines {

  /** The spreadsheet calendar starts in 1900 and has a wrong leap day in its first year. */
  private static final int FIRST_SAFE_YEAR = 1901;

  /** What the file format allows. */
  private static final float HIGHEST_ROW_POINTS = 409;

  private final Place place;
  private final Styles styles;
  private final RefsAt refs;

  TableLines(Place place, Styles styles, RefsAt refs) {
    this.place = place;
    this.styles = styles;
    this.refs = refs;
  }

  void write(Sheet sheet) {
    int at = place.firstRow();
    List<TableColumn> columns = place.sheet().columns();
    for (Line line : place.sheet().lines()) {
      Row row = sheet.createRow(at);
      Refs here = refs.at(at);
      for (int i = 0; i < columns.size(); i++) {
        write(row.createCell(i), columns.get(i), line, here);
      }
      height(row, line);
      at++;
    }
  }

  private void height(Row row, Line line) {
    float height = 0;
    for (int i = 0; i < place.widths().length; i++) {
      TableColumn column = place.sheet().columns().get(i);
      String text = column.formula() == null ? line.text(column.column()) : "";
      if (format(column, text, place.widths()[i]) == Format.WRAPPED) {
        height = Math.max(height, Widths.height(text, place.widths()[i]));
      }
    }
    if (height > row.getSheet().getDefaultRowHeightInPoints()) {
      row.setHeightInPoints(Math.min(height, HIGHEST_ROW_POINTS));
    }
  }

  /** A text that its column cannot show on one line goes on in a second, in print as well. */
  private static Format format(TableColumn column, String text, int width) {
    boolean breaks = column.format() == Format.TEXT && Widths.isTooLong(text, width);
    return breaks ? Format.WRAPPED : column.format();
  }

  private void write(Cell cell, TableColumn column, Line line, Refs here) {
    if (column.formula() != null) {
      live(cell, column, line, here);
      return;
    }
    String own = line.text(column.column());
    if (own.isEmpty()) {
      unknown(cell, column, Formula.NOT_KNOWN);
    } else if (own.equals(Line.WITHHELD)) {
      unknown(cell, column, own);
    } else {
      int width = place.widths()[cell.getColumnIndex()];
      constant(cell, format(column, own, width), own);
    }
  }

  /**
   * A formula with the table's figure stored as its value. Where the table itself has no figure, or
   * the cells it would be computed from are not there, what the table says stands as it is.
   */
  private void live(Cell cell, TableColumn column, Line line, Refs here) {
    OptionalDouble computed = column.formula().value(line);
    OptionalDouble own = column.derived() ? computed : line.number(column.column());
    if (own.isEmpty() && !column.derived()) {
      boolean withheld = line.text(column.column()).equals(Line.WITHHELD);
      unknown(cell, column, withheld ? Line.WITHHELD : Formula.NOT_KNOWN);
      return;
    }
    if (computed.isPresent() || column.derived()) {
      cell.setCellFormula(column.formula().text(here));
    }
    if (own.isPresent()) {
      cell.setCellValue(own.getAsDouble());
      cell.setCellStyle(styles.number(column.format()));
    } else {
      unknown(cell, column, Formula.NOT_KNOWN);
    }
  }

  private void constant(Cell cell, Format format, String own) {
    switch (format) {
      case TEXT, WRAPPED -> SafeText.put(cell, own, styles, format);
      case YES_NO -> SafeText.put(cell, own.equals("true") ? "yes" : "no", styles, format);
      case DATE -> date(cell, own);
      default -> number(cell, format, own);
    }
  }

  private void number(Cell cell, Format format, String own) {
    OptionalDouble number = Line.of(java.util.Map.of("", own)).number("");
    if (number.isPresent()) {
      cell.setCellValue(number.getAsDouble());
      cell.setCellStyle(styles.number(format));
    } else {
      SafeText.put(cell, own, styles, Format.TEXT);
    }
  }

  private void date(Cell cell, String own) {
    LocalDate day = LocalDate.parse(own);
    if (day.getYear() < FIRST_SAFE_YEAR) {
      SafeText.put(cell, own, styles, Format.TEXT);
    } else {
      cell.setCellValue(day);
      cell.setCellStyle(styles.number(Format.DATE));
    }
  }

  private void unknown(Cell cell, TableColumn column, String sign) {
    cell.setCellValue(sign);
    cell.setCellStyle(styles.unknown(column.format()));
  }
}
