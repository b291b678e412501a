package pondtally.reports.workbook;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import pondtally.reports.view.Line;

/** The sums of a sheet's columns, added up in the order of the lines. */
final class Totals {

  private Totals() {}

  /** A line that holds the sum of each totaled column; other columns are not known. */
  static Line of(TableSheet sheet) {
    Map<String, String> sums = new HashMap<>();
    for (TableColumn column : sheet.columns()) {
      if (column.totaled()) {
        double sum = 0;
        for (Line line : sheet.lines()) {
          sum += value(column, line).orElse(0);
        }
        sums.put(column.column(), Double.toString(sum));
      }
    }
    return Line.of(sums);
  }

  private static OptionalDouble value(TableColumn column, Line line) {
    return column.derived() && column.formula() != null
        ? column.formula().value(line)
        : line.number(column.column());
  }
}
