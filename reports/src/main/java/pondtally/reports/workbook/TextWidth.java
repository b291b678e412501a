package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How wide a text is in cells, in widths of a digit, which column widths are counted in. Letters
 * are weighed as in sans-serif fonts of the Helvetica kind (character widths of the standard 14
 * fonts, ISO 32000, there 556 a digit); letters of East Asia as a full square.
 */
final class TextWidth {

  private static final double SQUARE = 1.8;

  /** Programs break lines after spaces, hyphens and slashes. */
  private static final Pattern PIECE = Pattern.compile("[^ /-]*[ /-]+|[^ /-]+");

  private TextWidth() {}

  static double of(String text) {
    return text.codePoints().mapToDouble(TextWidth::of).sum();
  }

  private static double of(int c) {
    if (Character.isIdeographic(c) || isSquare(c)) {
      return SQUARE;
    }
    if ("ijl'|".indexOf(c) >= 0) {
      return 0.4;
    }
    if (" ft.,:;/I!()[]\"r-".indexOf(c) >= 0) {
      return 0.6;
    }
    if ("mMwWOQG@%".indexOf(c) >= 0) {
      return c == 'W' || c == '@' || c == '%' ? 1.8 : 1.5;
    }
    return Character.isUpperCase(c) ? 1.25 : 1;
  }

  /** Kana, Hangul, their marks and full-width forms. */
  private static boolean isSquare(int c) {
    return c >= 0x1100 && c <= 0x115F
        || c >= 0x2E80 && c <= 0xA4CF
        || c >= 0xAC00 && c <= 0xD7A3
        || c >= 0xFE30 && c <= 0xFE6F
        || c >= 0xFF00 && c <= 0xFF60;
  }

  /** Lines that a paragraph takes in so much room; a word longer than that is broken inside. */
  static int lines(String paragraph, double room) {
    int lines = 1;
    double used = 0;
    for (String piece : pieces(paragraph)) {
      double letters = of(piece.stripTrailing());
      if (used > 0 && used + letters > room) {
        lines++;
        used = 0;
      }
      int inside = Math.max(0, (int) Math.ceil(letters / room) - 1);
      lines += inside;
      used += of(piece) - inside * room;
    }
    return lines;
  }

  private static List<String> pieces(String paragraph) {
    List<String> pieces = new ArrayList<>();
    Matcher piece = PIECE.matcher(paragraph);
    while (piece.find()) {
      pieces.add(piece.group());
    }
    return pieces;
  }
}
