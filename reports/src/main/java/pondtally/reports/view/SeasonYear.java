package pondtally.reports.view;

import java.time.LocalDate;
import pondtally.reports.text.DateText;

/** What a year ahead is called: the calendar year where it is one, else its first and last day. */
public final class SeasonYear {

  private SeasonYear() {}

  /** The same within a sentence: {@code in 2026}, {@code from June 9, 2025 to June 8, 2026}. */
  static String when(Line row) {
    String name = name(row);
    return name.contains(" to ")
        ? "from "
            + DateText.readable(row.text("first_day"))
            + " to "
            + DateText.readable(row.text("last_day"))
        : "in " + name;
  }

  /** The name of the year of a row of {@code season_forecast}. */
  public static String name(Line row) {
    String first = row.text("first_day");
    String last = row.text("last_day");
    if (first.isEmpty() || last.isEmpty()) {
      return "year " + row.text("year");
    }
    LocalDate from = LocalDate.parse(first);
    boolean calendar = from.getDayOfYear() == 1 && last.equals(from.getYear() + "-12-31");
    return calendar ? Integer.toString(from.getYear()) : first + " to " + last;
  }
}
