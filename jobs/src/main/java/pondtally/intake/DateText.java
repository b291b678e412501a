package pondtally.intake;

import java.util.List;
import java.util.Locale;

/**
 * A date in another form than YYYY-MM-DD, taken apart.
 *
 * @param form what it looks like
 * @param dayFirst the day, where the first number is the day of the month, or where the form leaves
 *     no choice; {@link IsoDay#NONE}: no such day
 * @param monthFirst the day, where the first number is the month; equal to {@code dayFirst} where
 *     the form leaves no choice
 */
record DateText(Form form, int dayFirst, int monthFirst) {

  /** What the text of a date looks like. */
  enum Form {
    /** One reading only: year first, month by name, or eight digits. */
    PLAIN,
    /** Three numbers with the year last: the order decides. */
    YEAR_LAST,
    /** A year of two digits. */
    SHORT_YEAR,
    /** Year and month, or a year, without the day. */
    NO_DAY,
    /** The number by which a spreadsheet counts days. */
    SERIAL,
    /** Nothing like a date. */
    NO_DATE
  }

  private static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
  private static final List<String> MONTH_NAMES =
      List.of(
          "january",
          "february",
          "march",
          "april",
          "may",
          "june",
          "july",
          "august",
          "september",
          "october",
          "november",
          "december");

  static DateText of(String text) {
    String date = withoutTime(text);
    String[] parts = split(date);
    if (parts.length == 3) {
      return ofThree(parts);
    }
    return parts.length == 1 ? ofOne(parts[0]) : of(noDay(parts) ? Form.NO_DAY : Form.NO_DATE);
  }

  private static DateText of(Form form) {
    return new DateText(form, IsoDay.NONE, IsoDay.NONE);
  }

  private static DateText plain(int day) {
    return new DateText(Form.PLAIN, day, day);
  }

  /** Leaves a time of day out, with what stands between it and the date. */
  private static String withoutTime(String text) {
    return text.indexOf(':') < 0
        ? text
        : text.replaceFirst(
            "(?i)[T ,]+\\d{1,2}:\\d{2}(:\\d{2}([.,]\\d+)?)?( ?[ap]\\.?m\\.?)?(Z|[+-]\\d{2}:?\\d{2})?$",
            "");
  }

  /** Numbers and words; the parts of a date in figures must be split by one and the same sign. */
  private static String[] split(String date) {
    if (date.length() > 30) {
      return new String[0];
    }
    boolean hasLetters = date.chars().anyMatch(Character::isLetter);
    if (hasLetters) {
      return date.toLowerCase(Locale.ROOT)
          .replaceAll("(\\d)(st|nd|rd|th)\\b", "$1")
          .split("[\\s,./-]+", -1);
    }
    for (String sign : List.of("/", "-", ".")) {
      if (date.contains(sign)) {
        return date.replace(" ", "").split("[" + sign + "]", -1);
      }
    }
    return new String[] {date};
  }

  private static DateText ofThree(String[] parts) {
    int[] numbers = new int[3];
    int words = 0;
    for (int i = 0; i < 3; i++) {
      numbers[i] = number(parts[i]);
      words += numbers[i] < 0 ? 1 : 0;
    }
    if (words > 0) {
      return words == 1 ? withMonthName(parts, numbers) : of(Form.NO_DATE);
    }
    if (parts[0].length() == 4) {
      return plain(IsoDay.of(numbers[0], numbers[1], numbers[2]));
    }
    if (parts[0].length() > 2 || parts[1].length() > 2) {
      return of(Form.NO_DATE);
    }
    return switch (parts[2].length()) {
      case 4 ->
          new DateText(
              Form.YEAR_LAST,
              IsoDay.of(numbers[2], numbers[1], numbers[0]),
              IsoDay.of(numbers[2], numbers[0], numbers[1]));
      case 2 -> of(Form.SHORT_YEAR);
      default -> of(Form.NO_DATE);
    };
  }

  private static DateText withMonthName(String[] parts, int[] numbers) {
    int wordAt = numbers[0] < 0 ? 0 : numbers[1] < 0 ? 1 : 2;
    int month = month(parts[wordAt]);
    if (month == 0 || wordAt == 2) {
      return of(Form.NO_DATE);
    }
    int first = wordAt == 0 ? 1 : 0;
    boolean yearFirst = parts[first].length() == 4;
    String year = parts[yearFirst ? first : 2];
    int day = numbers[yearFirst ? 2 : first];
    if (year.length() != 4) {
      return of(year.length() <= 2 ? Form.SHORT_YEAR : Form.NO_DATE);
    }
    return plain(IsoDay.of(Integer.parseInt(year), month, day));
  }

  private static DateText ofOne(String part) {
    int number = number(part);
    if (number < 0) {
      return of(Form.NO_DATE);
    }
    return switch (part.length()) {
      case 8 -> plain(IsoDay.of(number / 10_000, number / 100 % 100, number % 100));
      case 5 -> of(Form.SERIAL);
      case 4 -> of(Form.NO_DAY);
      default -> of(Form.NO_DATE);
    };
  }

  private static boolean noDay(String[] parts) {
    if (parts.length != 2) {
      return false;
    }
    int year = Math.max(number(parts[0]), number(parts[1]));
    boolean otherIsMonth = month(parts[0]) + month(parts[1]) > 0;
    return year >= 1000 && (otherIsMonth || Math.min(number(parts[0]), number(parts[1])) >= 0);
  }

  private static int month(String word) {
    int full = MONTH_NAMES.indexOf(word);
    if (full >= 0) {
      return full + 1;
    }
    return 1 + MONTHS.indexOf(word.equals("sept") ? "sep" : word);
  }

  /** The number that the digits make; -1 where there are other signs, or more than eight. */
  private static int number(String digits) {
    if (digits.isEmpty() || digits.length() > 8) {
      return -1;
    }
    int number = 0;
    for (int i = 0; i < digits.length(); i++) {
      int digit = digits.charAt(i) - '0';
      if (digit < 0 || digit > 9) {
        return -1;
      }
      number = number * 10 + digit;
    }
    return number;
  }
}
