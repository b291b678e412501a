package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import pondtally.reports.table.Field;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Headings;

/**
 * Collects the columns of a sheet. A column that the tables do not have, as in the public edition,
 * is passed over together with what is said of it.
 */
final class Columns {

  private final TablePackage tables;
  private final List<TableColumn> columns = new ArrayList<>();
  private Optional<Table> table = Optional.empty();
  private String prefix = "";
  private boolean lastIsThere;

  private Columns(TablePackage tables) {
    this.tables = tables;
  }

  /** Starts with columns of {@code table}. */
  static Columns of(TablePackage tables, String table) {
    Columns columns = new Columns(tables);
    columns.table = tables.table(table);
    return columns;
  }

  /** Goes on with columns of another table, which lines hold as {@code table.column}. */
  Columns beside(String other) {
    table = tables.table(other);
    prefix = other + ".";
    return this;
  }

  /** Adds columns by name. */
  Columns add(String... names) {
    for (String name : names) {
      Optional<Field> field =
          table.flatMap(t -> t.fields().stream().filter(f -> f.name().equals(name)).findFirst());
      lastIsThere = field.isPresent();
      field.ifPresent(f -> columns.add(column(f)));
    }
    return this;
  }

  /** Adds every column of the table. */
  Columns addAll() {
    table.ifPresent(t -> t.fields().forEach(f -> add(f.name())));
    return this;
  }

  /** Adds a column that no table has. */
  Columns add(String name, String heading, Format format) {
    lastIsThere = true;
    columns.add(new TableColumn(name, heading, format, 0, null, false, ""));
    return this;
  }

  Columns heading(String words) {
    return change(c -> c.withHeading(words));
  }

  Columns format(Format format) {
    return change(c -> c.withFormat(format));
  }

  Columns width(int characters) {
    return change(c -> c.withWidth(characters));
  }

  Columns live(Formula formula) {
    return change(c -> c.withFormula(formula));
  }

  Columns total() {
    return change(TableColumn::withTotal);
  }

  List<TableColumn> list() {
    return List.copyOf(columns);
  }

  private Columns change(UnaryOperator<TableColumn> change) {
    if (lastIsThere) {
      columns.set(columns.size() - 1, change.apply(columns.get(columns.size() - 1)));
    }
    return this;
  }

  private TableColumn column(Field field) {
    boolean nominal = table.map(Table::name).filter("funding"::equals).isPresent();
    String year = nominal ? "nominal" : tables.fact("base_year");
    return new TableColumn(
        prefix + field.name(),
        Headings.of(field, year),
        Format.of(field),
        0,
        null,
        false,
        table.map(Table::name).orElse(""));
  }
}
