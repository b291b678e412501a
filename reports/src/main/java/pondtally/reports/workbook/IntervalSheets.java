package pondtally.reports.workbook;

import java.util.List;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** How often to visit: the cheapest interval by pipe type, and the curve around it. */
final class IntervalSheets {

  private static final String BOTH =
      "Yearly cost of one device: visits, and damage while it lies failed unnoticed. Repairs are left out: they hardly depend on the interval.";

  private IntervalSheets() {}

  static void best(Book book, TablePackage tables) {
    Columns columns = Columns.of(tables, "visit_interval").add("grouping", "group", "best_days");
    columns.add("nearly_from_days", "nearly_to_days", "cost_per_year_usd");
    columns.add("at_90", "at_180", "at_365", "visit_usd", "damage_per_year_usd");
    columns.add("fit", "borrowed", "reason");
    book.add(
        TableSheet.of(
                "Visit interval",
                "Days between visits that cost least",
                List.of(
                    BOTH,
                    "The curve is flat around the best: any interval between \"from\" and \"to\" costs at most 5% more."),
                columns,
                Rows.of(tables, "visit_interval").lines())
            .withKeyColumns(2));
  }

  static void curve(Book book, TablePackage tables) {
    List<Line> lines = Rows.of(tables, "visit_interval_curve").where("grouping", "all").lines();
    Columns columns = Columns.of(tables, "visit_interval_curve").add("days").width(24);
    columns.add("visits_usd", "downtime_usd", "cost_per_year_usd");
    columns.live(Formula.sum("visits_usd", "downtime_usd")).add("downtime_days_per_year");
    TableSheet sheet =
        TableSheet.of(
            "Visit interval curve",
            "Yearly cost of one device by days between visits, all pipe types",
            List.of(BOTH),
            columns,
            lines);
    book.add(lines.isEmpty() ? sheet : sheet.withCharts(chart(tables, lines.size())));
  }

  private static ChartPlan chart(TablePackage tables, int points) {
    return new ChartPlan(
        "Yearly cost of one device by days between visits",
        "Lines: visits, damage while failed unnoticed, and both together. Figures: the table on this sheet.",
        ChartPlan.Kind.LINES,
        "Days between visits",
        (tables.fact("base_year") + " USD a year").trim(),
        "#,##0",
        List.of(
            ChartPlan.Series.of("Both together", "days", "cost_per_year_usd", points),
            ChartPlan.Series.of("Visits", "days", "visits_usd", points),
            ChartPlan.Series.of("Unnoticed damage", "days", "downtime_usd", points)));
  }
}
