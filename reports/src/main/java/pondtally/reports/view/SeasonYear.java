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
    String name = name(row);
    return name.contains(Messages.of("common.to"))
        ? Messages.of(
            "view.SeasonYear.from-to",
            Map.of(
                "firstDay",
                DateText.readable(row.text("first_day")),
                "lastDay",
                DateText.readable(row.text("last_day"))))
        : Messages.of("view.SeasonYear.in", Map.of("name", name));
  }

  /** The name of the year of a row of {@code season_forecast}. */
  public static String name(Line row) {
    String first = row.text("first_day");
    String last = row.text("last_day");
    if (first.isEmpty() || last.isEmpty()) {
      return Messages.of("view.SeasonYear.year", Map.of("year", row.text("year")));
    }
    LocalDate from = LocalDate.parse(first);
    boolean calendar = from.getDayOfYear() == 1 && last.equals(from.getYear() + "-12-31");
    return calendar
        ? Integer.toString(from.getYear())
        : Messages.of("view.SeasonYear.to", Map.of("first", first, "last", last));
  }
}
