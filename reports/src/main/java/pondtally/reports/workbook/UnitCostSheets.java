package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** What one unit of outcome cost. */
final class UnitCostSheets {

  private static final int MOST_BARS = 24;

  private UnitCostSheets() {}

  /** Cost per protected property, cash alone beside cash with in-kind value. */
  static void perProperty(Book book, TablePackage tables) {
    List<Line> lines = lines(tables);
    Columns columns = propertyColumns(tables);
    book.add(
        TableSheet.of(
                Messages.of("workbook.UnitCostSheets.cost-per-property"),
                Messages.of("common.What-a-protected-property-cost-by"),
                List.of(
                    Messages.of("workbook.UnitCostSheets.only-sites-whose-devices-all-have"),
                    Messages.of("common.A-property-can-lie-in-two")),
                columns,
                lines)
            .withCharts(propertyChart(lines, tables)));
  }

  private static List<Line> lines(TablePackage tables) {
    Rows all =
        Rows.of(tables, "cost_effectiveness").where("year", "all").where("measure", "per-property");
    Map<String, Line> withInKind =
        all.where("grouping", "watershed").where("basis", "cash-and-in-kind").by("group");
    List<Line> lines = new ArrayList<>();
    for (Line cash : all.where("grouping", "watershed").where("basis", "cash").lines()) {
      lines.add(cash.beside("cost_effectiveness", withInKind.get(cash.text("group"))));
    }
    lines.sort(Comparator.comparing(line -> line.number("value_usd").isEmpty()));
    return lines;
  }

  private static Columns propertyColumns(TablePackage tables) {
    Columns columns =
        Columns.of(tables, "cost_effectiveness")
            .add("group")
            .heading(Messages.of("common.Watershed"))
            .width(26)
            .add("denominator")
            .heading(Messages.of("common.Properties-protected-verified"))
            .format(Format.COUNT)
            .add("numerator_usd")
            .heading(
                Messages.of("workbook.UnitCostSheets.cash", Map.of("dollars", dollars(tables))))
            .add("value_usd")
            .heading(
                Messages.of(
                    "workbook.UnitCostSheets.cash-per-property",
                    Map.of("dollars", dollars(tables))))
            .live(Formula.ratio("numerator_usd", "denominator", 1))
            .add("lower", "upper")
            .beside("cost_effectiveness")
            .add("numerator_usd")
            .heading(
                Messages.of(
                    "workbook.UnitCostSheets.cash-and-in-kind", Map.of("dollars", dollars(tables))))
            .add("value_usd")
            .heading(
                Messages.of(
                    "workbook.UnitCostSheets.cash-and-in-kind-per-property",
                    Map.of("dollars", dollars(tables))))
            .live(Formula.ratio("cost_effectiveness.numerator_usd", "denominator", 1))
            .add("lower")
            .heading(Messages.of("workbook.UnitCostSheets.lower-limit-with-in-kind-95"))
            .add("upper")
            .heading(Messages.of("workbook.UnitCostSheets.upper-limit-with-in-kind-95"));
    columns
        .add("minus", Messages.of("common.Bar-down-to-lower-limit"), Format.DOLLARS)
        .live(Formula.difference("value_usd", "lower"))
        .add("plus", Messages.of("common.Bar-up-to-upper-limit"), Format.DOLLARS)
        .live(Formula.difference("upper", "value_usd"));
    return columns;
  }

  private static ChartPlan[] propertyChart(List<Line> lines, TablePackage tables) {
    int count = ChartPlan.leading(lines, "value_usd", MOST_BARS);
    return count == 0
        ? new ChartPlan[0]
        : new ChartPlan[] {
          new ChartPlan(
              Messages.of("workbook.UnitCostSheets.cash-per-protected-property-with-95"),
              Messages.of("workbook.UnitCostSheets.bars-cash-per-protected-property-in"),
              ChartPlan.Kind.COLUMNS,
              Messages.of("common.Watershed"),
              (Messages.of(
                      "workbook.UnitCostSheets.usd", Map.of("baseYear", tables.fact("base_year"))))
                  .trim(),
              "#,##0",
              List.of(
                  ChartPlan.Series.of(
                          Messages.of("workbook.UnitCostSheets.cash-per-property-2"),
                          "group",
                          "value_usd",
                          count)
                      .withLimits("minus", "plus")))
        };
  }

  static void all(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "cost_effectiveness")
            .add("grouping", "group", "year", "measure", "basis", "numerator_usd", "denominator")
            .add("value_usd")
            .format(Format.TWO)
            .live(Formula.ratio("numerator_usd", "denominator", 1))
            .add("lower")
            .format(Format.TWO)
            .add("upper")
            .format(Format.TWO)
            .add("clusters", "clusters_left_out", "resamples", "undefined_resamples");
    book.add(
        TableSheet.of(
                Messages.of("workbook.UnitCostSheets.unit-costs"),
                Messages.of("workbook.UnitCostSheets.what-one-unit-of-outcome-cost"),
                List.of(
                    Messages.of("workbook.UnitCostSheets.measures-per-property-property-year-acre"),
                    Messages.of("workbook.UnitCostSheets.site-clusters-with-a-device-whose")),
                columns,
                Rows.of(tables, "cost_effectiveness").lines())
            .withKeyColumns(2));
  }

  private static String dollars(TablePackage tables) {
    return " ("
        + (Messages.of("workbook.UnitCostSheets.usd", Map.of("baseYear", tables.fact("base_year"))))
            .trim()
        + ")";
  }
}
