package pondtally.reports.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import pondtally.reports.table.Field;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.view.Figure;
import pondtally.reports.view.Headings;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/**
 * Columns of a page table that read from one result table. A column that the run did not make, or
 * that a public edition leaves out, is left out here too.
 */
final class Grid {

  private final Optional<Table> table;
  private final String name;
  private final String priceYear;
  private final List<String> keys;
  private final List<Column> columns = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private int heads;

  private record Column(String heading, BiFunction<Row, Map<String, String>, Cell> cell) {}

  private Grid(TablePackage tables, String name, List<String> keys) {
    this.table = tables.table(name);
    this.name = name;
    this.priceYear = tables.fact("base_year");
    this.keys = keys;
  }

  /**
   * Starts without columns.
   *
   * @param keys columns that together with the key of the rows single out a row
   */
  static Grid of(TablePackage tables, String name, String... keys) {
    return new Grid(tables, name, List.of(keys));
  }

  /** A sentence above the table. */
  Grid note(String note) {
    notes.add(note);
    return this;
  }

  /** The next column names the row. */
  Grid head(String heading, String column, UnaryOperator<String> words) {
    field(column)
        .ifPresent(
            field -> {
              columns.add(new Column(heading, (row, key) -> text(row, key, column, words)));
              heads = columns.size();
            });
    return this;
  }

  /** The next column names the row, and holds the name of a group of the grouping beside it. */
  Grid group(String heading, BiFunction<String, String, String> words) {
    columns.add(
        new Column(
            heading,
            (row, key) ->
                Cell.text(
                    name, key, "group", words.apply(row.text("grouping"), row.text("group")))));
    heads = columns.size();
    return this;
  }

  /** The next column names the row in words worked out from all of it. */
  Grid named(String heading, Function<Row, String> words) {
    said(heading, words);
    heads = columns.size();
    return this;
  }

  /** Columns of text as the table has it, put into words. */
  Grid words(UnaryOperator<String> words, String... names) {
    for (String column : names) {
      field(column)
          .ifPresent(
              f ->
                  columns.add(new Column(heading(f), (row, key) -> text(row, key, column, words))));
    }
    return this;
  }

  /** A column worked out from the whole row, in words. */
  Grid said(String heading, Function<Row, String> words) {
    columns.add(new Column(heading, (row, key) -> Cell.words(words.apply(row))));
    return this;
  }

  /** Columns of numbers under their own headings. */
  Grid number(Shape shape, String... names) {
    for (String column : names) {
      field(column).ifPresent(f -> number(heading(f), shape, column));
    }
    return this;
  }

  /** A column of numbers. */
  Grid number(String heading, Shape shape, String column) {
    if (field(column).isPresent()) {
      columns.add(new Column(heading, (row, key) -> number(row, key, shape, column)));
    }
    return this;
  }

  /** A column that shows an estimate with its limits. */
  Grid estimate(
      String heading, String value, String lower, String upper, Function<Estimate, String> form) {
    if (field(value).isPresent() && field(lower).isPresent() && field(upper).isPresent()) {
      columns.add(new Column(heading, (row, key) -> estimate(row, key, form, value, lower, upper)));
    }
    return this;
  }

  /** The table, with a line for each of the rows. */
  PageTable build(String caption, Rows rows) {
    return build(caption, rows, rows.list());
  }

  /** The same with some of the rows, or with another order. */
  PageTable build(String caption, Rows rows, List<Row> list) {
    List<List<Cell>> lines = new ArrayList<>();
    for (Row row : list) {
      Map<String, String> key = new LinkedHashMap<>(rows.key());
      keys.stream().filter(k -> field(k).isPresent()).forEach(k -> key.put(k, row.text(k)));
      lines.add(columns.stream().map(column -> column.cell().apply(row, key)).toList());
    }
    return new PageTable(
        caption,
        List.copyOf(notes),
        columns.stream().map(Column::heading).toList(),
        heads,
        lines,
        lines.size() > PageTable.LONG);
  }

  private Optional<Field> field(String column) {
    return table.map(Table::fields).stream()
        .flatMap(List::stream)
        .filter(f -> f.name().equals(column))
        .findFirst();
  }

  private String heading(Field field) {
    return Headings.of(field, priceYear);
  }

  private Cell text(Row row, Map<String, String> key, String column, UnaryOperator<String> words) {
    String raw = row.text(column);
    return Cell.text(name, key, column, raw.isEmpty() ? words.apply("") : words.apply(raw));
  }

  private Cell number(Row row, Map<String, String> key, Shape shape, String column) {
    OptionalDouble value = Line.of(row).number(column);
    return value.isEmpty()
        ? Cell.missing(name, key, column, row.text(column))
        : Cell.number(figure(key, shape.print(value.getAsDouble()), column));
  }

  private Cell estimate(
      Row row, Map<String, String> key, Function<Estimate, String> form, String... names) {
    Line line = Line.of(row);
    Optional<Estimate> estimate =
        Estimate.of(line.number(names[0]), line.number(names[1]), line.number(names[2]));
    if (estimate.isEmpty()) {
      return Cell.missing(name, key, names[0], row.text(names[0]));
    }
    Stream<String> printed = Stream.of(names).limit(estimate.get().hasLimits() ? 3 : 1);
    return Cell.number(figure(key, form.apply(estimate.get()), printed.toArray(String[]::new)));
  }

  private Figure figure(Map<String, String> key, String printed, String... names) {
    return new Figure(name, key, Figure.How.CELL, List.of(names), printed);
  }
}
