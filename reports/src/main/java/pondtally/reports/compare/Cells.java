package pondtally.reports.compare;

import java.util.List;
import java.util.Optional;
import pondtally.reports.table.Field;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.text.Missing;

/** Cells of two runs side by side. */
final class Cells {

  /** Less than this, as a share of the larger, is the last bits of an addition and no change. */
  static final double ROUNDING = 1e-9;

  private Cells() {}

  /** Columns that both tables have, without those of {@code but}, in the order of the later. */
  static List<String> shared(Optional<Table> before, Optional<Table> after, List<String> but) {
    if (before.isEmpty() || after.isEmpty()) {
      return List.of();
    }
    return after.get().fields().stream()
        .map(Field::name)
        .filter(name -> before.get().has(name) && !but.contains(name))
        .toList();
  }

  /** Whether both cells say the same; numbers may differ in their last bits. */
  static boolean same(Row a, Row b, String column) {
    String x = a.text(column);
    String y = b.text(column);
    if (x.equals(y)) {
      return true;
    }
    Double p = number(x);
    Double q = number(y);
    return p != null
        && q != null
        && Math.abs(p - q) <= ROUNDING * Math.max(Math.abs(p), Math.abs(q));
  }

  /** Null where the cell is empty or no number. */
  static Double number(String cell) {
    boolean isNumber = !cell.isEmpty() && "-.0123456789".indexOf(cell.charAt(0)) >= 0;
    if (!isNumber) {
      return null;
    }
    try {
      return Double.valueOf(cell);
    } catch (NumberFormatException e) {
      return null;
    }
  }

  /** The cell for a reader. */
  static String shown(Row row, String column) {
    return row.text(column).isEmpty() ? Missing.NOT_KNOWN : row.text(column);
  }
}
