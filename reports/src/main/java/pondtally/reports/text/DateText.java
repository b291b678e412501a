package pondtally.reports.text;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.format.TextStyle;
import java.util.Map;

/** Dates as readers see them, in the language of the reports whatever the machine's. */
public final class DateText {

  private DateText() {}

  /** {@code March 12, 2025}, held on one line. */
  public static String readable(LocalDate date) {
    String month = date.getMonth().getDisplayName(TextStyle.FULL, Messages.reports().locale());
    return Messages.of(
        "date.readable",
        Map.of("month", month, "day", date.getDayOfMonth(), "year", date.getYear()));
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
