package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Groups;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** What was spent and what one unit of outcome cost. */
final class CostSheets {

  private static final int MOST_BARS = 24;
  private static final String KINDS =
      "Cash and in-kind value stand apart. A device without cost records is unknown, not free: its estimate is never added.";

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
                .heading("Watershed")
                .width(26)
                .add("sites", "devices")
                .total()
                .add("devices_costed")
                .total());
    columns
        .add("per_device", "Cost per device with records" + dollars(tables), Format.DOLLARS)
        .live(Formula.ratio("total_usd", "devices_costed", 1));
    book.add(
        TableSheet.of(
                "Cost",
                "What was spent, by watershed, whole record",
                List.of(KINDS, "Watersheds stand in order of the devices they hold."),
                columns,
                lines)
            .withCharts(
                chart(
                    "Recorded cost by watershed",
                    "Watershed",
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
    Columns columns = Columns.of(tables, "costs").add("year").heading("Fiscal year").width(24);
    book.add(
        TableSheet.of(
                "Cost by year",
                "What was spent, by fiscal year",
                List.of(KINDS, "A fiscal year is named by the calendar year in which it ends."),
                amounts(columns),
                lines)
            .withCharts(
                chart(
                    "Recorded cost by fiscal year", "Fiscal year", "year", lines.size(), tables)));
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
          title
              + ": cash for building, cash for upkeep and in-kind value on top of each other. Figures: the table on this sheet.",
          ChartPlan.Kind.STACKED,
          axis,
          (tables.fact("base_year") + " USD").trim(),
          "#,##0",
          List.of(
              ChartPlan.Series.of("Cash, building", category, "build_usd", count),
              ChartPlan.Series.of("Cash, upkeep", category, "upkeep_usd", count),
              ChartPlan.Series.of("In kind", category, "in_kind_usd", count)))
    };
  }

  /** Cost per protected property, cash alone beside cash with in-kind value. */
  static void perProperty(Book book, TablePackage tables) {
    Rows all =
        Rows.of(tables, "cost_effectiveness").where("year", "all").where("measure", "per-property");
    Map<String, Line> withInKind =
        all.where("grouping", "watershed").where("basis", "cash-and-in-kind").by("group");
    List<Line> lines = new ArrayList<>();
    for (Line cash : all.where("grouping", "watershed").where("basis", "cash").lines()) {
      lines.add(cash.beside("cost_effectiveness", withInKind.get(cash.text("group"))));
    }
    lines.sort(Comparator.comparing(line -> line.number("value_usd").isEmpty()));
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

  static void unitCosts(Book book, TablePackage tables) {
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

  static void benefit(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "benefit_cost")
            .add("grouping", "group", "basis")
            .add("discount_rate")
            .format(Format.SHARE)
            .add("horizon_years", "cost_usd", "benefit_usd")
            .add("net_usd")
            .live(Formula.difference("benefit_usd", "cost_usd"))
            .add("ratio")
            .live(Formula.ratio("benefit_usd", "cost_usd", 1))
            .add("ratio_lower", "ratio_upper", "chance_above_one", "payback_year")
            .add(
                "equivalent_annual_usd", "break_even_damage_usd", "sites", "sites_left_out", "fit");
    book.add(
        TableSheet.of(
                "Benefit and cost",
                "Benefit against the alternative",
                List.of(
                    "To date: what was spent against damage that verified working time avoided. Projected: one new device, looked ahead. The two are never mixed.",
                    "The share of resamples above 1 holds the assumptions fixed; it is not the chance that the program pays."),
                columns,
                Rows.of(tables, "benefit_cost").lines())
            .withKeyColumns(2));
  }

  static void sensitivity(Book book, TablePackage tables) {
    Columns columns = Columns.of(tables, "sensitivity").addAll();
    columns
        .add("swing", "Ratio, high less low", Format.TWO)
        .live(Formula.difference("ratio_high", "ratio_low"));
    book.add(
        TableSheet.of(
            "Sensitivity",
            "How the benefit-cost ratio moves with each assumption",
            List.of("One assumption is moved at a time; the others stay at the value used."),
            columns,
            Rows.of(tables, "sensitivity").lines()));
  }

  static void funding(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "funding")
            .add("funder", "period_start", "period_end")
            .add("cash_usd")
            .total()
            .add("in_kind_usd")
            .total()
            .add("volunteer_usd")
            .total()
            .add("award_usd")
            .total();
    columns
        .add("spent_share", "Cash as share of award", Format.SHARE)
        .live(Formula.ratio("cash_usd", "award_usd", 1));
    columns.add("match_required_usd").total().add("match_met");
    book.add(
        TableSheet.of(
            "Who paid",
            "Who paid, in dollars of the day",
            List.of(
                "A volunteer hour's published rate is not by itself allowable match under a federal award (2 CFR 200.306): ask the funder.",
                "Match counts in-kind, volunteer and other-source cash claimed against the award."),
            columns,
            Rows.of(tables, "funding").lines()));
  }

  private static String dollars(TablePackage tables) {
    return " (" + (tables.fact("base_year") + " USD").trim() + ")";
  }
}
