package pondtally.reports.view;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;

/**
 * Rows of one result table, narrowed by the values of key columns. A table that the run did not
 * make has no rows.
 */
public final class Rows {

  private final String table;
  private final Map<String, String> key;
  private final List<Row> rows;

  private Rows(String table, Map<String, String> key, List<Row> rows) {
    this.table = table;
    this.key = key;
    this.rows = rows;
  }

  /** All rows of {@code table}. */
  public static Rows of(TablePackage tables, String table) {
    return new Rows(table, Map.of(), tables.table(table).map(Table::rows).orElse(List.of()));
  }

  /** Only the rows whose {@code column} holds {@code value}. */
  public Rows where(String column, String value) {
    Map<String, String> narrower = new LinkedHashMap<>(key);
    narrower.put(column, value);
    return new Rows(
        table, narrower, rows.stream().filter(r -> r.text(column).equals(value)).toList());
  }

  /**
   * Only the rows whose {@code column} holds a date from {@code first} to {@code last}, both
   * counted. The key then holds the ISO 8601 interval {@code first/last}.
   */
  public Rows within(String column, String first, String last) {
    Rows found =
        only(r -> r.text(column).compareTo(first) >= 0 && r.text(column).compareTo(last) <= 0);
    Map<String, String> narrower = new LinkedHashMap<>(key);
    narrower.put(column, first + "/" + last);
    return new Rows(table, narrower, found.rows);
  }

  /**
   * Only the rows whose {@code column} holds that number or more. The key then holds the number and
   * two dots: {@code 5..}.
   */
  public Rows atLeast(String column, double number) {
    Rows found = only(r -> r.number(column).orElse(Double.NEGATIVE_INFINITY) >= number);
    Map<String, String> narrower = new LinkedHashMap<>(key);
    narrower.put(column, BigDecimal.valueOf(number).stripTrailingZeros().toPlainString() + "..");
    return new Rows(table, narrower, found.rows);
  }

  /** Only the rows that pass; the key stays as it is. */
  public Rows only(Predicate<Row> test) {
    return new Rows(table, key, rows.stream().filter(test).toList());
  }

  /** The same rows in another order; equal ones keep theirs. */
  public Rows sorted(Comparator<Row> order) {
    return new Rows(table, key, rows.stream().sorted(order).toList());
  }

  public String table() {
    return table;
  }

  /** The column values that narrowed the rows. */
  public Map<String, String> key() {
    return key;
  }

  public List<Row> list() {
    return rows;
  }

  /** The first row, when there is one. */
  public Optional<Row> first() {
    return rows.stream().findFirst();
  }

  /** The rows as lines. */
  public List<Line> lines() {
    return Line.of(rows);
  }

  /** The first row of each value of {@code column}. */
  public Map<String, Line> by(String column) {
    Map<String, Line> found = new TreeMap<>();
    rows.forEach(row -> found.putIfAbsent(row.text(column), Line.of(row)));
    return found;
  }
}
