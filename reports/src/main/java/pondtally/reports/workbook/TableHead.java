package pondtally.reports.workbook;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.IgnoredErrorType;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableStyleInfo;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;

/** Writes what stands above the lines of a table sheet, and makes it a table. */
final class TableHead {

  private static final float POINTS_PER_LINE = 13;

  private final XSSFSheet sheet;
  private final Place place;
  private final Styles styles;
  private final RefsAt refs;

  TableHead(XSSFSheet sheet, Place place, Styles styles, RefsAt refs) {
    this.sheet = sheet;
    this.place = place;
    this.styles = styles;
    this.refs = refs;
  }

  void write() {
    put(0, place.sheet().title()).setCellStyle(styles.title());
    int row = 1;
    for (String note : place.noteLines()) {
      put(row++, note).setCellStyle(styles.note());
    }
    if (place.sheet().lines().isEmpty()) {
      put(row, Messages.of("workbook.TableHead.the-records-hold-nothing-of-this"))
          .setCellStyle(styles.prose());
      sheet.setColumnWidth(0, 60 * 256);
      return;
    }
    if (place.sheet().hasTotals()) {
      totals();
    }
    header();
    table();
    sheet.createFreezePane(place.sheet().keyColumns(), place.firstRow());
    sheet.setRepeatingRows(new CellRangeAddress(place.headerRow(), place.headerRow(), -1, -1));
  }

  private Cell put(int row, String text) {
    Cell cell = sheet.createRow(row).createCell(0);
    cell.setCellValue(SafeText.encoded(text));
    return cell;
  }

  private void header() {
    XSSFRow row = sheet.createRow(place.headerRow());
    int lines = 1;
    List<TableColumn> columns = place.sheet().columns();
    for (int i = 0; i < columns.size(); i++) {
      int width = place.widths()[i];
      sheet.setColumnWidth(i, width * 256);
      Cell cell = row.createCell(i);
      cell.setCellValue(columns.get(i).heading());
      cell.setCellStyle(styles.header(columns.get(i).format()));
      // Two characters are kept for the filter's button.
      lines = Math.max(lines, Widths.wrapped(columns.get(i).heading(), width - 2).size());
    }
    row.setHeightInPoints(lines * POINTS_PER_LINE + 3);
  }

  private void table() {
    int last = place.sheet().columns().size() - 1;
    CellReference topLeft = new CellReference(place.headerRow(), 0);
    CellReference bottomRight = new CellReference(place.lastRow(), last);
    AreaReference area = new AreaReference(topLeft, bottomRight, SpreadsheetVersion.EXCEL2007);
    XSSFTable table = sheet.createTable(area);
    String name = tableName(place.sheet().name());
    table.setName(name);
    table.setDisplayName(name);
    CTTable ct = table.getCTTable();
    ct.addNewAutoFilter().setRef(area.formatAsString());
    CTTableStyleInfo look =
        ct.isSetTableStyleInfo() ? ct.getTableStyleInfo() : ct.addNewTableStyleInfo();
    look.setName("TableStyleLight1");
    look.setShowRowStripes(true);
    look.setShowColumnStripes(false);
    sheet.addIgnoredErrors(
        new CellRangeAddress(place.firstRow(), place.lastRow(), 0, last),
        IgnoredErrorType.NUMBER_STORED_AS_TEXT);
  }

  static String tableName(String sheetName) {
    return "T_" + sheetName.replaceAll("[^\\p{L}\\p{N}]", "_").toLowerCase(Locale.ROOT);
  }

  private void totals() {
    XSSFRow row = sheet.createRow(place.totalsRow());
    Line sums = Totals.of(place.sheet());
    List<TableColumn> columns = place.sheet().columns();
    for (int i = 0; i < columns.size(); i++) {
      Cell cell = row.createCell(i);
      cell.setCellStyle(styles.total(i > 0, columns.get(i).format()));
      if (i == 0) {
        cell.setCellValue(Messages.of("workbook.TableHead.total-of-the-rows-shown"));
      } else {
        total(cell, columns.get(i), sums);
      }
    }
  }

  private void total(Cell cell, TableColumn column, Line sums) {
    if (column.totaled()) {
      String range = place.range(column.column());
      cell.setCellFormula(
          "IF(SUBTOTAL(102,%s)=0,\"%s\",SUBTOTAL(109,%s))"
              .formatted(range, Formula.NOT_KNOWN, range));
      OptionalDouble sum = sums.number(column.column());
      if (sum.isPresent()) {
        cell.setCellValue(sum.getAsDouble());
      } else {
        cell.setCellValue(Formula.NOT_KNOWN);
        cell.setCellStyle(styles.totalUnknown());
      }
    } else if (column.formula() != null) {
      OptionalDouble value = column.formula().value(sums);
      if (value.isPresent()) {
        cell.setCellFormula(column.formula().text(refs.at(place.totalsRow())));
        cell.setCellValue(value.getAsDouble());
      }
    }
  }
}
