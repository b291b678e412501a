package pondtally.reports.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;
import pondtally.reports.view.ChangedFigure;
import pondtally.reports.view.Figure;
import pondtally.reports.view.Rows;

/** What differs between two runs, as tables of a page. */
final class ChangeTables {

  /** A page with more lines is of no use to a reader; the workbook has them all. */
  private static final int MOST = 400;

  private static final Messages SAY = Messages.reports();

  private ChangeTables() {}

  static boolean isWhole(Row row) {
    return row.text("grouping").equals("all") || row.text("grouping").isEmpty();
  }

  static boolean isPipeOrWatershed(Row row) {
    return Set.of("pipe", "watershed").contains(row.text("grouping"));
  }

  /** Figures published before that differ today. */
  static Stream<PageTable> restated(TablePackage tables) {
    return Stream.of(
        figures(
            tables,
            "restated",
            SAY.text("published.table.restated"),
            row -> row.text("series").equals("restated") && isWhole(row)),
        figures(
            tables,
            "restated",
            SAY.text("published.table.todate"),
            row -> row.text("series").equals("to-date")));
  }

  /** Figures that differ. */
  static PageTable figures(TablePackage tables, String name, String caption, Predicate<Row> which) {
    Rows all = Rows.of(tables, name);
    List<List<Cell>> lines = new ArrayList<>();
    List<Row> wanted = all.list().stream().filter(which).toList();
    wanted.stream().limit(MOST).forEach(row -> lines.add(figure(name, row)));
    List<String> notes =
        wanted.size() > MOST ? List.of(SAY.text("compare.table.groups.more")) : List.of();
    return new PageTable(
        caption,
        notes,
        List.of(
            Messages.of("common.Table"),
            Messages.of("common.Group"),
            Messages.of("page.ChangeTables.row"),
            Messages.of("common.Figure"),
            Messages.of("page.ChangeTables.before"),
            Messages.of("page.ChangeTables.now"),
            Messages.of("page.ChangeTables.difference"),
            Messages.of("page.ChangeTables.relative"),
            Messages.of("page.ChangeTables.from-what")),
        4,
        lines,
        lines.size() > PageTable.LONG);
  }

  private static List<Cell> figure(String name, Row row) {
    Map<String, String> key = key(row);
    String column = row.text("column");
    String group = GroupText.label(row.text("grouping"), row.text("group"));
    return List.of(
        Cell.words(row.text("table").replace('_', ' ')),
        Cell.words(row.text("grouping").isEmpty() ? "" : group),
        Cell.words(RowKey.words(row.text("row"))),
        Cell.words(
            column.isEmpty()
                ? Messages.of(
                    "page.ChangeTables.row-kind", Map.of("kind", GroupText.words(row.text("kind"))))
                : RowKey.column(column)),
        side(name, key, row, "before"),
        side(name, key, row, "after"),
        difference(name, key, row),
        relative(name, key, row),
        Cell.words(row.text("why")));
  }

  private static Map<String, String> key(Row row) {
    Map<String, String> key = new LinkedHashMap<>();
    for (String column :
        List.of("published", "table", "grouping", "group", "row", "column", "kind")) {
      if (row.has(column)) {
        key.put(column, row.text(column));
      }
    }
    return key;
  }

  private static Cell side(String name, Map<String, String> key, Row row, String side) {
    OptionalDouble value = row.number(side);
    if (value.isPresent()) {
      String printed = ChangedFigure.print(value, row.number("difference"), row);
      return Cell.number(new Figure(name, key, Figure.How.CELL, List.of(side), printed));
    }
    if (row.text("column").isEmpty()) {
      return Cell.words("");
    }
    String text = row.text(side + "_text");
    return Cell.words(text.isEmpty() ? Missing.NOT_KNOWN : text);
  }

  private static Cell difference(String name, Map<String, String> key, Row row) {
    return row.number("difference").isEmpty()
        ? Cell.words("")
        : Cell.number(
            new Figure(
                name, key, Figure.How.CELL, List.of("difference"), ChangedFigure.difference(row)));
  }

  private static Cell relative(String name, Map<String, String> key, Row row) {
    return row.number("relative").isEmpty()
        ? Cell.words("")
        : Cell.number(
            new Figure(
                name,
                key,
                Figure.How.CELL,
                List.of("relative"),
                signedPercent(row.number("relative").getAsDouble())));
  }

  private static String signedPercent(double share) {
    return (share > 0 ? "+" : "") + NumberText.decimal(100 * share, 1) + "%";
  }

  static PageTable settings(TablePackage tables) {
    return Grid.of(tables, "changed_settings", "setting")
        .head(Messages.of("common.Setting"), "setting", pondtally.reports.view.Setting::label)
        .words(
            text -> text.isEmpty() ? Messages.of("page.ChangeTables.not-set") : text,
            "before",
            "after")
        .words(text -> text, "moves")
        .build(SAY.text("compare.table.settings"), Rows.of(tables, "changed_settings"));
  }

  static PageTable rows(TablePackage tables) {
    return Grid.of(tables, "changed_rows", "partner", "file", "sheet", "table")
        .head(Messages.of("common.Partner"), "partner", text -> text)
        .head(Messages.of("common.File"), "file", text -> text)
        .head(
            Messages.of("common.Sheet"),
            "sheet",
            text -> text.isEmpty() ? Messages.of("common.text-file") : text)
        .head(
            Messages.of("common.Records"),
            "table",
            text -> text.isEmpty() ? Messages.of("common.not-recognized") : text)
        .words(GroupText::words, "kind")
        .number(Shape.COUNT, "rows_before", "rows_after", "counted_before", "counted_after")
        .number(Shape.COUNT, "set_aside_before", "set_aside_after")
        .build(SAY.text("compare.table.rows"), Rows.of(tables, "changed_rows"));
  }

  static PageTable files(TablePackage tables) {
    return Grid.of(tables, "changed_files", "file")
        .head(Messages.of("common.File"), "file", text -> text)
        .words(text -> text, "kind")
        .build(SAY.text("compare.table.files"), Rows.of(tables, "changed_files"));
  }

  static PageTable records(TablePackage tables) {
    Rows all = Rows.of(tables, "changed_records");
    return Grid.of(tables, "changed_records", "subject", "id")
        .head(Messages.of("common.Subject"), "subject", text -> text)
        .head(Messages.of("page.ChangeTables.id"), "id", text -> text)
        .words(text -> text, "watershed", "kind", "what")
        .build(SAY.text("compare.table.records"), all)
        .fold();
  }
}
