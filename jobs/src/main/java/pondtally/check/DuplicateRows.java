package pondtally.check;

import java.util.ArrayList;
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
    for (T row : alikeAtFirst(rows)) {
      T earlier = first.putIfAbsent(content.apply(row), row);
      if (earlier != null) {
        rows.duplicate(row, Remark.row(CheckRule.DUPLICATE_ROW, message(earlier)));
      }
    }
  }

  /** Rows that have another one with the same first fields; few do, so that few are read whole. */
  private static <T extends Sourced> List<T> alikeAtFirst(Rows<T> rows) {
    if (rows.size() < 2) {
      return List.of();
    }
    List<T> all = rows.list();
    Map<List<Object>, Integer> counts = new HashMap<>();
    List<List<Object>> starts = new ArrayList<>(all.size());
    for (T row : all) {
      starts.add(Fields.start(row));
      counts.merge(starts.get(starts.size() - 1), 1, Integer::sum);
    }
    List<T> alike = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (counts.get(starts.get(i)) > 1) {
        alike.add(all.get(i));
      }
    }
    return alike;
  }

  private static String message(Sourced earlier) {
    return """
        Every field is the same as in %s. The row is counted once, there. Delete \
        this copy; if it"""
            .formatted(Words.row(earlier.origin()))
        + " is no copy, write what tells the two rows apart.";
  }
}
