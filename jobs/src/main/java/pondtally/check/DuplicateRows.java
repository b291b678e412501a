package pondtally.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import pondtally.record.Sourced;

/**
 * Of rows that say the same, the first in file order counts. Rows of two partners that agree in
 * everything else are the same row, sent twice.
 */
final class DuplicateRows {

  private DuplicateRows() {}

  static void apply(OpenCluster cluster) {
    cluster.tables().forEach(rows -> applyTo(rows, Fields::content));
  }

  /** Rows without an id of their own are copies only where one partner sent both. */
  static <T extends Sourced> void applyWithinPartner(Rows<T> rows) {
    applyTo(rows, row -> List.of(row.partner(), Fields.content(row)));
  }

  private static <T extends Sourced> void applyTo(Rows<T> rows, Function<T, List<Object>> content) {
    Map<List<Object>, T> first = new HashMap<>();
    for (T row : rows.list()) {
      T earlier = first.putIfAbsent(content.apply(row), row);
      if (earlier != null) {
        rows.duplicate(row, Remark.row(CheckRule.DUPLICATE_ROW, message(earlier)));
      }
    }
  }

  private static String message(Sourced earlier) {
    return """
        Every field is the same as in %s. The row is counted once, there. Delete \
        this copy; if it"""
            .formatted(Words.row(earlier.origin()))
        + " is no copy, write what tells the two rows apart.";
  }
}
