package pondtally.reports.view;

import java.util.OptionalDouble;
import pondtally.reports.table.Row;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;

/** Cells of a row for sentences: what is not known or withheld is empty, or said in words. */
final class Cells {

  private Cells() {}

  static OptionalDouble number(Row row, String column) {
    return Line.of(row).number(column);
  }

  /** A count, or the words for a missing one. */
  static String count(Row row, String column) {
    return missingOr(row, column, NumberText.count((long) number(row, column).orElse(0)));
  }

  /** A count with its noun, or the words for a missing one. */
  static String count(Row row, String column, String plural) {
    return missingOr(row, column, NumberText.count((long) number(row, column).orElse(0), plural));
  }

  private static String missingOr(Row row, String column, String printed) {
    if (row.text(column).equals(Line.WITHHELD)) {
      return Missing.WITHHELD;
    }
    return number(row, column).isEmpty() ? Missing.NOT_KNOWN : printed;
  }
}
