package pondtally.table;

import java.math.BigDecimal;
import java.time.LocalDate;

/** Cells as text: ISO dates, decimal point, full double precision, empty for "not known". */
final class CellText {

  private CellText() {}

  static String of(ColumnType type, Object cell) {
    if (cell == null) {
      return "";
    }
    return switch (type) {
      case DATE -> LocalDate.ofEpochDay((Integer) cell).toString();
      case NUMBER -> number(((Number) cell).doubleValue());
      default -> cell.toString();
    };
  }

  /**
   * The shortest plain decimal that Java reads back as the same double; no exponent, no trailing
   * zeros.
   */
  static String number(double value) {
    if (value == 0) {
      return "0";
    }
    String text = Double.toString(value);
    if (text.indexOf('E') >= 0) {
      return new BigDecimal(text).stripTrailingZeros().toPlainString();
    }
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  static void check(String table, Column column, Object cell) {
    if (cell == null) {
      return;
    }
    boolean fits =
        switch (column.type()) {
          case STRING -> cell instanceof String;
          case INTEGER -> cell instanceof Integer || cell instanceof Long;
          case NUMBER -> cell instanceof Double number && Double.isFinite(number);
          case DATE -> cell instanceof Integer;
          case BOOLEAN -> cell instanceof Boolean;
        };
    if (!fits) {
      throw new IllegalArgumentException(
          "%s.%s: %s %s is no %s"
              .formatted(
                  table, column.name(), cell.getClass().getSimpleName(), cell, column.type()));
    }
  }
}
