package pondtally.history;

import java.io.Serializable;
import java.time.LocalDate;

/**
 * A calendar year as a stretch of time. Shares of a year are over its own 365 or 366 days. Common
 * practice, no source.
 *
 * @param year for example 2024
 */
public record CalendarYear(int year) implements Serializable {

  /** Start of 1 January, half days since 1970-01-01. */
  public int from() {
    return startOf(year);
  }

  /** Start of the next year, half days since 1970-01-01. */
  public int to() {
    return startOf(year + 1);
  }

  private static int startOf(int year) {
    return HalfDays.startOf((int) LocalDate.of(year, 1, 1).toEpochDay());
  }

  /** Days in the year: 365 or 366. */
  public int days() {
    return (to() - from()) / HalfDays.DAY;
  }

  /** Share of the year that {@code time} covers, from 0 to 1. */
  public double share(Stretches time) {
    return (double) time.within(from(), to()).halfDays() / (to() - from());
  }

  /** Share of the year that lies on or after a moment, from 0 to 1. */
  public double shareAfter(int halfDay) {
    int left = to() - Math.min(Math.max(halfDay, from()), to());
    return (double) left / (to() - from());
  }
}
