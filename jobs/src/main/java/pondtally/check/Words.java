package pondtally.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import pondtally.record.Code;
import pondtally.record.Origin;

/** Values and places as they stand in messages. The same in every locale. */
final class Words {

  /** Longer values are cut in messages; the whole cell stands in the issue itself. */
  private static final int LONGEST = 40;

  /** Enough to tell converted lengths apart, and no more than a reader wants. */
  private static final int DECIMALS = 3;

  private Words() {}

  /** ISO 8601. */
  static String date(int day) {
    return LocalDate.ofEpochDay(day).toString();
  }

  /** Rounded to a few decimals, without exponent and without zeros at the end. */
  static String number(double value) {
    if (value == 0) {
      return "0";
    }
    return new BigDecimal(Double.toString(value))
        .setScale(DECIMALS, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** Dollars and cents. */
  static String usd(double value) {
    return String.format(Locale.ROOT, "$%,.2f", value);
  }

  /** In quotation marks, shortened, control characters escaped; for a message with places. */
  static String quote(String value) {
    return Placeholders.guard(quoteAsShown(value));
  }

  /** In quotation marks, shortened, control characters escaped. */
  static String quoteAsShown(String value) {
    return "\"" + visible(value.length() > LONGEST ? cut(value) + "…" : value) + "\"";
  }

  private static String cut(String value) {
    boolean splitsPair = Character.isHighSurrogate(value.charAt(LONGEST - 1));
    return value.substring(0, splitsPair ? LONGEST - 1 : LONGEST);
  }

  /** Control and direction characters as escapes, so that a message stays one line. */
  static String visible(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.chars()
        .forEach(
            c -> {
              if (Character.isISOControl(c) || isFormat(c)) {
                out.append(String.format(Locale.ROOT, "\\u%04x", c));
              } else {
                out.append((char) c);
              }
            });
    return out.toString();
  }

  private static boolean isFormat(int c) {
    int type = Character.getType(c);
    return type == Character.FORMAT
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR;
  }

  /** A row, to be written out once the files' names are known. */
  static String row(Origin origin) {
    return Placeholders.of(origin);
  }

  /** A field's value in our text form; {@code nothing} where it is empty. */
  static String value(String field, Object value) {
    if (value == null) {
      return "nothing";
    }
    return value instanceof String text ? quote(text) : plain(field, value);
  }

  /** A number with all its digits and without exponent. */
  static String inFull(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }

  /** A field's value in our text form, without quotation marks; empty for null. */
  static String plain(String field, Object value) {
    if (value == null) {
      return "";
    }
    if (value instanceof Code code) {
      return code.code();
    }
    if (value instanceof Boolean flag) {
      return flag ? "yes" : "no";
    }
    if (value instanceof Double number) {
      return number(number);
    }
    return value instanceof Integer day && isDate(field) ? date(day) : value.toString();
  }

  private static boolean isDate(String field) {
    return field.endsWith("_on") || field.endsWith("_from") || field.endsWith("_until");
  }

  /** {@code a, b and c}. */
  static String list(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** {@code 1 row}, {@code 12,345 rows}. */
  static String count(long number, String noun) {
    return String.format(Locale.ROOT, "%,d %s%s", number, noun, number == 1 ? "" : "s");
  }
}
