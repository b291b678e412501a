package pondtally.reports.workbook;

import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** How often to visit: the cheapest interval by pipe type, and the curve around it. */
final class IntervalSheets {

  private static final String BOTH = Messages.of("common.Yearly-cost-of-one-device-visits");

  private IntervalSheets() {}

  static void best(Book book, TablePackage tables) {
    Columns columns = Columns.of(tables, "visit_interval").add("grouping", "group", "best_days");
    columns.add("nearly_from_days", "nearly_to_days", "cost_per_year_usd");
    columns.add("at_90", "at_180", "at_365", "visit_usd", "damage_per_year_usd");
    columns.add("fit", "borrowed", "reason");
    book.add(
        TableSheet.of(
                Messages.of("workbook.IntervalSheets.visit-interval"),
                Messages.of("common.Days-between-visits-that-cost-least"),
                List.of(BOTH, Messages.of("workbook.IntervalSheets.the-curve-is-flat-around-the")),
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
            Messages.of("workbook.IntervalSheets.visit-interval-curve"),
            Messages.of("workbook.IntervalSheets.yearly-cost-of-one-device-by"),
            List.of(BOTH),
            columns,
            lines);
    book.add(lines.isEmpty() ? sheet : sheet.withCharts(chart(tables, lines.size())));
  }

  private static ChartPlan chart(TablePackage tables, int points) {
    return new ChartPlan(
        Messages.of("common.Yearly-cost-of-one-device-by"),
        Messages.of("workbook.IntervalSheets.lines-visits-damage-while-failed-unnoticed"),
        ChartPlan.Kind.LINES,
        Messages.of("common.Days-between-visits"),
        (Messages.of(
                "workbook.IntervalSheets.usd-a-year", Map.of("baseYear", tables.fact("base_year"))))
            .trim(),
        "#,##0",
        List.of(
            ChartPlan.Series.of(
                Messages.of("workbook.IntervalSheets.both-together"),
                "days",
                "cost_per_year_usd",
                points),
            ChartPlan.Series.of(Messages.of("common.Visits"), "days", "visits_usd", points),
            ChartPlan.Series.of(
                Messages.of("workbook.IntervalSheets.unnoticed-damage"),
                "days",
                "downtime_usd",
                points)));
  }
}
