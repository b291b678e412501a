package pondtally.reports.workbook;

import java.util.List;
import java.util.OptionalDouble;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** Next season: what it will take, where to drive first, how often to visit. */
final class SeasonSheets {

  private static final String LIMITS =
      Messages.of("workbook.SeasonSheets.failures-that-visits-find-if-every");

  private SeasonSheets() {}

  static void forecast(Book book, TablePackage tables) {
    List<Line> lines = Rows.of(tables, "season_forecast").where("grouping", "all").lines();
    Columns columns =
        Columns.of(tables, "season_forecast")
            .add("year")
            .heading(Messages.of("workbook.SeasonSheets.year-ahead"))
            .width(24)
            .add("first_day", "last_day", "expected_failures")
            .format(Format.ONE)
            .total()
            .add("lower")
            .heading(Messages.of("workbook.SeasonSheets.failures-lower-limit-95"))
            .format(Format.COUNT)
            .add("upper")
            .heading(Messages.of("workbook.SeasonSheets.failures-upper-limit-95"))
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
        .add("minus", Messages.of("common.Bar-down-to-lower-limit"), Format.ONE)
        .live(Formula.difference("expected_failures", "lower"))
        .add("plus", Messages.of("common.Bar-up-to-upper-limit"), Format.ONE)
        .live(Formula.difference("upper", "expected_failures"));
    TableSheet sheet =
        TableSheet.of(
            Messages.of("common.Next-season"),
            Messages.of("common.What-the-next-years-are-expected"),
            List.of(LIMITS, Messages.of("workbook.SeasonSheets.a-crew-s-day-is-eight")),
            columns,
            lines);
    book.add(lines.isEmpty() ? sheet : sheet.withCharts(chart(lines.size())));
  }

  private static ChartPlan chart(int years) {
    return new ChartPlan(
        Messages.of("workbook.SeasonSheets.expected-failures-by-year-with-95"),
        Messages.of("workbook.SeasonSheets.bars-expected-failures-in-each-coming"),
        ChartPlan.Kind.COLUMNS,
        Messages.of("workbook.SeasonSheets.year-ahead"),
        Messages.of("common.Failures"),
        "0",
        List.of(
            ChartPlan.Series.of(
                    Messages.of("common.Expected-failures"), "year", "expected_failures", years)
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
    columns.add("expected_failures").format(Format.ONE).add("lower").format(Format.COUNT);
    columns.add("upper").format(Format.COUNT);
    columns.add("repairs").format(Format.ONE).add("replacements").format(Format.ONE);
    columns.add("visits").format(Format.COUNT).add("hours").format(Format.COUNT);
    columns.add("crew_days").format(Format.ONE);
    columns.add("cost_usd", "cost_lower", "cost_upper", "fit", "borrowed");
    book.add(
        TableSheet.of(
                Messages.of("workbook.SeasonSheets.next-season-by-group"),
                Messages.of("workbook.SeasonSheets.what-the-next-year-is-expected"),
                List.of(LIMITS, Messages.of("workbook.SeasonSheets.devices-stand-in-a-pipe-type")),
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
                Messages.of("workbook.SeasonSheets.buying-list"),
                Messages.of("common.What-to-buy-for-next-season"),
                List.of(
                    Messages.of("workbook.SeasonSheets.replacements-are-built-like-the-devices"),
                    Messages.of("workbook.SeasonSheets.buy-what-is-expected-in-whole")),
                columns,
                Rows.of(tables, "buying_list").lines())
            .withKeyColumns(2));
  }
}
