package pondtally.intake;

import java.time.LocalDate;
import java.util.Locale;

/**
 * The numbers by which spreadsheets count days: from 1900 (where number 60 is a 29 February that
 * never was) or from 1904 (ISO/IEC 29500-1, 18.17.4.1).
 */
final class SerialDay {

  /** Number of 1970-01-01 when counted from 1900. */
  static final int OF_1970 = 25_569;

  private static final int BETWEEN_SYSTEMS = 1462;
  private static final int LAST = 2_958_465;
  private static final int LEAP_DAY_THAT_NEVER_WAS = 60;

  private SerialDay() {}

  /** The day as YYYY-MM-DD, with the time of day if there is one; null: no day has the number. */
  static String text(double serial, boolean from1904) {
    double from1900 = from1904 ? serial + BETWEEN_SYSTEMS : serial;
    if (!(from1900 >= 1 && from1900 < LAST + 1)) {
      return null;
    }
    long minutes = Math.round(from1900 * 1440);
    int number = (int) (minutes / 1440);
    int day = number - OF_1970 + (number <= LEAP_DAY_THAT_NEVER_WAS ? 1 : 0);
    int minute = (int) (minutes % 1440);
    String date = LocalDate.ofEpochDay(day).toString();
    return minute == 0
        ? date
        : String.format(Locale.ROOT, "%s %02d:%02d", date, minute / 60, minute % 60);
  }
}
