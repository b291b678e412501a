package pondtally.reports.view;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pondtally.reports.table.Row;

/**
 * What a line of a sheet reads its cells from: a row of a result table, or rows of several tables
 * put side by side. An empty text is "not known".
 */
@FunctionalInterface
public interface Line {

  /** Cell text that says a figure is kept back in the public edition. */
  String WITHHELD = Row.WITHHELD;

  /** The cell of that column as the table holds it; empty where not known. */
  String text(String column);

  /** The cell as a number; empty where it is not known, withheld or no number. */
  default OptionalDouble number(String column) {
    String cell = text(column);
    if (cell.isEmpty() || cell.equals(WITHHELD)) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(Double.parseDouble(cell));
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  /** The same line with some columns added or replaced. */
  default Line with(Map<String, String> cells) {
    Map<String, String> own = Map.copyOf(cells);
    return column -> own.containsKey(column) ? own.get(column) : text(column);
  }

  /**
   * The same line with the columns of {@code other} beside it, named {@code alias.column}; all of
   * them not known where {@code other} is null.
   */
  default Line beside(String alias, Line other) {
    String prefix = alias + ".";
    return column -> {
      if (!column.startsWith(prefix)) {
        return text(column);
      }
      return other == null ? "" : other.text(column.substring(prefix.length()));
    };
  }

  /** A row of a table as a line. */
  static Line of(Row row) {
    return row::text;
  }

  /** Rows as lines, in their order. */
  static List<Line> of(List<Row> rows) {
    return rows.stream().map(Line::of).toList();
  }

  /** A line of the given cells and nothing else; other columns are not known. */
  static Line of(Map<String, String> cells) {
    Map<String, String> own = Map.copyOf(cells);
    return column -> own.getOrDefault(column, "");
  }
}
