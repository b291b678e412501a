package pondtally.analysis;

import java.io.Serializable;
import java.time.LocalDate;
import java.time.MonthDay;

/**
 * Years that begin on a fixed day of the calendar; each is named by the calendar year in which it
 * ends.
 */
public final class FiscalYears implements Serializable {

  private static final long serialVersionUID = 1;

  private final MonthDay start;

  private FiscalYears(MonthDay start) {
    this.start = start;
  }

  /** Years that begin on the day of the year that {@code day} is (days since 1970-01-01). */
  public static FiscalYears startingLike(int day) {
    return new FiscalYears(MonthDay.from(LocalDate.ofEpochDay(day)));
  }

  /** The year that {@code day} (days since 1970-01-01) belongs to. */
  public int of(int day) {
    LocalDate date = LocalDate.ofEpochDay(day);
    boolean calendar = start.equals(MonthDay.of(1, 1));
    boolean begun = !date.isBefore(start.atYear(date.getYear()));
    return date.getYear() + (calendar || !begun ? 0 : 1);
  }

  /** First day of a year, days since 1970-01-01. */
  public int firstDay(int year) {
    boolean calendar = start.equals(MonthDay.of(1, 1));
    return (int) start.atYear(calendar ? year : year - 1).toEpochDay();
  }
}
