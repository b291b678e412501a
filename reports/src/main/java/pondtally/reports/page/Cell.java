package pondtally.reports.page;

import java.util.Map;
import java.util.Optional;
import pondtally.reports.text.Missing;
import pondtally.reports.view.Figure;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/**
 * A cell of a table of the page.
 *
 * @param text as it is shown; empty where not known
 * @param figure where it was read; none for words of our own
 * @param number whether it stands to the right, as numbers do
 */
record Cell(String text, Optional<Figure> figure, boolean number) {

  /** Words of our own. */
  static Cell words(String text) {
    return new Cell(text, Optional.empty(), false);
  }

  /** No figure: nothing of the kind is on record. */
  static Cell none() {
    return new Cell("none", Optional.empty(), true);
  }

  /** Text or a date from one cell. */
  static Cell text(String table, Map<String, String> key, String column, String printed) {
    return of(new Figure(table, key, Figure.How.CELL, java.util.List.of(column), printed), false);
  }

  /** A printed number. */
  static Cell number(Figure figure) {
    return of(figure, true);
  }

  /** The number of rows. */
  static Cell rows(Rows rows, String printed) {
    return number(
        new Figure(rows.table(), rows.key(), Figure.How.ROWS, java.util.List.of(), printed));
  }

  /** A number that is not known, or withheld. */
  static Cell missing(String table, Map<String, String> key, String column, String raw) {
    String printed = raw.equals(Line.WITHHELD) ? Missing.WITHHELD : "";
    return number(new Figure(table, key, Figure.How.CELL, java.util.List.of(column), printed));
  }

  private static Cell of(Figure figure, boolean number) {
    return new Cell(figure.printed(), Optional.of(figure), number);
  }
}
