package pondtally.intake;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pondtally.schema.FieldSchema;
import pondtally.schema.HeadingMatch;
import pondtally.schema.TableSchema;
import pondtally.schema.Unit;

/**
 * What {@code columns.yaml} states about one sheet.
 *
 * @param table name of its table; null: it is recognised
 * @param isSkipped whether it is not read at all
 * @param headerRow row number of the headings; {@link #SEARCHED}, or {@link #NO_HEADINGS}
 * @param stopAt how the first row below the table begins; null: the table reaches to the end
 * @param columns the columns that are named
 * @param values value of a field that has no column, as it would be written
 * @param units unit of bare numbers, by field
 * @param codes what a cell stands for, by field and by {@link NamedColumn#key} of the cell
 * @param dates order of dates, by field; under {@link #ANY} for all
 * @param aliases the id that counts, by field and by the id that is written
 * @param decimal decimal mark of numbers; null: it is found out
 */
record SheetMap(
    String table,
    boolean isSkipped,
    int headerRow,
    String stopAt,
    List<NamedColumn> columns,
    Map<String, String> values,
    Map<String, Unit> units,
    Map<String, Map<String, String>> codes,
    Map<String, DateOrder> dates,
    Map<String, Map<String, String>> aliases,
    DecimalMark decimal)
    implements Serializable {

  static final int SEARCHED = 0;
  static final int NO_HEADINGS = -1;
  static final String ANY = "";

  static final SheetMap NONE =
      new SheetMap(
          null, false, SEARCHED, null, List.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(),
          null);

  /** The same with the ids that {@code aliases.csv} merges. */
  SheetMap with(Map<String, Map<String, String>> merged) {
    return new SheetMap(
        table, isSkipped, headerRow, stopAt, columns, values, units, codes, dates, merged, decimal);
  }

  /** The table that is stated. */
  Optional<TableSchema> tableSchema() {
    return Optional.ofNullable(table).map(TableSchema::named);
  }

  /** Whether the row of headings is stated rather than searched for. */
  boolean statesHeaderRow() {
    return headerRow != SEARCHED;
  }

  /** How many columns of a row of headings count: up to the last that is filled or named. */
  int widthOf(RawRow row) {
    int width = row.width;
    for (NamedColumn named : columns) {
      width = Math.max(width, named.place() + 1);
    }
    return width;
  }

  /** Whether a column is named here, be it to leave it out. */
  boolean names(int column, String heading) {
    return named(column, heading).isPresent();
  }

  private Optional<NamedColumn> named(int column, String heading) {
    return columns.stream().filter(named -> named.is(column, heading)).findFirst();
  }

  /** The field that a column stands for: the one stated here, else the one its heading tells. */
  Optional<HeadingMatch> match(TableSchema schema, int column, String heading) {
    Optional<NamedColumn> named = named(column, heading);
    if (named.isEmpty()) {
      return heading.isEmpty() ? Optional.empty() : schema.match(heading).map(this::withUnit);
    }
    String field = named.get().field();
    return field.isEmpty()
        ? Optional.empty()
        : Optional.of(withUnit(schema.matchAs(heading, schema.field(field))));
  }

  private HeadingMatch withUnit(HeadingMatch match) {
    Unit unit = units.get(match.field().name());
    return unit == null ? match : new HeadingMatch(match.field(), unit, "", match.isOwnName());
  }

  /** The order of a field's dates; null: none is stated. */
  StatedOrder order(FieldSchema field, String comment) {
    DateOrder own = dates.get(field.name());
    DateOrder headed = DateOrder.stated(comment);
    if (own == null && headed != null) {
      return new StatedOrder(headed, "the heading");
    }
    DateOrder order = own == null ? dates.get(ANY) : own;
    return order == null ? null : new StatedOrder(order, "columns.yaml");
  }
}
