package pondtally.reports.workbook;

import java.util.List;
import java.util.OptionalDouble;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;
import pondtally.reports.view.Setting;

/** Next season: what it will take, where to drive first, how often to visit. */
final class SeasonSheets {

  private SeasonSheets() {}

  static void forecast(Book book, TablePackage tables) {
    List<Line> lines = Rows.of(tables, "season_forecast").where("grouping", "all").lines();
    Columns columns =
        Columns.of(tables, "season_forecast")
            .add("year")
            .width(24)
            .add("expected_failures")
            .format(Format.ONE)
            .total()
            .add("lower")
            .heading("Failures, lower limit (90%)")
            .format(Format.COUNT)
            .add("upper")
            .heading("Failures, upper limit (90%)")
            .format(Format.COUNT)
            .add("visits")
            .format(Format.COUNT)
            .total()
            .add("hours")
            .format(Format.COUNT)
            .total()
            .add("cost_usd")
            .total()
            .add("cost_lower", "cost_upper");
    columns
        .add("minus", "Bar down to lower limit", Format.ONE)
        .live(Formula.difference("expected_failures", "lower"))
        .add("plus", "Bar up to upper limit", Format.ONE)
        .live(Formula.difference("upper", "expected_failures"));
    TableSheet sheet =
        TableSheet.of(
            "Next season",
            "What the next years are expected to take",
            List.of(
                "Limits hold the failures of the year with a chance of 90%, if devices go on failing as they have."),
            columns,
            lines);
    book.add(lines.isEmpty() ? sheet : sheet.withCharts(chart(lines.size())));
  }

  private static ChartPlan chart(int years) {
    return new ChartPlan(
        "Expected failures by year, with 90% limits",
        "Bars: expected failures in each coming year, lines: 90% prediction limits. Figures: the table on this sheet.",
        ChartPlan.Kind.COLUMNS,
        "Year",
        "Failures",
        "0",
        List.of(
            ChartPlan.Series.of("Expected failures", "year", "expected_failures", years)
                .withLimits("minus", "plus")));
  }

  static void worklist(Book book, TablePackage tables) {
    String days = tables.fact("revisit_every_days");
    OptionalDouble part =
        days.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(days) / Setting.DAYS_PER_YEAR);
    Columns columns =
        Columns.of(tables, "worklist")
            .add("rank", "device_id", "site_id", "watershed", "last_visit_on", "days_overdue")
            .add("chance_failed", "properties", "acres", "damage_per_year_usd", "expected_loss_usd")
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
                    "In order of expected loss: chance that the device has failed, times the yearly damage at stake, until the next planned visit. Devices without recorded damage follow, by acres."),
                columns,
                Rows.of(tables, "worklist").lines())
            .withKeyColumns(2));
  }

  static void interval(Book book, TablePackage tables) {
    book.add(
        TableSheet.of(
                "Visit interval",
                "Days between visits that cost least",
                List.of("Cost of visits and of unnoticed downtime together."),
                Columns.of(tables, "visit_interval").addAll(),
                Rows.of(tables, "visit_interval").lines())
            .withKeyColumns(2));
  }
}
