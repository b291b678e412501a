package pondtally.intake;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with what may stand around it, taken apart.
 *
 * @param figures digits and the marks between them; empty: there is no number
 * @param isNegative whether a minus sign, or brackets as in bookkeeping, stand with it
 * @param before currency sign or unit before the figures; empty: none
 * @param after unit after the figures; empty: none
 * @param mark what the figures say about the decimal mark
 */
record NumberText(String figures, boolean isNegative, String before, String after, Mark mark) {

  /** What the figures of one number say about the decimal mark. */
  enum Mark {
    /** Nothing: there are no marks, or spaces only. */
    NONE,
    /** A decimal point is in use. */
    POINT,
    /** A decimal comma is in use. */
    COMMA,
    /** One comma before three digits: either way. */
    DOUBTFUL_COMMA,
    /** One point before three digits: either way, but as a rule a decimal point. */
    DOUBTFUL_POINT,
    /** No number. */
    BROKEN
  }

  private static final String SPACE = "[ \\u00a0\\u2009\\u202f'’]";
  private static final Pattern WHOLE =
      Pattern.compile(
          "(?<before>[^\\d.,]{0,8}?)(?<figures>\\d{1,3}(?:"
              + SPACE
              + "\\d{3})+(?:[.,]\\d+)?(?![\\d.,])|[\\d.,]*\\d[\\d.,]*)(?<after>.{0,40})",
          Pattern.DOTALL);
  private static final Pattern DIGITS = Pattern.compile("\\d+");
  private static final Pattern ONE_COMMA = Pattern.compile("[1-9]\\d{0,2},\\d{3}");
  private static final Pattern ONE_POINT = Pattern.compile("[1-9]\\d{0,2}\\.\\d{3}");
  private static final Pattern POINTED =
      Pattern.compile(
          "\\d*\\.\\d*|\\d{1,3}(?:,\\d{3})+(?:\\.\\d*)?|\\d{1,3}(?:" + SPACE + "\\d{3})+\\.\\d+");
  private static final Pattern COMMAED =
      Pattern.compile(
          "\\d*,\\d+|\\d{1,3}(?:\\.\\d{3})+,\\d+|\\d{1,3}(?:\\.\\d{3}){2,}|\\d{1,3}(?:"
              + SPACE
              + "\\d{3})+,\\d+");
  private static final Pattern SPACED = Pattern.compile("\\d{1,3}(?:" + SPACE + "\\d{3})+");

  static NumberText of(String text) {
    boolean isBracketed = text.startsWith("(") && text.endsWith(")");
    String inner = isBracketed ? text.substring(1, text.length() - 1) : text;
    Matcher whole = WHOLE.matcher(inner);
    if (!whole.matches()) {
      return new NumberText("", false, "", "", Mark.BROKEN);
    }
    String before = whole.group("before");
    String unsigned = before.replaceFirst("[-−–+]", "");
    boolean isNegative = isBracketed || (!unsigned.equals(before) && !before.contains("+"));
    String figures = whole.group("figures");
    return new NumberText(
        figures, isNegative, unsigned.strip(), whole.group("after").strip(), markOf(figures));
  }

  private static Mark markOf(String figures) {
    if (figures.length() > PlainNumber.MOST_DIGITS) {
      return Mark.BROKEN;
    }
    if (DIGITS.matcher(figures).matches() || SPACED.matcher(figures).matches()) {
      return Mark.NONE;
    }
    if (ONE_COMMA.matcher(figures).matches()) {
      return Mark.DOUBTFUL_COMMA;
    }
    if (ONE_POINT.matcher(figures).matches()) {
      return Mark.DOUBTFUL_POINT;
    }
    if (POINTED.matcher(figures).matches()) {
      return Mark.POINT;
    }
    return COMMAED.matcher(figures).matches() ? Mark.COMMA : Mark.BROKEN;
  }

  /** Whether the figures are more than digits and one point. */
  boolean hasSeparators() {
    for (int i = 0; i < figures.length(); i++) {
      char c = figures.charAt(i);
      if (c != '.' && (c < '0' || c > '9')) {
        return true;
      }
    }
    return mark == Mark.COMMA;
  }

  /** The number, with a decimal point in use; NaN: none. */
  double withPoint() {
    return signed(figures.replaceAll("[^\\d.]", ""));
  }

  /** The number, with a decimal comma in use; NaN: none. */
  double withComma() {
    return signed(figures.replaceAll("[^\\d,]", "").replace(',', '.'));
  }

  private double signed(String plain) {
    double value = plain.isEmpty() ? Double.NaN : PlainNumber.parse(plain);
    return isNegative && value != 0 ? -value : value;
  }
}
