package pondtally.reports.text;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.format.TextStyle;
import java.util.Locale;

/** Dates as readers see them, in English whatever the machine's language. */
public final class DateText {

  private DateText() {}

  /** {@code March 12, 2025}, held on one line. */
  public static String readable(LocalDate date) {
    String month = date.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    return month + NumberText.NBSP + date.getDayOfMonth() + "," + NumberText.NBSP + date.getYear();
  }

  /** The same for an ISO date in text; {@code not known} when it is empty or no date. */
  public static String readable(String isoDate) {
    try {
      return readable(LocalDate.parse(isoDate));
    } catch (DateTimeParseException e) {
      return Missing.NOT_KNOWN;
    }
  }

  /** {@code 2025-03-12}. */
  public static String iso(LocalDate date) {
    return date.toString();
  }
}
