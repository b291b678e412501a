package pondtally.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;
import pondtally.reports.view.DataSentences;
import pondtally.reports.view.Figure;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** What became of the rows, what was noticed, and who has sent what. */
final class RecordTables {

  private static final List<String> COUNTS =
      List.of("rows_read", "used", "changed", "set_aside", "duplicate");

  private RecordTables() {}

  static Stream<PageTable> of(TablePackage tables) {
    return Stream.of(byKind(tables), issues(tables), account(tables), completeness(tables));
  }

  private static PageTable byKind(TablePackage tables) {
    Rows all = Rows.of(tables, "row_account");
    TreeMap<String, Rows> kinds = new TreeMap<>();
    for (Row row : all.list()) {
      kinds.computeIfAbsent(row.text("table"), table -> all.where("table", table));
    }
    List<List<Cell>> lines = new ArrayList<>();
    kinds.forEach(
        (table, rows) ->
            lines.add(
                sums(
                    table.isEmpty() ? Messages.of("page.RecordTables.sheet-not-recognized") : table,
                    rows)));
    if (!lines.isEmpty()) {
      lines.add(sums(Messages.of("page.RecordTables.all-rows"), all));
    }
    return new PageTable(
        Messages.of("common.What-became-of-every-row-that"),
        List.of(
            Messages.of(
                "page.RecordTables.each-row-ends-in-exactly-one",
                Map.of(
                    "part",
                    DataSentences.hasReasons(tables)
                        ? Messages.of("page.RecordTables.the-reasons-stand-beside-the-rows")
                        : ""))),
        List.of(
            Messages.of("common.Records"),
            Messages.of("page.RecordTables.rows-read"),
            Messages.of("common.Used"),
            Messages.of("common.Used-with-a-change"),
            Messages.of("page.RecordTables.set-aside"),
            Messages.of("page.RecordTables.duplicate")),
        lines);
  }

  private static List<Cell> sums(String name, Rows rows) {
    List<Cell> line = new ArrayList<>();
    line.add(Cell.words(name));
    for (String column : COUNTS) {
      double sum = rows.list().stream().mapToDouble(r -> Line.of(r).number(column).orElse(0)).sum();
      line.add(
          Cell.number(
              new Figure(
                  rows.table(),
                  rows.key(),
                  Figure.How.SUM,
                  List.of(column),
                  NumberText.count((long) sum))));
    }
    return line;
  }

  private static PageTable account(TablePackage tables) {
    return Grid.of(tables, "row_account", "partner", "file", "sheet", "table")
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
        .number(Shape.COUNT, "rows_read", "used")
        .number(Messages.of("common.Used-with-a-change"), Shape.COUNT, "changed")
        .number(Shape.COUNT, "set_aside", "duplicate")
        .build(
            Messages.of("page.RecordTables.rows-read-by-partner-and-file"),
            Rows.of(tables, "row_account"))
        .fold();
  }

  /** Issues counted by what was done and by rule, most serious first. */
  private static PageTable issues(TablePackage tables) {
    Rows all = Rows.of(tables, "data_issues");
    TreeMap<String, Rows> kinds = new TreeMap<>();
    for (Row row : all.list()) {
      String severity = row.text("severity");
      String rule = row.text("rule");
      kinds.computeIfAbsent(
          order(severity) + severity + "\n" + rule,
          k -> all.where("severity", severity).where("rule", rule));
    }
    List<List<Cell>> lines = new ArrayList<>();
    for (Rows rows : kinds.values()) {
      lines.add(
          List.of(
              Cell.words(GroupText.words(rows.key().get("severity"))),
              Cell.words(GroupText.words(rows.key().get("rule"))),
              Cell.rows(rows, NumberText.count(rows.list().size()))));
    }
    return new PageTable(
        Messages.of("common.What-was-noticed-about-rows"),
        List.of(Messages.of("page.RecordTables.set-aside-the-row-is-not")),
        List.of(
            Messages.of("common.What-was-done"),
            Messages.of("page.RecordTables.rule"),
            Messages.of("page.RecordTables.times")),
        2,
        lines,
        lines.size() > PageTable.LONG);
  }

  private static int order(String severity) {
    return switch (severity) {
      case "set-aside" -> 0;
      case "changed" -> 1;
      default -> 2;
    };
  }

  private static PageTable completeness(TablePackage tables) {
    return Grid.of(tables, "completeness", "partner", "year")
        .note(Messages.of("common.A-device-stands-in-each-year"))
        .head(Messages.of("common.Partner"), "partner", text -> text)
        .head(Messages.of("common.Year"), "year", text -> text)
        .words(text -> text, "last_date_sent")
        .number(Shape.COUNT, "devices_expected", "devices_seen", "devices_missing")
        .build(Messages.of("common.Who-has-sent-what-by-year"), Rows.of(tables, "completeness"));
  }
}
