package pondtally.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pondtally.schema.TableSchema;

/**
 * Finds the row of headings below titles and empty rows, and with it the table. The table that the
 * name says comes first; where its headings are not to be found, the headings decide.
 */
final class HeadingSearch {

  /** How many rows that hold anything are looked at. */
  static final int ROWS = 30;

  private final Optional<TableSchema> byName;
  private final SheetMap map;
  private final List<RawRow> rows = new ArrayList<>();

  /**
   * @param byName the table that the name of the sheet or file says, or the map states
   * @param map what {@code columns.yaml} states about the sheet
   */
  HeadingSearch(Optional<TableSchema> byName, SheetMap map) {
    this.byName = byName;
    this.map = map;
  }

  /** The headings of a sheet, as far as it can be read; empty where there are none. */
  static Optional<Headings> in(InputFile file, SheetSource source) {
    SheetMap map = file.sheet(source.name());
    if (map.isSkipped()) {
      return Optional.empty();
    }
    TableName name = TableName.of(file, source.name(), map);
    HeadingSearch search = new HeadingSearch(name.table(), map);
    List<Headings> certain = new ArrayList<>();
    source.readToBreak(
        row -> {
          if (certain.isEmpty() && !search.isFull() && !row.isBlank()) {
            search.add(row).ifPresent(certain::add);
          }
        });
    return certain.isEmpty() ? search.best() : Optional.of(certain.get(0));
  }

  /** Rows seen so far that hold anything. */
  List<RawRow> rows() {
    return rows;
  }

  /** Whether a row looks like the headings of some table, though none is certain. */
  boolean hasSomeHeadings() {
    return rows.stream()
        .anyMatch(
            row ->
                TableSchema.all().stream()
                    .filter(table -> Headings.canTell(table, row))
                    .anyMatch(table -> Headings.of(table, row, map).isTelling()));
  }

  boolean isFull() {
    return map.statesHeaderRow() ? isBelowHeadings() : rows.size() >= ROWS;
  }

  private boolean isBelowHeadings() {
    return !rows.isEmpty() && rows.get(rows.size() - 1).number >= map.headerRow();
  }

  /** Looks at one more row; returns the headings once they are certain. */
  Optional<Headings> add(RawRow row) {
    rows.add(row.copy());
    RawRow kept = rows.get(rows.size() - 1);
    if (map.statesHeaderRow()) {
      return stated(kept);
    }
    return byName
        .map(table -> Headings.of(table, kept, map))
        .filter(Headings::isComplete)
        .or(() -> byName.isPresent() ? Optional.empty() : byHeadings(kept));
  }

  /** The headings in the row that is stated, or places in their stead where there are none. */
  private Optional<Headings> stated(RawRow row) {
    TableSchema table = byName.orElseThrow();
    if (map.headerRow() == SheetMap.NO_HEADINGS) {
      return Optional.of(Headings.of(table, NamedColumn.places(map.widthOf(row)), map));
    }
    return row.number == map.headerRow()
        ? Optional.of(Headings.of(table, row, map))
        : Optional.empty();
  }

  /** The best headings among the rows seen, when there are no more to come. */
  Optional<Headings> best() {
    if (map.statesHeaderRow()) {
      return Optional.empty();
    }
    if (map.table() != null) {
      return incomplete();
    }
    return rows.stream()
        .map(this::byHeadings)
        .flatMap(Optional::stream)
        .findFirst()
        .or(this::incomplete);
  }

  /** Headings of the named table that lack a required one: better than to know nothing. */
  private Optional<Headings> incomplete() {
    return byName.flatMap(
        table ->
            rows.stream()
                .filter(row -> Headings.canTell(table, row))
                .map(row -> Headings.of(table, row, map))
                .filter(Headings::isTelling)
                .max(Comparator.comparingInt(Headings::score)));
  }

  /** The table that a row of headings tells by itself; empty where two are equally likely. */
  private Optional<Headings> byHeadings(RawRow row) {
    List<Headings> best = new ArrayList<>();
    for (TableSchema table : TableSchema.all()) {
      Headings headings = Headings.canTell(table, row) ? Headings.of(table, row, map) : null;
      if (headings != null && headings.isComplete() && headings.isTelling()) {
        if (!best.isEmpty() && best.get(0).score() < headings.score()) {
          best.clear();
        }
        if (best.isEmpty() || best.get(0).score() == headings.score()) {
          best.add(headings);
        }
      }
    }
    return best.size() == 1 ? Optional.of(best.get(0)) : Optional.empty();
  }
}
