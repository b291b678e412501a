package pondtally.intake;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as text, without exponent and without zeros at the end. */
final class PlainText {

  private PlainText() {}

  /** The number in full. */
  static String of(double value) {
    return of(new BigDecimal(Double.toString(value)));
  }

  /** The number to six digits, for messages. */
  static String rounded(double value) {
    return of(new BigDecimal(value).round(new MathContext(6)));
  }

  /** The number in hundredths, {@code 50%}; null: it is none. */
  static String percent(double value) {
    return Double.isFinite(value)
        ? of(new BigDecimal(Double.toString(value)).movePointRight(2)) + "%"
        : null;
  }

  /** The number that a workbook stores as {@code text}; the text itself where it is none. */
  static String ofStored(String text) {
    if (text.length() > 400) {
      return text;
    }
    double value = PlainNumber.parse(text.isEmpty() ? "-" : text);
    if (!Double.isNaN(value) && text.indexOf('.') < 0) {
      return text;
    }
    try {
      BigDecimal exact = new BigDecimal(text);
      return Math.abs((long) exact.precision() - exact.scale()) > 400 ? text : of(exact);
    } catch (NumberFormatException e) {
      return text;
    }
  }

  private static String of(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
