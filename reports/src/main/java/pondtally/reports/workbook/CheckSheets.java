package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.Field;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
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
            .heading("Used with a change")
            .total()
            .add("set_aside")
            .total()
            .add("duplicate")
            .total();
    columns
        .add("balance", "Rows not accounted for", Format.COUNT)
        .live(balance())
        .add("share", "Share set aside", Format.SHARE)
        .live(Formula.ratio("set_aside", "rows_read", 1));
    book.add(
        TableSheet.of(
            "Data checks",
            "What became of every row that was read",
            List.of(
                "Each row ends in exactly one of: used, used with a change, set aside, duplicate."
                    + (DataSentences.hasReasons(tables)
                        ? " The reasons are on sheet Data issues; each partner's rows are in fix-list.xlsx."
                        : "")),
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
            .heading("Partner's heading")
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
                "Data issues",
                "What was noticed about rows",
                List.of(
                    "set-aside: the row is not counted; changed: counted with a changed or dropped value; notice: counted as it stands. – in the row column: the whole column, sheet or file is meant."),
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
        .add("share", "Share visited", Format.SHARE)
        .live(Formula.ratio("devices_seen", "devices_expected", 1));
    book.add(
        TableSheet.of(
                "Completeness",
                "Who has sent what, by year",
                List.of(
                    "A device stands in each year it was in service, so nothing is added up here."),
                columns,
                Rows.of(tables, "completeness").lines())
            .withKeyColumns(2));
  }

  static void methods(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "")
            .add("subject", "Subject", Format.TEXT)
            .add("method", "How it is computed", Format.WRAPPED)
            .width(95)
            .add("source", "Source", Format.WRAPPED)
            .width(45);
    book.add(
        TableSheet.of(
            "Methods",
            "How the figures are made",
            List.of("Limits are 95% unless a heading says otherwise."),
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
                    "unit", field.unit().isEmpty() ? "none" : field.unit(),
                    "private", field.isPrivate() ? "yes" : "no",
                    "description", field.description())));
      }
    }
    Columns columns =
        Columns.of(tables, "")
            .add("table", "Table", Format.TEXT)
            .add("column", "Column", Format.TEXT)
            .add("type", "Type", Format.TEXT)
            .add("unit", "Unit", Format.TEXT)
            .add("private", "Private", Format.TEXT)
            .add("description", "Meaning", Format.WRAPPED)
            .width(100);
    book.add(
        TableSheet.of(
                "Fields",
                "Every table and column behind this workbook",
                List.of("The tables stand in the folder tables/ as CSV files, one a name."),
                columns,
                lines)
            .withKeyColumns(2));
  }
}
