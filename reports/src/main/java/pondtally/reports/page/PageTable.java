package pondtally.reports.page;

import java.util.List;

/**
 * A table of the page.
 *
 * @param caption what it holds
 * @param notes sentences above it that keep it from being misread
 * @param headings of its columns, in order
 * @param heads how many of the first columns name the row
 * @param lines cells of each row, as many as headings
 * @param folded whether it opens only when asked for
 */
record PageTable(
    String caption,
    List<String> notes,
    List<String> headings,
    int heads,
    List<List<Cell>> lines,
    boolean folded) {

  /** Longer tables are folded. */
  static final int LONG = 15;

  PageTable(String caption, List<String> notes, List<String> headings, List<List<Cell>> lines) {
    this(caption, notes, headings, 1, lines, lines.size() > LONG);
  }

  /** The same, opened only when asked for. */
  PageTable fold() {
    return new PageTable(caption, notes, headings, heads, lines, true);
  }
}
