package pondtally.reports.workbook;

import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Groups;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** What was spent, by watershed and by year. */
final class CostSheets {

  private static final int MOST_BARS = 24;
  private static final String KINDS = Messages.of("common.Cash-and-in-kind-value-stand");

  private CostSheets() {}

  static void byWatershed(Book book, TablePackage tables) {
    List<Line> lines =
        Line.of(
            Rows.of(tables, "costs")
                .where("grouping", "watershed")
                .where("year", "all")
                .list()
                .stream()
                .sorted(Groups.bySize())
                .toList());
    Columns columns =
        amounts(
            Columns.of(tables, "costs")
                .add("group")
                .heading(Messages.of("common.Watershed"))
                .width(26)
                .add("sites", "devices")
                .total()
                .add("devices_costed")
                .total());
    columns
        .add(
            "per_device",
            Messages.of(
                "workbook.CostSheets.cost-per-device-with-records",
                Map.of("dollars", dollars(tables))),
            Format.DOLLARS)
        .live(Formula.ratio("total_usd", "devices_costed", 1));
    book.add(
        TableSheet.of(
                Messages.of("common.Cost"),
                Messages.of("common.What-was-spent-by-watershed-whole"),
                List.of(KINDS, Messages.of("workbook.CostSheets.watersheds-stand-in-order-of-the")),
                columns,
                lines)
            .withCharts(
                chart(
                    Messages.of("workbook.CostSheets.recorded-cost-by-watershed"),
                    Messages.of("common.Watershed"),
                    "group",
                    Math.min(MOST_BARS, lines.size()),
                    tables)));
  }

  static void byYear(Book book, TablePackage tables) {
    List<Line> lines =
        Rows.of(tables, "costs")
            .where("grouping", "all")
            .only(row -> !row.text("year").equals("all"))
            .lines();
    Columns columns =
        Columns.of(tables, "costs")
            .add("year")
            .heading(Messages.of("common.Fiscal-year"))
            .width(24);
    book.add(
        TableSheet.of(
                Messages.of("workbook.CostSheets.cost-by-year"),
                Messages.of("common.What-was-spent-by-fiscal-year"),
                List.of(KINDS, Messages.of("common.A-fiscal-year-is-named-by")),
                amounts(columns),
                lines)
            .withCharts(
                chart(
                    Messages.of("workbook.CostSheets.recorded-cost-by-fiscal-year"),
                    Messages.of("common.Fiscal-year"),
                    "year",
                    lines.size(),
                    tables)));
  }

  private static Columns amounts(Columns columns) {
    return columns
        .add("build_usd")
        .total()
        .add("upkeep_usd")
        .total()
        .add("in_kind_usd")
        .total()
        .add("total_usd")
        .live(Formula.sum("build_usd", "upkeep_usd", "in_kind_usd"))
        .total()
        .add("lines_before_index", "lines_index_provisional", "index_note")
        .add("estimated_usd")
        .total()
        .add("volunteer_hours")
        .total();
  }

  private static ChartPlan[] chart(
      String title, String axis, String category, int count, TablePackage tables) {
    if (count == 0) {
      return new ChartPlan[0];
    }
    return new ChartPlan[] {
      new ChartPlan(
          title,
          Messages.of(
              "workbook.CostSheets.cash-for-building-cash-for-upkeep", Map.of("title", title)),
          ChartPlan.Kind.STACKED,
          axis,
          (Messages.of("workbook.CostSheets.usd", Map.of("baseYear", tables.fact("base_year"))))
              .trim(),
          "#,##0",
          List.of(
              ChartPlan.Series.of(
                  Messages.of("workbook.CostSheets.cash-building"), category, "build_usd", count),
              ChartPlan.Series.of(
                  Messages.of("workbook.CostSheets.cash-upkeep"), category, "upkeep_usd", count),
              ChartPlan.Series.of(Messages.of("common.In-kind"), category, "in_kind_usd", count)))
    };
  }

  private static String dollars(TablePackage tables) {
    return " ("
        + (Messages.of("workbook.CostSheets.usd", Map.of("baseYear", tables.fact("base_year"))))
            .trim()
        + ")";
  }
}
