package pondtally.reports.workbook;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pondtally.reports.table.TablePackage;
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
                "Worklist",
                "Where to drive first",
                List.of(
                    "Devices never visited come first. Then by expected loss: chance that the device has failed since it was last known to work, times the yearly damage at stake, until the next planned visit. Devices without recorded damage follow, by chance times acres."),
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
            .add("done", "Seen on, found, done", Format.TEXT)
            .width(26);
    book.add(
        TableSheet.of(
                "Worklist to print",
                "Where to drive first, by watershed and crew",
                List.of(
                    first.size() < list.size()
                        ? "The first "
                            + first.size()
                            + " of "
                            + list.size()
                            + " devices of sheet Worklist. Rank 1 is first of all."
                        : "Every device of sheet Worklist. Rank 1 is first of all.",
                    "Breaching a dam and working in a pond can kill. Go in pairs, with the landowner's leave and the permit."),
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
