package pondtally.intake;

import java.util.Locale;

/** Order of the parts of a date written in figures. */
enum DateOrder {
  DAY_FIRST("day/month/year"),
  MONTH_FIRST("month/day/year");

  private final String words;

  DateOrder(String words) {
    this.words = words;
  }

  /** For messages. */
  String words() {
    return words;
  }

  /** The order that the comment of a heading states, as {@code DD/MM/YYYY} does; null: none. */
  static DateOrder stated(String comment) {
    String letters = comment.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
    return switch (letters) {
      case "ddmmyyyy", "dmyyyy", "dmy", "daymonthyear" -> DAY_FIRST;
      case "mmddyyyy", "mdyyyy", "mdy", "monthdayyear" -> MONTH_FIRST;
      default -> null;
    };
  }
}
