package pondtally.reports.workbook;

import java.util.List;
import java.util.Optional;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Line;

/** Tables for readers who want the tests and models themselves, shown column by column. */
final class OtherTables {

  private OtherTables() {}

  /** Adds a sheet with all columns of {@code table}, when the run made that table. */
  static void add(Book book, TablePackage tables, String table, String sheet, String note) {
    Optional<Table> found = tables.table(table);
    if (found.isPresent()) {
      book.add(
          TableSheet.of(
                  sheet,
                  found.get().title(),
                  List.of(note),
                  Columns.of(tables, table).addAll(),
                  Line.of(found.get().rows()))
              .withKeyColumns(2));
    }
  }
}
