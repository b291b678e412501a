package pondtally.intake;

import java.util.Arrays;
import java.util.List;

/** One row of a sheet as text. Sources reuse it from row to row; whoever keeps a row copies it. */
final class RawRow {

  /** Row number as a spreadsheet shows it, from 1. */
  int number;

  /** How many of the cells belong to this row. */
  int width;

  /** Whether a quotation mark was unclosed or stood where none may stand. */
  boolean hasStrayQuote;

  /** Column of a cell that is longer than is read; -1: there is none. */
  int cutColumn = -1;

  /** Cells that a list of corrected rows replaced. */
  List<MendedCell> mended = List.of();

  private String[] cells = new String[32];
  private boolean[] numeric = new boolean[32];

  /** Empties the row and gives it a number. */
  void start(int rowNumber) {
    number = rowNumber;
    width = 0;
    hasStrayQuote = false;
    cutColumn = -1;
    mended = List.of();
  }

  /** Adds a text cell at the end. */
  void add(String cell) {
    set(width, cell, false);
  }

  /** Puts a cell in its column; those left out before it are empty. */
  void set(int column, String cell, boolean isNumeric) {
    if (column >= cells.length) {
      int length = Math.max(column + 1, cells.length * 2);
      cells = Arrays.copyOf(cells, length);
      numeric = Arrays.copyOf(numeric, length);
    }
    while (width < column) {
      cells[width] = "";
      numeric[width++] = false;
    }
    cells[column] = cell;
    numeric[column] = isNumeric;
    width = Math.max(width, column + 1);
  }

  /** The cell as it stands; empty beyond the last. */
  String cell(int column) {
    return column < width ? cells[column] : "";
  }

  /** The cells as they stand. */
  List<String> cells() {
    return List.of(Arrays.copyOf(cells, width));
  }

  /** Whether the cell holds a number of the spreadsheet's own rather than text. */
  boolean isNumeric(int column) {
    return column < width && numeric[column];
  }

  boolean isBlank() {
    for (int i = 0; i < width; i++) {
      if (!Blank.clean(cells[i]).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  RawRow copy() {
    RawRow copy = new RawRow();
    copy.number = number;
    copy.width = width;
    copy.hasStrayQuote = hasStrayQuote;
    copy.cutColumn = cutColumn;
    copy.mended = mended;
    copy.cells = cells.clone();
    copy.numeric = numeric.clone();
    return copy;
  }
}
