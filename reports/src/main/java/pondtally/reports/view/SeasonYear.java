package pondtally.reports.view;

import java.time.LocalDate;
import java.util.Map;
import pondtally.reports.text.DateText;
import pondtally.reports.text.Messages;

/** What a year ahead is called: the calendar year where it is one, else its first and last day. */
public final class SeasonYear {

  private SeasonYear() {}

  /** The same within a sentence: {@code in 2026}, {@code from June 9, 2025 to June 8, 2026}. */
  static String when(Line row) {
    return isDated(row) && !isCalendarYear(row)
        ? Messages.of(
            "view.SeasonYear.from-to",
            Map.of(
                "firstDay",
                DateText.readable(row.text("first_day")),
                "lastDay",
                DateText.readable(row.text("last_day"))))
        : Messages.of("view.SeasonYear.in", Map.of("name", name(row)));
  }

  /** The name of the year of a row of {@code season_forecast}. */
  public static String name(Line row) {
    if (!isDated(row)) {
      return Messages.of("view.SeasonYear.year", Map.of("year", row.text("year")));
    }
    return isCalendarYear(row)
        ? row.text("first_day").substring(0, 4)
        : Messages.of(
            "view.SeasonYear.to",
            Map.of(
                "first",
                DateText.readable(row.text("first_day")),
                "last",
                DateText.readable(row.text("last_day"))));
  }

  private static boolean isDated(Line row) {
    return !row.text("first_day").isEmpty() && !row.text("last_day").isEmpty();
  }

  private static boolean isCalendarYear(Line row) {
    LocalDate from = LocalDate.parse(row.text("first_day"));
    return from.getDayOfYear() == 1 && row.text("last_day").equals(from.getYear() + "-12-31");
  }
}
