package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
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
                "Cost per property",
                "What a protected property cost, by watershed",
                List.of(
                    "Only sites whose devices all have cost records count. A property behind two devices counts once.",
                    "A property can lie in two watersheds, so nothing is added up here."),
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
            .heading("Watershed")
            .width(26)
            .add("denominator")
            .heading("Properties protected, verified")
            .format(Format.COUNT)
            .add("numerator_usd")
            .heading("Cash" + dollars(tables))
            .add("value_usd")
            .heading("Cash per property" + dollars(tables))
            .live(Formula.ratio("numerator_usd", "denominator", 1))
            .add("lower", "upper")
            .beside("cost_effectiveness")
            .add("numerator_usd")
            .heading("Cash and in kind" + dollars(tables))
            .add("value_usd")
            .heading("Cash and in kind per property" + dollars(tables))
            .live(Formula.ratio("cost_effectiveness.numerator_usd", "denominator", 1))
            .add("lower")
            .heading("Lower limit with in kind (95%)")
            .add("upper")
            .heading("Upper limit with in kind (95%)");
    columns
        .add("minus", "Bar down to lower limit", Format.DOLLARS)
        .live(Formula.difference("value_usd", "lower"))
        .add("plus", "Bar up to upper limit", Format.DOLLARS)
        .live(Formula.difference("upper", "value_usd"));
    return columns;
  }

  private static ChartPlan[] propertyChart(List<Line> lines, TablePackage tables) {
    int count = ChartPlan.leading(lines, "value_usd", MOST_BARS);
    return count == 0
        ? new ChartPlan[0]
        : new ChartPlan[] {
          new ChartPlan(
              "Cash per protected property, with 95% limits",
              "Bars: cash per protected property in each watershed, lines: 95% limits. Figures: the table on this sheet.",
              ChartPlan.Kind.COLUMNS,
              "Watershed",
              (tables.fact("base_year") + " USD").trim(),
              "#,##0",
              List.of(
                  ChartPlan.Series.of("Cash per property", "group", "value_usd", count)
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
                "Unit costs",
                "What one unit of outcome cost",
                List.of(
                    "Measures: per property, property-year, acre-year, removal avoided and device-year in working order. Filter to one before comparing.",
                    "Site clusters with a device whose cost is not recorded are left out of cost and outcome alike; their number is shown."),
                columns,
                Rows.of(tables, "cost_effectiveness").lines())
            .withKeyColumns(2));
  }

  private static String dollars(TablePackage tables) {
    return " (" + (tables.fact("base_year") + " USD").trim() + ")";
  }
}
