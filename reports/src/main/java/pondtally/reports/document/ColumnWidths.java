package pondtally.reports.document;

import pondtally.reports.view.GrantTable;

/** Widths of the columns of a table, in twentieths of a point, that fill the page's text width. */
final class ColumnWidths {

  /** 6.5 inches. */
  static final int TEXT_WIDTH = 9_360;

  private static final int WIDEST_LETTERS = 34;
  private static final int LEAST_LETTERS = 7;
  private static final int LETTER = 105;
  private static final int PADDING = 180;

  private ColumnWidths() {}

  /**
   * Room for the longest word that may not be broken first; what is left is shared by how much text
   * a column holds.
   */
  static int[] of(GrantTable table) {
    int columns = table.columns().size();
    int[] least = new int[columns];
    int[] wish = new int[columns];
    for (int c = 0; c < columns; c++) {
      least[c] = PADDING + LETTER * Math.max(LEAST_LETTERS, longestWord(table, c));
      wish[c] = Math.max(0, PADDING + LETTER * longestCell(table, c) - least[c]);
    }
    return shared(least, wish);
  }

  private static int[] shared(int[] least, int[] wish) {
    int[] widths = new int[least.length];
    double room = Math.max(0, TEXT_WIDTH - sum(least));
    double wished = Math.max(1, sum(wish));
    double squeeze = Math.min(1, (double) TEXT_WIDTH / sum(least));
    int used = 0;
    for (int c = 0; c < widths.length; c++) {
      double share = sum(wish) == 0 ? room / widths.length : room * wish[c] / wished;
      widths[c] = (int) (least[c] * squeeze + share);
      used += widths[c];
    }
    widths[0] += TEXT_WIDTH - used;
    return widths;
  }

  private static int sum(int[] numbers) {
    int sum = 0;
    for (int number : numbers) {
      sum += number;
    }
    return sum;
  }

  private static int longestWord(GrantTable table, int column) {
    int longest = 0;
    for (String cell : table.texts(column)) {
      for (String word : cell.split("[ -]", -1)) {
        longest = Math.max(longest, Math.min(WIDEST_LETTERS / 2, word.length()));
      }
    }
    return longest;
  }

  private static int longestCell(GrantTable table, int column) {
    return table.texts(column).stream()
        .mapToInt(text -> Math.min(WIDEST_LETTERS, text.length()))
        .max()
        .orElse(0);
  }
}
