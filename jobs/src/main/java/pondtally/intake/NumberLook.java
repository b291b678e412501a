package pondtally.intake;

import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.DateUtil;

/** As what a spreadsheet shows the number in a cell, by the cell's format. */
enum NumberLook {
  /** A number. */
  PLAIN,
  /** The day that the number counts, from 1900 or 1904, perhaps with the time of day. */
  DATE,
  /** Hours and minutes: the number is a part of a day, or several days. */
  TIME,
  /** Hundredths. */
  PERCENT;

  private static final int SECONDS_A_DAY = 86_400;

  /** What is shown with hours only and is longer than a year is a day. */
  private static final double LONGEST_TIME = 366;

  private static final Pattern LITERAL =
      Pattern.compile("\"[^\"]*\"|[\\\\_*].|\\[(?!(h+|m+|s+)])[^]]*]");

  /**
   * @param code the format, for example {@code yyyy-mm-dd}; null: none
   */
  static NumberLook of(int format, String code) {
    if (code == null) {
      return PLAIN;
    }
    String marks = LITERAL.matcher(code.toLowerCase(Locale.ROOT)).replaceAll("");
    if (DateUtil.isADateFormat(format, code)) {
      boolean hasDay = marks.indexOf('y') >= 0 || marks.indexOf('d') >= 0;
      return !hasDay && (marks.indexOf('h') >= 0 || marks.indexOf('s') >= 0) ? TIME : DATE;
    }
    return marks.indexOf('%') >= 0 ? PERCENT : PLAIN;
  }

  /** The number as it is shown; null where it is shown as a number. */
  String text(double number, boolean from1904) {
    return switch (this) {
      case PLAIN -> null;
      case DATE -> SerialDay.text(number, from1904);
      case TIME ->
          number >= 0 && number < LONGEST_TIME ? time(number) : SerialDay.text(number, from1904);
      case PERCENT -> PlainText.percent(number);
    };
  }

  private static String time(double days) {
    long seconds = Math.round(days * SECONDS_A_DAY);
    String minutes = String.format(Locale.ROOT, "%d:%02d", seconds / 3600, seconds / 60 % 60);
    return seconds % 60 == 0
        ? minutes
        : minutes + String.format(Locale.ROOT, ":%02d", seconds % 60);
  }
}
