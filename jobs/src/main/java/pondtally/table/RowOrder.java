package pondtally.table;

import java.util.Comparator;
import java.util.TreeSet;

/**
 * The order of rows in a result table: by the key columns from left to right, empty cells first.
 */
final class RowOrder {

  private RowOrder() {}

  static Comparator<Object[]> byKey(TableSpec spec) {
    int keys = spec.keyColumns();
    return (a, b) -> {
      for (int i = 0; i < keys; i++) {
        int order = compareCells(a[i], b[i]);
        if (order != 0) {
          return order;
        }
      }
      return 0;
    };
  }

  /** Whether the key columns single out each row: then they are the table's primary key. */
  static boolean isEachKeyOnce(ResultTable table) {
    Comparator<Object[]> order = byKey(table.spec());
    return isRising(table, order) || table.rows().stream().allMatch(new TreeSet<>(order)::add);
  }

  /** What a sorted table without a repeated key is, found without another copy of its rows. */
  private static boolean isRising(ResultTable table, Comparator<Object[]> order) {
    Object[] last = null;
    for (Object[] row : table.rows()) {
      if (last != null && order.compare(last, row) >= 0) {
        return false;
      }
      last = row;
    }
    return true;
  }

  private static int compareCells(Object a, Object b) {
    if (a == null || b == null) {
      return Boolean.compare(a != null, b != null);
    }
    if (a instanceof Number x && b instanceof Number y) {
      return Double.compare(x.doubleValue(), y.doubleValue());
    }
    return a.toString().compareTo(b.toString());
  }
}
