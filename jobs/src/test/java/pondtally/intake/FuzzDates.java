package pondtally.intake;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Fuzz target: dates, against java.time. */
public final class FuzzDates {

  private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})");
  private static final Pattern YEAR_LAST =
      Pattern.compile("(\\d{1,2})([/.-])(\\d{1,2})\\2(\\d{4})");

  private FuzzDates() {}

  public static void fuzzerTestOneInput(byte[] data) {
    String text = Blank.clean(new String(data, StandardCharsets.UTF_8));
    Matcher iso = ISO.matcher(text);
    int expected = iso.matches() ? day(iso.group(1), iso.group(2), iso.group(3)) : IsoDay.NONE;
    require(IsoDay.parse(text) == expected, text);
    DateText date = DateText.of(text);
    Matcher last = YEAR_LAST.matcher(text);
    if (last.matches()) {
      require(date.form() == DateText.Form.YEAR_LAST, text);
      require(date.dayFirst() == day(last.group(4), last.group(3), last.group(1)), text);
      require(date.monthFirst() == day(last.group(4), last.group(1), last.group(3)), text);
    } else if (date.form() != DateText.Form.YEAR_LAST) {
      require(date.dayFirst() == date.monthFirst(), text);
    }
  }

  private static int day(String year, String month, String day) {
    try {
      return (int)
          LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day))
              .toEpochDay();
    } catch (DateTimeException e) {
      return IsoDay.NONE;
    }
  }

  private static void require(boolean holds, String text) {
    if (!holds) {
      throw new AssertionError(text);
    }
  }
}
