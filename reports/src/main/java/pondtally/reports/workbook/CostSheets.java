package pondtally.reports.workbook;

import java.util.List;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Groups;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** What was spent, by watershed and by year. */
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

  private static String dollars(TablePackage tables) {
    return " (" + (tables.fact("base_year") + " USD").trim() + ")";
  }
}
