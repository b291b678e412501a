package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Shares of a year are over its own days; leap years by the Gregorian calendar (ISO 8601). */
class CalendarYearTest {

  private static int day(int year, int month, int day) {
    return (int) LocalDate.of(year, month, day).toEpochDay();
  }

  @Test
  void aLeapYearHas366Days() {
    assertEquals(365, new CalendarYear(2023).days());
    assertEquals(366, new CalendarYear(2024).days());
    assertEquals(365, new CalendarYear(2100).days());
  }

  @Test
  void theShareIsOverTheYearsOwnDays() {
    Stretches firstTenDays = Rows.days(day(2024, 1, 1), day(2024, 1, 11));
    assertEquals(10 / 366.0, new CalendarYear(2024).share(firstTenDays), 1e-15);
    assertEquals(0, new CalendarYear(2023).share(firstTenDays));
    Stretches both = Rows.days(day(2023, 12, 22), day(2024, 1, 11));
    assertEquals(10 / 365.0, new CalendarYear(2023).share(both), 1e-15);
  }

  @Test
  void halfDaysAndGapsCount() {
    int newYear = 2 * day(2023, 1, 1);
    Stretches time =
        Stretches.of(
            List.of(new Stretch(newYear, newYear + 1), new Stretch(newYear + 9, newYear + 20)));
    assertEquals(6 / 365.0, new CalendarYear(2023).share(time), 1e-15);
  }

  @Test
  void aWholeYearIsOne() {
    assertEquals(1, new CalendarYear(2024).share(Rows.days(day(2020, 1, 1), day(2030, 1, 1))));
  }

  @Test
  void theShareAfterEntryRunsFromThatDayToTheEndOfTheYear() {
    CalendarYear year = new CalendarYear(2023);
    assertEquals(31 / 365.0, year.shareAfter(2 * day(2023, 12, 1)), 1e-15);
    assertEquals(1, year.shareAfter(2 * day(2021, 12, 1)));
    assertEquals(0, year.shareAfter(2 * day(2024, 1, 1)));
  }
}
