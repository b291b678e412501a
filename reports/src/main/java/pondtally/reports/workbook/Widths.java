package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.List;
import pondtally.reports.view.Line;

/** Column widths and line breaks, in characters. */
public final class Widths {

  private static final int NARROWEST = 10;
  private static final int WIDEST = 32;
  private static final float POINTS_A_LINE = 13;

  /** What the edges of a cell and the indent of a text take. */
  private static final int INDENT = 2;

  /** Lines looked at to fit a column: enough for the look, few enough for the time. */
  private static final int LOOKED_AT = 2_000;

  private Widths() {}

  static int[] of(TableSheet sheet) {
    return sheet.columns().stream().mapToInt(column -> of(column, sheet.lines())).toArray();
  }

  private static int of(TableColumn column, List<Line> lines) {
    if (column.width() > 0) {
      return column.width();
    }
    int width = Math.max(NARROWEST, longestWord(column.heading()) + 3);
    if (!column.format().isText()) {
      return Math.max(width, 12);
    }
    int longest =
        lines.stream()
            .limit(LOOKED_AT)
            .mapToInt(line -> (int) Math.ceil(TextWidth.of(line.text(column.column()))))
            .max()
            .orElse(0);
    return Math.max(width, Math.min(WIDEST, longest + INDENT));
  }

  private static int longestWord(String heading) {
    int longest = 0;
    for (String word : heading.split(" ", -1)) {
      longest = Math.max(longest, word.length());
    }
    return longest;
  }

  /**
   * Height of a row that holds {@code text}, in points. Not every program fits rows to wrapped text
   * by itself.
   */
  public static float height(String text, int width) {
    int lines = 0;
    for (String paragraph : text.replace('\u00a0', ' ').split("\n", -1)) {
      lines += TextWidth.lines(paragraph, width - INDENT);
    }
    return lines * POINTS_A_LINE + 3;
  }

  /** Whether a cell of that width cannot show the text on one line. */
  static boolean isTooLong(String text, int width) {
    return text.indexOf('\n') >= 0 || TextWidth.of(text) > width - INDENT;
  }

  /** Breaks a text at spaces into lines of at most {@code width} characters where words allow. */
  static List<String> wrapped(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
