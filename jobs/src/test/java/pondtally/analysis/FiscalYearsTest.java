package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class FiscalYearsTest {

  private static int day(String date) {
    return (int) LocalDate.parse(date).toEpochDay();
  }

  @Test
  void calendarYearsAreNamedByThemselves() {
    FiscalYears years = FiscalYears.startingLike(day("2025-01-01"));
    assertEquals(2024, years.of(day("2024-12-31")));
    assertEquals(2025, years.of(day("2025-01-01")));
    assertEquals(day("2025-01-01"), years.firstDay(2025));
  }

  @Test
  void otherYearsAreNamedByTheYearInWhichTheyEnd() {
    FiscalYears years = FiscalYears.startingLike(day("2024-07-01"));
    assertEquals(2024, years.of(day("2024-06-30")));
    assertEquals(2025, years.of(day("2024-07-01")));
    assertEquals(2025, years.of(day("2025-06-30")));
    assertEquals(day("2024-07-01"), years.firstDay(2025));
  }

  @Test
  void eachDayBelongsToExactlyOneYear() {
    for (String start : new String[] {"2024-01-01", "2024-02-29", "2023-07-01", "2023-10-01"}) {
      FiscalYears years = FiscalYears.startingLike(day(start));
      for (int d = day("2019-12-01"); d < day("2026-02-01"); d++) {
        int year = years.of(d);
        assertEquals(
            true, years.firstDay(year) <= d && d < years.firstDay(year + 1), start + " " + d);
      }
    }
  }
}
