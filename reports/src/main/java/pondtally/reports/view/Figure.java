package pondtally.reports.view;

import java.util.List;
import java.util.Map;

/**
 * A printed figure and the cells it was read from, so that anybody can look them up.
 *
 * @param table name of the result table; empty where {@code columns} names a fact of the run
 * @param key column values that single out its row or rows
 * @param how what was done with those rows
 * @param columns the cells in the order in which their numbers are printed
 * @param printed the words as they stand in the sentence
 */
public record Figure(
    String table, Map<String, String> key, How how, List<String> columns, String printed) {

  /** What was done with the rows. */
  public enum How {
    /** Cells of the one row. */
    CELL,
    /** The number of rows. */
    ROWS,
    /** The sum of the column over the rows. */
    SUM,
    /** A fact that no table holds. */
    FACT
  }
}
