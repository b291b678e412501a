package pondtally.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A result table: declared columns and rows of cells. A null cell is "not known". Rows are sorted
 * when it is built.
 */
public final class ResultTable {

  private final TableSpec spec;
  private final List<Object[]> rows;

  private ResultTable(TableSpec spec, List<Object[]> rows) {
    this.spec = spec;
    this.rows = rows;
  }

  /** Starts a table with the columns declared for {@code name}. */
  public static Builder named(String name) {
    return new Builder(TableSpec.named(name));
  }

  /** A table whose rows are in their final order. */
  static ResultTable of(TableSpec spec, List<Object[]> rows) {
    return new ResultTable(spec, rows);
  }

  /** The declared name and columns. */
  public TableSpec spec() {
    return spec;
  }

  /** Name of the table, which is also the name of its file. */
  public String name() {
    return spec.name();
  }

  /** Rows in their final order; cells in the order of the columns. */
  public List<Object[]> rows() {
    return rows;
  }

  /** Collects rows and checks each cell against its column. */
  public static final class Builder {

    private final TableSpec spec;
    private final List<Object[]> rows = new ArrayList<>();
    private boolean keepOrder;

    private Builder(TableSpec spec) {
      this.spec = spec;
    }

    /** Adds a row: one cell for each declared column, null for "not known". */
    public Builder row(Object... cells) {
      if (cells.length != spec.columns().size()) {
        throw new IllegalArgumentException(
            spec.name() + ": " + cells.length + " cells for " + spec.columns().size() + " columns");
      }
      for (int i = 0; i < cells.length; i++) {
        CellText.check(spec.name(), spec.columns().get(i), cells[i]);
      }
      rows.add(cells.clone());
      return this;
    }

    /** Keeps the order in which rows were added instead of sorting by the key columns. */
    public Builder inGivenOrder() {
      keepOrder = true;
      return this;
    }

    /** The finished table. */
    public ResultTable build() {
      if (!keepOrder) {
        rows.sort(RowOrder.byKey(spec));
      }
      return new ResultTable(spec, Collections.unmodifiableList(rows));
    }
  }
}
