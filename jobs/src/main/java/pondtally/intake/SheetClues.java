package pondtally.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pondtally.schema.FieldType;

/**
 * The clues of all columns of a sheet. They take a second reading of the sheet, which is done when
 * the first doubtful cell turns up and not at all where none does; only counts are kept.
 */
final class SheetClues {

  private static final Clues FIRST = new Clues(1, 0);
  private static final Clues SECOND = new Clues(0, 1);

  /** The second reading failed. Its own type, so that it is not taken for a failure of the sink. */
  static final class Unreadable extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final IOException fault;

    Unreadable(IOException fault) {
      super(fault);
      this.fault = fault;
    }

    IOException fault() {
      return fault;
    }
  }

  private final SheetSource source;
  private final int headingRow;
  private final TableEnd end;
  private final Map<Integer, FieldType> columns = new HashMap<>();
  private Map<Integer, Clues> byColumn;
  private boolean isBelow;

  /**
   * @param headingRow row number of the headings; rows up to it hold no data
   * @param end finds the row from which on there is no data either
   */
  SheetClues(SheetSource source, int headingRow, TableEnd end) {
    this.end = end;
    this.source = source;
    this.headingRow = headingRow;
  }

  /** Clues of no sheet. */
  static SheetClues none() {
    SheetClues none = new SheetClues(null, 0, new TableEnd(null));
    none.byColumn = Map.of();
    return none;
  }

  /** Counts a column in, before the first demand. */
  void watch(int column, FieldType type) {
    columns.put(column, type);
  }

  /** Whether day numbers of the sheet count from 1904. */
  boolean countsFrom1904() {
    return source != null && source.countsFrom1904();
  }

  /** Clues to the order of day and month. */
  Clues dates(int column) {
    return read().getOrDefault(column, Clues.NONE);
  }

  /** Clues to the decimal mark: the column's own, or where it has none those of all its sheet. */
  Clues numbers(int column) {
    Clues own = read().getOrDefault(column, Clues.NONE);
    if (!own.equals(Clues.NONE)) {
      return own;
    }
    Clues all = Clues.NONE;
    for (Map.Entry<Integer, Clues> entry : byColumn.entrySet()) {
      if (columns.get(entry.getKey()) != FieldType.DATE) {
        all = all.plus(entry.getValue());
      }
    }
    return all;
  }

  private Map<Integer, Clues> read() {
    if (byColumn == null) {
      byColumn = new HashMap<>();
      List<Map.Entry<Integer, FieldType>> watched = new ArrayList<>(columns.entrySet());
      try {
        source.read(row -> count(row, watched));
      } catch (IOException e) {
        throw new Unreadable(e);
      }
    }
    return byColumn;
  }

  private void count(RawRow row, List<Map.Entry<Integer, FieldType>> watched) {
    isBelow |= row.number > headingRow && end.isAt(row);
    if (row.number <= headingRow || isBelow) {
      return;
    }
    for (Map.Entry<Integer, FieldType> column : watched) {
      int at = column.getKey();
      String text = row.isNumeric(at) ? "" : Blank.clean(row.cell(at));
      if (!text.isEmpty()) {
        Clues clue = column.getValue() == FieldType.DATE ? dateClue(text) : numberClue(text);
        if (!clue.equals(Clues.NONE)) {
          byColumn.merge(at, clue, Clues::plus);
        }
      }
    }
  }

  private static Clues dateClue(String text) {
    if (IsoDay.parse(text) != IsoDay.NONE) {
      return Clues.NONE;
    }
    DateText date = DateText.of(text);
    if (date.form() != DateText.Form.YEAR_LAST || date.dayFirst() == date.monthFirst()) {
      return Clues.NONE;
    }
    if (date.monthFirst() == IsoDay.NONE) {
      return FIRST;
    }
    return date.dayFirst() == IsoDay.NONE ? SECOND : Clues.NONE;
  }

  private static Clues numberClue(String text) {
    return switch (NumberText.of(text).mark()) {
      case POINT -> FIRST;
      case COMMA -> SECOND;
      default -> Clues.NONE;
    };
  }
}
