package pondtally.reports.workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Cautions;
import pondtally.reports.view.ChangeSentences;
import pondtally.reports.view.Rows;
import pondtally.reports.view.Section;

/** What changed between two runs: sentences first, then every figure, setting, row and device. */
public final class ChangesWorkbook {

  private ChangesWorkbook() {}

  /**
   * Writes the workbook.
   *
   * @param tables the tables of a comparison
   * @param file the {@code .xlsx} file to write; the same tables give the same bytes
   * @throws IOException when the file cannot be written
   */
  public static void write(TablePackage tables, Path file) throws IOException {
    plan(tables).write(file);
  }

  /** Every sheet with the tables and columns that its cells are read from. */
  static Book plan(TablePackage tables) {
    String title = ChangeSentences.title(tables);
    String asOf = tables.fact("as_of");
    Book book =
        new Book(
            new BookProperties(
                title,
                title,
                asOf.isEmpty() ? LocalDate.of(2000, 1, 1) : LocalDate.parse(asOf),
                title),
            Book.LINES_A_SHEET);
    ChangeSheets.figures(
        book,
        tables,
        "changes",
        Messages.of("workbook.ChangesWorkbook.figures"),
        "compare.table.all");
    settings(book, tables);
    rows(book, tables);
    files(book, tables);
    records(book, tables);
    CheckSheets.fields(book, tables);
    book.addFirst(summary(tables, title, book.sheetNames()));
    return book;
  }

  private static ProseSheet summary(TablePackage tables, String title, List<String> others) {
    ProseSheet.Builder prose = new ProseSheet.Builder();
    for (Section section : ChangeSentences.of(tables)) {
      prose.section(section.heading());
      section.sentences().forEach(sentence -> prose.paragraph(sentence.text()));
    }
    prose.section(Messages.of("common.Sheets-of-this-workbook"));
    others.forEach(name -> prose.link(name, name));
    prose.section(Cautions.HEADING);
    Cautions.all().forEach(prose::paragraph);
    return prose.build(Messages.of("workbook.ChangesWorkbook.what-changed"), title);
  }

  private static void settings(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "changed_settings")
            .add("setting", "before")
            .format(Format.WRAPPED)
            .width(30)
            .add("after")
            .format(Format.WRAPPED)
            .width(30)
            .add("moves")
            .format(Format.WRAPPED)
            .width(70);
    add(
        book,
        tables,
        Messages.of("common.Settings"),
        "compare.table.settings",
        "changed_settings",
        columns,
        1);
  }

  private static void rows(Book book, TablePackage tables) {
    Columns columns = Columns.of(tables, "changed_rows").addAll();
    add(
        book,
        tables,
        Messages.of("workbook.ChangesWorkbook.rows"),
        "compare.table.rows",
        "changed_rows",
        columns,
        2);
  }

  private static void files(Book book, TablePackage tables) {
    Columns columns = Columns.of(tables, "changed_files").addAll();
    add(
        book,
        tables,
        Messages.of("workbook.ChangesWorkbook.files"),
        "compare.table.files",
        "changed_files",
        columns,
        1);
  }

  private static void records(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "changed_records")
            .add("subject", "id", "watershed", "kind")
            .add("columns")
            .format(Format.WRAPPED)
            .width(40)
            .add("what")
            .format(Format.WRAPPED)
            .width(80);
    add(
        book,
        tables,
        Messages.of("workbook.ChangesWorkbook.devices-and-sites"),
        "compare.table.records",
        "changed_records",
        columns,
        2);
  }

  private static void add(
      Book book,
      TablePackage tables,
      String sheet,
      String title,
      String table,
      Columns columns,
      int keys) {
    book.add(
        TableSheet.of(
                sheet,
                Messages.reports().text(title),
                List.of(),
                columns,
                Rows.of(tables, table).lines())
            .withKeyColumns(keys));
  }
}
