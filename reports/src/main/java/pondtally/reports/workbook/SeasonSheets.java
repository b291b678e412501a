package pondtally.reports.workbook;

import java.util.List;
import java.util.OptionalDouble;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** Next season: what it will take, where to drive first, how often to visit. */
final class SeasonSheets {

  private static final String LIMITS =
      "Failures that visits find, if every device is visited as planned. The limits hold them with a chance of 95%, if devices go on failing as they have.";

  private SeasonSheets() {}

  static void forecast(Book book, TablePackage tables) {
    List<Line> lines = Rows.of(tables, "season_forecast").where("grouping", "all").lines();
    Columns columns =
        Columns.of(tables, "season_forecast")
            .add("year")
            .heading("Year ahead")
            .width(24)
            .add("first_day", "last_day", "expected_failures")
            .format(Format.ONE)
            .total()
            .add("lower")
            .heading("Failures, lower limit (95%)")
            .format(Format.COUNT)
            .add("upper")
            .heading("Failures, upper limit (95%)")
            .format(Format.COUNT)
            .add("repairs")
            .format(Format.ONE)
            .total()
            .add("replacements")
            .format(Format.ONE)
            .total()
            .add("visits")
            .format(Format.COUNT)
            .total()
            .add("hours")
            .format(Format.COUNT)
            .total()
            .add("crew_days")
            .live(Formula.product(List.of("hours"), "/8", OptionalDouble.of(1.0 / 8)))
            .format(Format.ONE)
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
                LIMITS,
                "A crew's day is eight hours at devices; travel comes on top. No device is added or retired."),
            columns,
            lines);
    book.add(lines.isEmpty() ? sheet : sheet.withCharts(chart(lines.size())));
  }

  private static ChartPlan chart(int years) {
    return new ChartPlan(
        "Expected failures by year, with 95% limits",
        "Bars: expected failures in each coming year, lines: 95% prediction limits. Figures: the table on this sheet.",
        ChartPlan.Kind.COLUMNS,
        "Year",
        "Failures",
        "0",
        List.of(
            ChartPlan.Series.of("Expected failures", "year", "expected_failures", years)
                .withLimits("minus", "plus")));
  }

  static void byGroup(Book book, TablePackage tables) {
    List<Line> lines =
        Rows.of(tables, "season_forecast")
            .where("year", "1")
            .only(row -> !row.text("grouping").equals("all"))
            .lines();
    Columns columns =
        Columns.of(tables, "season_forecast").add("grouping", "group", "devices", "devices_failed");
    columns.add("expected_failures").format(Format.ONE).add("lower", "upper").format(Format.COUNT);
    columns.add("repairs").format(Format.ONE).add("replacements").format(Format.ONE);
    columns.add("visits", "hours").format(Format.COUNT).add("crew_days").format(Format.ONE);
    columns.add("cost_usd", "cost_lower", "cost_upper", "fit", "borrowed");
    book.add(
        TableSheet.of(
                "Next season by group",
                "What the next year is expected to take, by pipe type and watershed",
                List.of(
                    LIMITS, "Devices stand in a pipe type and in a watershed: do not add the two."),
                columns,
                lines)
            .withKeyColumns(2));
  }

  static void buying(Book book, TablePackage tables) {
    Columns columns = Columns.of(tables, "buying_list").add("pipe", "item", "unit").width(18);
    columns.add("replacements").format(Format.TWO).add("per_replacement").format(Format.TWO);
    columns.add("repairs").format(Format.TWO).add("per_repair").format(Format.TWO);
    columns.add("expected_quantity").format(Format.TWO);
    columns.live(Formula.productSum("replacements", "per_replacement", "repairs", "per_repair"));
    columns.add("buy", "to_have");
    book.add(
        TableSheet.of(
                "Buying list",
                "What to buy for next season's repairs and replacements",
                List.of(
                    "Replacements are built like the devices in service: pipe comes in lengths of 20 ft, n sections take n - 1 couplers, a panel of 16 ft laps by 1/3 ft.",
                    "Buy: what is expected, in whole units. To have: enough in 19 years of 20. What repairs took is counted only where partners keep lines of it."),
                columns,
                Rows.of(tables, "buying_list").lines())
            .withKeyColumns(2));
  }
}
