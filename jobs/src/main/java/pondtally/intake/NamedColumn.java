package pondtally.intake;

import java.io.Serializable;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column that {@code columns.yaml} names, by its heading or by its place.
 *
 * @param heading the heading, or {@code column F} for a place
 * @param place column from 0; -1 where the heading counts
 * @param field the field that it is read as; empty: it is not read
 */
record NamedColumn(String heading, int place, String field) implements Serializable {

  private static final Pattern PLACE =
      Pattern.compile("column ([a-z]{1,2})", Pattern.CASE_INSENSITIVE);

  static NamedColumn of(String heading, String field) {
    Matcher letters = PLACE.matcher(heading.strip());
    int place = letters.matches() ? ColumnLetters.column(letters.group(1)) : -1;
    return new NamedColumn(heading, place, field);
  }

  /** Whether it is the column at {@code column}, headed {@code text}. */
  boolean is(int column, String text) {
    return place < 0 ? key(heading).equals(key(text)) : place == column;
  }

  /** A row that names columns by their places, for a sheet without headings. */
  static RawRow places(int width) {
    RawRow row = new RawRow();
    row.start(0);
    for (int i = 0; i < width; i++) {
      row.add(placeName(i));
    }
    return row;
  }

  static String placeName(int column) {
    return "column " + ColumnLetters.of(column);
  }

  /** Text as it is compared: case and the amount of white space do not count. */
  static String key(String text) {
    return Blank.clean(text).replaceAll("[\\s\\u00a0]+", " ").toLowerCase(Locale.ROOT);
  }
}
