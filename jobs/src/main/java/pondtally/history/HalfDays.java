package pondtally.history;

/**
 * The clock of histories: a moment is a whole number of half days since 1970-01-01, so that the
 * middle of any two dates falls on it. A date is the start of its day. Common practice, no source.
 */
public final class HalfDays {

  /** A day, half days. */
  public static final int DAY = 2;

  /** A year of 365.25 days, half days. */
  public static final double YEAR = 365.25 * DAY;

  private HalfDays() {}

  /** The start of a day given as days since 1970-01-01. */
  public static int startOf(int day) {
    return day * DAY;
  }

  /** The start of a day given as days since 1970-01-01; null stays null. */
  static Integer startOf(Integer day) {
    return day == null ? null : (Integer) (day * DAY);
  }
}
