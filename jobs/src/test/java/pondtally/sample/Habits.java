package pondtally.sample;

import static pondtally.sample.Partner.BRACKWEN;
import static pondtally.sample.Partner.LOWMARROW;
import static pondtally.sample.Partner.ORRENBY;
import static pondtally.sample.Partner.QUARRINDALE;
import static pondtally.sample.Partner.TESSARBY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Each partner's habits: dates as text, numbers as text, codes as numbers, blank lines, notes on
 * two lines.
 */
final class Habits {
  private final FaultBook book;

  Habits(FaultBook book) {
    this.book = book;
  }

  void apply() {
    datesAsText(
        book.sheet(ORRENBY, Table.REQUESTS, ""),
        "asked_on",
        day -> day.getMonthValue() + "/" + day.getDayOfMonth() + "/" + day.getYear());
    datesAsText(
        book.sheet(LOWMARROW, Table.AREAS, ""),
        "measured_on",
        day -> day.getDayOfMonth() + "/" + day.getMonthValue() + "/" + day.getYear());
    numbersAsText(book.sheet(BRACKWEN, Table.INSTALLS, ""), "install_cost_usd");
    numbersAsText(book.sheet(TESSARBY, Table.MATERIALS, "Materials 2018"), "total_cost_usd");
    codesAsNumbers(book.sheet(BRACKWEN, Table.SITES, ""));
    twoLineNotes(book.sheet(QUARRINDALE, Table.REVISITS, ""));
  }

  /**
   * Blank lines are no rows, but count in row numbers. Last of all, since they shift what follows.
   */
  void blankLines() {
    blankLine(book.sheet(ORRENBY, Table.REVISITS, "2017"), 3);
    blankLine(book.sheet(LOWMARROW, Table.REVISITS, "csv"), 2);
    blankLine(book.sheet(BRACKWEN, Table.REVISITS, ""), 4);
    blankLine(book.sheet(TESSARBY, Table.REVISITS, "2020"), 2);
  }

  private void datesAsText(Sheet sheet, String field, Function<LocalDate, String> form) {
    for (Row row : List.copyOf(sheet.rows())) {
      if (!row.isTouched()) {
        Cell text = Cell.of(form.apply(row.day(field)));
        book.spoil(sheet, row, field, text, FaultKind.DATE_FROM_TEXT, Outcome.CHANGED);
      }
    }
  }

  private static List<Row> untouched(Sheet sheet, String field) {
    List<Row> rows = new ArrayList<>(sheet.rows());
    rows.removeIf(row -> row.isTouched() || !row.has(field));
    return rows;
  }

  private static void numbersAsText(Sheet sheet, String field) {
    List<Row> rows = untouched(sheet, field);
    for (int i = 3; i < rows.size(); i += 9) {
      rows.get(i).write(field, Cell.of(rows.get(i).text(field)));
    }
  }

  private static void codesAsNumbers(Sheet sheet) {
    for (Row row : untouched(sheet, "watershed")) {
      row.write("watershed", Cell.of(Long.parseLong(row.text("watershed"))));
    }
  }

  private static void twoLineNotes(Sheet sheet) {
    List<Row> rows = untouched(sheet, "notes");
    for (int i = 2; i < Math.min(rows.size(), 12); i += 4) {
      rows.get(i)
          .write("notes", Cell.of(rows.get(i).text("notes") + "\nSee also the log of the day"));
    }
  }

  private static void blankLine(Sheet sheet, int parts) {
    sheet.rows().add(sheet.rows().size() / parts, new Row());
  }
}
