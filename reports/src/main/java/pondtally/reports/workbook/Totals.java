package pondtally.reports.workbook;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import pondtally.reports.view.Line;

/** The sums of a sheet's columns, added up in the order of the lines. */
final class Totals {

  private Totals() {}

  /** A line that holds the sum of each totaled column; a column without any figure is not known. */
  static Line of(TableSheet sheet) {
    Map<String, String> sums = new HashMap<>();
    for (TableColumn column : sheet.columns()) {
      if (column.totaled()) {
        double[] known =
            sheet.lines().stream()
                .map(line -> value(column, line))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        if (known.length > 0) {
          sums.put(column.column(), Double.toString(sum(known)));
        }
      }
    }
    return Line.of(sums);
  }

  private static double sum(double[] numbers) {
    double sum = 0;
    for (double number : numbers) {
      sum += number;
    }
    return sum;
  }

  private static OptionalDouble value(TableColumn column, Line line) {
    return column.derived() && column.formula() != null
        ? column.formula().value(line)
        : line.number(column.column());
  }
}
