package pondtally.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pondtally.record.Sourced;

/**
 * Of rows that say the same, the first in file order counts. Rows of two partners that agree in
 * everything else are the same row, sent twice.
 */
final class DuplicateRows {

  private DuplicateRows() {}

  static void apply(OpenCluster cluster) {
    cluster.tables().forEach(DuplicateRows::applyTo);
  }

  private static <T extends Sourced> void applyTo(Rows<T> rows) {
    Map<List<Object>, T> first = new HashMap<>();
    for (T row : rows.list()) {
      T earlier = first.putIfAbsent(Fields.content(row), row);
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
