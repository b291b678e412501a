package pondtally.reports.table;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One row of a result table, read by column name. A cell that is not known is empty, never zero.
 */
public final class Row {

  /** Cell text that says a figure is kept back in the public edition. */
  public static final String WITHHELD = "withheld";

  private final Table table;
  private final String[] cells;

  Row(Table table, String[] cells) {
    this.table = table;
    this.cells = cells;
  }

  /** The cell as text; empty where not known. */
  public String text(String column) {
    return cells[table.index(column)];
  }

  /** Whether the table has that column. */
  public boolean has(String column) {
    return table.has(column);
  }

  /** A number or integer cell; empty where not known, or withheld in the public edition. */
  public OptionalDouble number(String column) {
    String cell = text(column);
    return cell.isEmpty() || cell.equals(WITHHELD)
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(cell));
  }

  /** An integer cell that is always filled. */
  public long count(String column) {
    return Long.parseLong(text(column));
  }

  /** A date cell. */
  public Optional<LocalDate> date(String column) {
    String cell = text(column);
    return cell.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(cell));
  }

  /** Whether a boolean cell says true; a cell that is not known says false. */
  public boolean isTrue(String column) {
    return text(column).equals("true");
  }
}
