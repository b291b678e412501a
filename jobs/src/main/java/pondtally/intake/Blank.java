package pondtally.intake;

import java.util.Locale;
import java.util.Set;

/** Cells that hold nothing: by being empty, by saying so, or by an error of the spreadsheet. */
final class Blank {

  private static final Set<String> SAYS_NOTHING =
      Set.of(
          "n/a",
          "n.a.",
          "na",
          "-",
          "--",
          "---",
          "–",
          "—",
          "?",
          "??",
          ".",
          "none",
          "nil",
          "null",
          "unknown",
          "tbd",
          "not recorded",
          "not known",
          "no data");

  private static final Set<String> ERRORS =
      Set.of(
          "#N/A",
          "#REF!",
          "#VALUE!",
          "#DIV/0!",
          "#NAME?",
          "#NUM!",
          "#NULL!",
          "#SPILL!",
          "#CALC!",
          "#GETTING_DATA");

  private Blank() {}

  /** The cell without the white space around it, no-break spaces and byte-order marks included. */
  static String clean(String cell) {
    int end = cell.length();
    if (end == 0 || (isInk(cell.charAt(0)) && isInk(cell.charAt(end - 1)))) {
      return cell;
    }
    int start = 0;
    while (start < end && !isInk(cell.charAt(start))) {
      start++;
    }
    while (end > start && !isInk(cell.charAt(end - 1))) {
      end--;
    }
    return cell.substring(start, end);
  }

  private static boolean isInk(char c) {
    return c < 0x7f
        ? c > ' '
        : c > 0xa0 && !Character.isWhitespace(c) && !Character.isSpaceChar(c) && !isMark(c);
  }

  private static boolean isMark(char c) {
    return c == '\ufeff' || c == '\u200b' || c == '\u200e' || c == '\u200f';
  }

  /** Whether a cleaned cell says that nothing is known. */
  static boolean saysNothing(String cell) {
    return cell.length() <= 12 && SAYS_NOTHING.contains(cell.toLowerCase(Locale.ROOT));
  }

  /** Whether a cleaned cell shows an error, or number signs for want of room. */
  static boolean isError(String cell) {
    return cell.charAt(0) == '#' && (ERRORS.contains(cell) || cell.matches("#{3,}"));
  }
}
