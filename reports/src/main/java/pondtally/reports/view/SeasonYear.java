package pondtally.reports.view;

import java.time.LocalDate;

/** What a year ahead is called: the calendar year where it is one, else its first and last day. */
public final class SeasonYear {

  private SeasonYear() {}

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
