package pondtally.reports.workbook;

import java.util.Locale;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.WorkbookUtil;
import pondtally.reports.text.Messages;

/**
 * Text that others wrote, made harmless for a spreadsheet: it never becomes a formula, never breaks
 * the file, and what had to be changed can be seen.
 */
public final class SafeText {

  /** What a cell of the Office Open XML format holds at most. */
  public static final int CELL_LIMIT = 32_767;

  private static final String SHORTENED =
      Messages.of("workbook.SafeText.shortened-the-whole-text-is-in");
  private static final int SHEET_NAME_LIMIT = 31;

  private SafeText() {}

  /** Whether a spreadsheet program might take the text for a formula when the cell is edited. */
  public static boolean looksLikeFormula(String text) {
    return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0;
  }

  /** Puts text into a cell as text, marked as such where it looks like a formula. */
  public static void put(Cell cell, String text, Styles styles, Format format) {
    cell.setCellValue(encoded(text));
    cell.setCellStyle(styles.text(format, looksLikeFormula(text)));
  }

  /**
   * The text as a cell of the format holds it: at most 32,767 characters, control characters and
   * broken surrogates written out, and no sequence that a reader would decode into another
   * character (ECMA-376 part 1, 22.9.2.19, ST_Xstring).
   */
  static String encoded(String text) {
    String visible = visible(text);
    StringBuilder out = new StringBuilder(visible.length());
    int lastFit = 0;
    for (int i = 0; i < visible.length(); i++) {
      if (out.length() <= CELL_LIMIT - SHORTENED.length() && !isLowSurrogate(visible, i)) {
        lastFit = out.length();
      }
      char c = visible.charAt(i);
      if (c == '\r') {
        out.append("_x000D_");
      } else if (c == '_' && startsEscape(visible, i)) {
        out.append("_x005F_");
      } else {
        out.append(c);
      }
    }
    return out.length() <= CELL_LIMIT ? out.toString() : out.substring(0, lastFit) + SHORTENED;
  }

  /** A name that a sheet may have and that is not in {@code taken} yet; it is added there. */
  public static String sheetName(String wanted, Set<String> taken) {
    String safe = WorkbookUtil.createSafeSheetName(visible(wanted).replace('\n', ' '), '-').trim();
    // "History" is a name that spreadsheet programs keep for themselves.
    safe = safe.isEmpty() || safe.equalsIgnoreCase("history") ? safe + "-" : safe;
    String name = safe;
    for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
      String tail = " " + i;
      name = cut(safe, SHEET_NAME_LIMIT - tail.length()) + tail;
    }
    return name;
  }

  private static String cut(String text, int length) {
    int end = Math.min(length, text.length());
    if (end > 0 && end < text.length() && Character.isHighSurrogate(text.charAt(end - 1))) {
      end--;
    }
    return text.substring(0, end);
  }

  /**
   * The text with what XML cannot hold written out: control characters, halves of surrogate pairs
   * and non-characters.
   */
  public static String visible(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      int c = text.codePointAt(i);
      if (Character.isSupplementaryCodePoint(c)) {
        out.appendCodePoint(c);
        i++;
      } else if (isUnprintable(c)) {
        out.append(String.format(Locale.ROOT, "\\u%04x", c));
      } else {
        out.append((char) c);
      }
    }
    return out.toString();
  }

  private static boolean isLowSurrogate(String text, int at) {
    return Character.isLowSurrogate(text.charAt(at));
  }

  private static boolean isUnprintable(int c) {
    boolean control = c < 0x20 && c != '\t' && c != '\n' && c != '\r';
    return control || (c >= 0xD800 && c <= 0xDFFF) || c == 0xFFFE || c == 0xFFFF;
  }

  private static boolean startsEscape(String text, int at) {
    return text.regionMatches(true, at, "_x", 0, 2)
        && at + 6 < text.length()
        && text.charAt(at + 6) == '_'
        && text.substring(at + 2, at + 6).chars().allMatch(c -> Character.digit(c, 16) >= 0);
  }
}
