package pondtally.reports.workbook;

import java.util.Locale;
import pondtally.reports.table.Field;

/** How the cells of a column are shown; the value itself is kept at full precision. */
public enum Format {
  /** Short text. */
  TEXT("@"),
  /** Text that wraps. */
  WRAPPED("@"),
  /** A whole number that is a name, as a year or a row number. */
  LABEL("0"),
  /** A number where the text is one, else text. */
  GENERAL("General"),
  /** A count. */
  COUNT("#,##0"),
  /** Dollars, to the dollar. */
  DOLLARS("#,##0"),
  /** One decimal. */
  ONE("#,##0.0"),
  /** Two decimals. */
  TWO("#,##0.00"),
  /** Three decimals, for probabilities of tests: a small one is never printed as none. */
  THREE("[<0.0005]\"< 0.001\";0.000"),
  /** Five decimals, for coordinates. */
  FIVE("0.00000"),
  /** A share as a percentage. */
  SHARE("0.0%"),
  /** A day. */
  DATE("yyyy-mm-dd"),
  /** Yes or no. */
  YES_NO("@");

  private final String pattern;

  Format(String pattern) {
    this.pattern = pattern;
  }

  String pattern() {
    return pattern;
  }

  boolean isText() {
    return this == TEXT || this == WRAPPED || this == YES_NO || this == GENERAL;
  }

  /** What suits a column, by its type, unit and description. */
  static Format of(Field field) {
    return switch (field.type()) {
      case "integer" -> isLabel(field.name()) ? LABEL : COUNT;
      case "number" -> ofNumber(field);
      case "date" -> DATE;
      case "boolean" -> YES_NO;
      default -> isLong(field.name()) ? WRAPPED : TEXT;
    };
  }

  /** Names that others chose and that may be long. */
  private static boolean isLong(String name) {
    return name.equals("statement")
        || name.equals("reason")
        || name.equals("partner")
        || name.equals("file")
        || name.equals("funder");
  }

  private static boolean isLabel(String name) {
    return name.equals("year")
        || name.equals("published")
        || name.equals("row")
        || name.equals("base_year")
        || name.equals("rank");
  }

  private static Format ofNumber(Field field) {
    return switch (field.unit()) {
      case "usd" -> DOLLARS;
      case "days", "hours", "device-years", "property-years", "failures per 100 device-years" ->
          ONE;
      case "degrees" -> FIVE;
      case "" -> ofPureNumber(field);
      default -> TWO;
    };
  }

  private static Format ofPureNumber(Field field) {
    String description = field.description().toLowerCase(Locale.ROOT);
    if (field.name().startsWith("p_") || field.name().endsWith("_p")) {
      return THREE;
    }
    return field.name().startsWith("survival")
            || description.contains("share")
            || description.startsWith("chance")
        ? SHARE
        : TWO;
  }
}
