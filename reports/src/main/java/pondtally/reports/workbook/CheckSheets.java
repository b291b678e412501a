package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.Field;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.DataSentences;
import pondtally.reports.view.Line;
import pondtally.reports.view.Method;
import pondtally.reports.view.Rows;

/** What became of the rows, what was noticed, how figures were made, what columns mean. */
final class CheckSheets {

  private CheckSheets() {}

  static void account(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "row_account")
            .add("partner")
            .width(26)
            .add("file", "sheet", "table", "rows_read")
            .total()
            .add("used")
            .total()
            .add("changed")
            .heading(Messages.of("common.Used-with-a-change"))
            .total()
            .add("set_aside")
            .total()
            .add("duplicate")
            .total();
    columns
        .add("balance", Messages.of("workbook.CheckSheets.rows-not-accounted-for"), Format.COUNT)
        .live(balance())
        .add("share", Messages.of("workbook.CheckSheets.share-set-aside"), Format.SHARE)
        .live(Formula.ratio("set_aside", "rows_read", 1));
    book.add(
        TableSheet.of(
            Messages.of("workbook.CheckSheets.data-checks"),
            Messages.of("common.What-became-of-every-row-that"),
            List.of(
                Messages.of(
                    "workbook.CheckSheets.each-row-ends-in-exactly-one",
                    Map.of(
                        "part",
                        DataSentences.hasReasons(tables)
                            ? Messages.of("workbook.CheckSheets.the-reasons-are-on-sheet-data")
                            : ""))),
            columns,
            Rows.of(tables, "row_account").lines()));
  }

  private static Formula balance() {
    return Formula.of(
        refs ->
            "%s-%s-%s-%s-%s"
                .formatted(
                    refs.cell("rows_read"),
                    refs.cell("used"),
                    refs.cell("changed"),
                    refs.cell("set_aside"),
                    refs.cell("duplicate")),
        line ->
            java.util.OptionalDouble.of(
                line.number("rows_read").orElse(0)
                    - line.number("used").orElse(0)
                    - line.number("changed").orElse(0)
                    - line.number("set_aside").orElse(0)
                    - line.number("duplicate").orElse(0)));
  }

  static void issues(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "data_issues")
            .add("partner", "file", "sheet", "row", "table", "column")
            .heading(Messages.of("workbook.CheckSheets.partners-heading"))
            .add("value")
            .width(20)
            .add("severity", "message")
            .format(Format.WRAPPED)
            .width(60)
            .add("suggestion")
            .format(Format.WRAPPED)
            .width(30)
            .add("rule");
    book.add(
        TableSheet.of(
                Messages.of("workbook.CheckSheets.data-issues"),
                Messages.of("common.What-was-noticed-about-rows"),
                List.of(Messages.of("workbook.CheckSheets.set-aside-the-row-is-not")),
                columns,
                Rows.of(tables, "data_issues").lines())
            .withKeyColumns(2));
  }

  static void completeness(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "completeness")
            .add("partner", "year", "last_date_sent", "devices_expected")
            .add("devices_seen", "devices_missing");
    columns
        .add("share", Messages.of("workbook.CheckSheets.share-visited"), Format.SHARE)
        .live(Formula.ratio("devices_seen", "devices_expected", 1));
    book.add(
        TableSheet.of(
                Messages.of("workbook.CheckSheets.completeness"),
                Messages.of("common.Who-has-sent-what-by-year"),
                List.of(Messages.of("common.A-device-stands-in-each-year")),
                columns,
                Rows.of(tables, "completeness").lines())
            .withKeyColumns(2));
  }

  static void methods(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "")
            .add("subject", Messages.of("common.Subject"), Format.TEXT)
            .add("method", Messages.of("workbook.CheckSheets.how-it-is-computed"), Format.WRAPPED)
            .width(95)
            .add("source", Messages.of("common.Source"), Format.WRAPPED)
            .width(45);
    book.add(
        TableSheet.of(
            Messages.of("workbook.CheckSheets.methods"),
            Messages.of("common.How-the-figures-are-made"),
            List.of(Messages.of("workbook.CheckSheets.limits-are-95-unless-a-heading")),
            columns,
            Method.all(tables).stream()
                .map(
                    m ->
                        Line.of(
                            Map.of(
                                "subject", m.subject(), "method", m.text(), "source", m.source())))
                .toList()));
  }

  static void fields(Book book, TablePackage tables) {
    List<Line> lines = new ArrayList<>();
    for (Table table : tables.tables()) {
      for (Field field : table.fields()) {
        lines.add(
            Line.of(
                Map.of(
                    "table", table.name(),
                    "column", field.name(),
                    "type", field.type(),
                    "unit", field.unit().isEmpty() ? Messages.of("common.none") : field.unit(),
                    "private",
                        field.isPrivate() ? Messages.of("common.yes") : Messages.of("common.no"),
                    "description", field.description())));
      }
    }
    Columns columns =
        Columns.of(tables, "")
            .add("table", Messages.of("common.Table"), Format.TEXT)
            .add("column", Messages.of("workbook.CheckSheets.column"), Format.TEXT)
            .add("type", Messages.of("common.Type"), Format.TEXT)
            .add("unit", Messages.of("common.Unit"), Format.TEXT)
            .add("private", Messages.of("workbook.CheckSheets.private"), Format.TEXT)
            .add("description", Messages.of("common.Meaning"), Format.WRAPPED)
            .width(100);
    book.add(
        TableSheet.of(
                Messages.of("workbook.CheckSheets.fields"),
                Messages.of("workbook.CheckSheets.every-table-and-column-behind-this"),
                List.of(Messages.of("workbook.CheckSheets.the-tables-stand-in-the-folder")),
                columns,
                lines)
            .withKeyColumns(2));
  }
}
