package pondtally.reports.document;

import pondtally.reports.view.GrantTable;

/** Widths of the columns of a table, in twentieths of a point. */
final class ColumnWidths {

  /** 6.5 inches, what the margins of the page leave. */
  private static final int TEXT_WIDTH = 9_360;

  private static final int WIDEST_LETTERS = 34;
  private static final int LEAST_LETTERS = 6;
  private static final int LETTER = 122;
  private static final int PADDING = 170;

  private ColumnWidths() {}

  /**
   * Room for the longest word first, the same for all columns of numbers; then what columns of
   * words wish for, as far as the page reaches. A narrow table stays narrow, so that its numbers
   * stand near their names.
   */
  static int[] of(GrantTable table) {
    int columns = table.columns().size();
    int[] least = new int[columns];
    int[] wish = new int[columns];
    int widestNumber = 0;
    for (int c = 0; c < columns; c++) {
      least[c] = PADDING + LETTER * Math.max(LEAST_LETTERS, longestWord(table, c));
      widestNumber = table.isNumber(c) ? Math.max(widestNumber, least[c]) : widestNumber;
      wish[c] = Math.max(0, PADDING + LETTER * longestCell(table, c) - least[c]);
    }
    for (int c = 0; c < columns; c++) {
      if (table.isNumber(c)) {
        wish[c] = widestNumber - least[c];
      }
    }
    return shared(least, wish);
  }

  private static int[] shared(int[] least, int[] wish) {
    double squeeze = Math.min(1, (double) TEXT_WIDTH / sum(least));
    double room = Math.max(0, TEXT_WIDTH - sum(least));
    double share = Math.min(1, room / Math.max(1, sum(wish)));
    int[] widths = new int[least.length];
    for (int c = 0; c < widths.length; c++) {
      widths[c] = (int) (least[c] * squeeze + wish[c] * share);
    }
    return widths;
  }

  static int sum(int[] numbers) {
    int sum = 0;
    for (int number : numbers) {
      sum += number;
    }
    return sum;
  }

  private static int longestWord(GrantTable table, int column) {
    int longest = 0;
    for (String cell : table.texts(column)) {
      for (String word : cell.split(" ", -1)) {
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
