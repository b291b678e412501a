package pondtally.check;

import java.time.LocalDate;
import java.util.function.Function;
import pondtally.record.Area;
import pondtally.record.Install;
import pondtally.record.MaterialLine;
import pondtally.record.Removal;
import pondtally.record.Request;
import pondtally.record.Sourced;
import pondtally.record.Visit;

/**
 * Rows dated after the data cut do not count. A purchase day is optional: one in the future is a
 * slip and is dropped, so that the line counts on the install day; one between the cut and today is
 * right, and the line waits for a later cut. A request made since the cut is nobody's mistake and
 * stays: only one in the future is taken out.
 */
final class DatesAfterCut {

  private DatesAfterCut() {}

  static void apply(OpenCluster cluster) {
    CheckSettings settings = cluster.settings;
    setAside(cluster.installs, "installed_on", Install::installedOn, settings);
    setAside(cluster.visits, "visited_on", Visit::visitedOn, settings);
    setAside(cluster.areas, "measured_on", Area::measuredOn, settings);
    setAside(cluster.requests, "asked_on", Request::askedOn, uncut(settings));
    dropFuturePurchases(cluster.materials, settings);
    setAside(cluster.materials, "purchased_on", MaterialLine::purchasedOn, settings);
    setAsideYears(cluster.removals, settings);
  }

  static <T extends Sourced> void setAside(
      Rows<T> rows, String field, Function<T, Integer> day, CheckSettings settings) {
    for (T row : rows.list()) {
      Integer date = day.apply(row);
      if (date != null && date > settings.asOf()) {
        String value = Words.date(date);
        String message =
            date > settings.today()
                ? future(value, Words.date(settings.today()))
                : afterCut(value, Words.date(settings.asOf()), value);
        rows.setAside(row, Remark.cell(CheckRule.DATE_AFTER_CUT, field, value, message));
      }
    }
  }

  private static CheckSettings uncut(CheckSettings settings) {
    return new CheckSettings(settings.today(), settings.today());
  }

  private static void dropFuturePurchases(Rows<MaterialLine> rows, CheckSettings settings) {
    for (MaterialLine row : rows.list()) {
      if (row.purchasedOn() != null && row.purchasedOn() > settings.today()) {
        String value = Words.date(row.purchasedOn());
        String message =
            """
                %s is in the future (this check was run on %s). The date was dropped: \
                the line is counted on the day of the install. Correct the date."""
                .formatted(value, Words.date(settings.today()));
        rows.drop(row, Remark.cell(CheckRule.DATE_AFTER_CUT, "purchased_on", value, message));
      }
    }
  }

  private static void setAsideYears(Rows<Removal> rows, CheckSettings settings) {
    int cutYear = year(settings.asOf());
    for (Removal row : rows.list()) {
      if (row.year() > cutYear) {
        String value = String.valueOf(row.year());
        String message =
            row.year() > year(settings.today())
                ? future(value, Words.date(settings.today()))
                : afterCut(value, Words.date(settings.asOf()), "a day of " + value);
        rows.setAside(row, Remark.cell(CheckRule.DATE_AFTER_CUT, "year", value, message));
      }
    }
  }

  private static int year(int day) {
    return LocalDate.ofEpochDay(day).getYear();
  }

  private static String future(String value, String today) {
    return """
        %s is in the future (this check was run on %s). The row was set aside. \
        Correct the date."""
        .formatted(value, today);
  }

  private static String afterCut(String value, String asOf, String needed) {
    return """
        %s is after the data cut of %s, so the row is not counted and was set \
        aside. If the date is wrong, correct it; if it is right, set as_of in \
        program.yaml to %s or later to count the row."""
        .formatted(value, asOf, needed);
  }
}
