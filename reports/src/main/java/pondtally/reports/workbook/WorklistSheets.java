package pondtally.reports.workbook;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;
import pondtally.reports.view.Setting;

/** Where to drive first: the whole list, and the head of it on two pages for crews. */
final class WorklistSheets {

  /** Lines of two upright pages that can still be read at arm's length. */
  private static final int PRINTED = 90;

  private static final int PAGES = 2;
  private static final String TO_FILL_IN = " ";

  private WorklistSheets() {}

  static void all(Book book, TablePackage tables) {
    String days = tables.fact("revisit_every_days");
    OptionalDouble part =
        days.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(days) / Setting.DAYS_PER_YEAR);
    Columns columns =
        Columns.of(tables, "worklist")
            .add("rank", "device_id", "site_id", "watershed", "crew", "block", "last_visit_on")
            .add("last_known_good_on", "days_overdue", "chance_failed", "properties", "acres")
            .add("damage_per_year_usd", "expected_loss_usd")
            .live(
                Formula.product(
                    List.of("chance_failed", "damage_per_year_usd"),
                    "*Revisit_every_days/Days_per_year",
                    part))
            .total();
    book.add(
        TableSheet.of(
                Messages.of("workbook.WorklistSheets.worklist"),
                Messages.of("common.Where-to-drive-first"),
                List.of(Messages.of("common.Devices-never-visited-come-first-then")),
                columns,
                Rows.of(tables, "worklist").lines())
            .withKeyColumns(2));
  }

  static void printed(Book book, TablePackage tables) {
    List<Line> list = Rows.of(tables, "worklist").lines();
    List<Line> first =
        list.stream()
            .limit(PRINTED)
            .sorted(
                Comparator.comparing((Line line) -> text(tables, line, "watershed"))
                    .thenComparing(line -> text(tables, line, "crew"))
                    .thenComparing(line -> line.number("rank").orElse(0)))
            .map(line -> line.with(Map.of("done", TO_FILL_IN)))
            .toList();
    Columns columns =
        Columns.of(tables, "worklist")
            .add("watershed", "crew", "rank", "device_id", "site_id", "last_visit_on")
            .add("days_overdue", "chance_failed", "properties", "expected_loss_usd")
            .add("done", Messages.of("workbook.WorklistSheets.seen-on-found-done"), Format.TEXT)
            .width(26);
    book.add(
        TableSheet.of(
                Messages.of("workbook.WorklistSheets.worklist-to-print"),
                Messages.of("common.Where-to-drive-first-by-watershed"),
                List.of(
                    first.size() < list.size()
                        ? Messages.of(
                            "workbook.WorklistSheets.the-first-of-devices-of-sheet",
                            Map.of(
                                "size",
                                String.valueOf(first.size()),
                                "size2",
                                String.valueOf(list.size())))
                        : Messages.of(
                            "workbook.WorklistSheets.every-device-of-sheet-worklist-rank"),
                    Messages.of("workbook.WorklistSheets.breaching-a-dam-and-working-in")),
                columns,
                first)
            .withKeyColumns(2)
            .onPages(PAGES));
  }

  private static String text(TablePackage tables, Line line, String column) {
    boolean there =
        tables
            .table("worklist")
            .map(table -> table.fields().stream().anyMatch(f -> f.name().equals(column)))
            .orElse(false);
    return there ? line.text(column) : "";
  }
}
