package pondtally.intake;

/** Dates of the form YYYY-MM-DD, read without making an object. */
final class IsoDay {

  /** No date. */
  static final int NONE = Integer.MIN_VALUE;

  private static final int[] LENGTH = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  private IsoDay() {}

  /** Days since 1970-01-01; {@link #NONE} where the text is of another form or no real date. */
  static int parse(String text) {
    if (text.length() != 10 || text.charAt(4) != '-' || text.charAt(7) != '-') {
      return NONE;
    }
    int century = pair(text, 0);
    int year = pair(text, 2);
    int month = pair(text, 5);
    int day = pair(text, 8);
    return (century | year | month | day) < 0 ? NONE : of(century * 100 + year, month, day);
  }

  private static int pair(String text, int at) {
    int tens = text.charAt(at) - '0';
    int ones = text.charAt(at + 1) - '0';
    return (tens | 9 - tens | ones | 9 - ones) < 0 ? -1 : tens * 10 + ones;
  }

  /**
   * Days since 1970-01-01 of a date in the Gregorian calendar; {@link #NONE} where there is no such
   * day.
   */
  static int of(int year, int month, int day) {
    if (month < 1 || month > 12 || day < 1 || day > length(year, month)) {
      return NONE;
    }
    // Years that begin in March put the leap day last, so months have a fixed first day.
    int shifted = month > 2 ? year : year - 1;
    int era = Math.floorDiv(shifted, 400);
    int yearOfEra = shifted - era * 400;
    int dayOfYear = (153 * ((month + 9) % 12) + 2) / 5 + day - 1;
    int dayOfEra = yearOfEra * 365 + yearOfEra / 4 - yearOfEra / 100 + dayOfYear;
    return era * 146_097 + dayOfEra - 719_468;
  }

  private static int length(int year, int month) {
    boolean leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
    return month == 2 && leap ? 29 : LENGTH[month - 1];
  }
}
