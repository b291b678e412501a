package pondtally.intake;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Working time as a clock shows it: {@code 1:30} is an hour and a half. */
final class HoursAndMinutes {

  private static final Pattern CLOCK =
      Pattern.compile("(\\d{1,4}):([0-5]\\d)(?::([0-5]\\d))?(?: ?h| hours?)?");

  private HoursAndMinutes() {}

  /** Hours; NaN where the text is of another form. */
  static double of(String text) {
    if (text.indexOf(':') < 0) {
      return Double.NaN;
    }
    Matcher clock = CLOCK.matcher(text);
    if (!clock.matches()) {
      return Double.NaN;
    }
    int seconds = clock.group(3) == null ? 0 : Integer.parseInt(clock.group(3));
    int minutes = Integer.parseInt(clock.group(1)) * 60 + Integer.parseInt(clock.group(2));
    return (minutes * 60 + seconds) / 3600.0;
  }
}
