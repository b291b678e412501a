package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;
import pondtally.reports.view.Setting;

/** Wetland kept, by watershed and by year. */
final class WetlandSheets {

  private static final int MOST_BARS = 24;
  private static final double SAME = 1e-6;

  private WetlandSheets() {}

  static void byWatershed(Book book, TablePackage tables) {
    List<Line> lines =
        Rows.of(tables, "wetland")
            .where("grouping", "watershed")
            .where("year", "all")
            .lines()
            .stream()
            .sorted(
                Comparator.comparing((Line line) -> line.number("acre_years").isEmpty())
                    .thenComparing(line -> line.text("group")))
            .toList();
    Columns columns =
        Columns.of(tables, "wetland")
            .add("group")
            .heading(Messages.of("common.Watershed"))
            .width(26);
    columns.add("sites", "sites_measured", "ponds", "acres_before").total();
    columns.add("acres_retained_verified").total().add("acres_retained_unverified").total();
    columns.add("hectares_retained_verified").live(hectares()).add("acre_years").total();
    columns.add("acre_years_extrapolated").total().add("acres_lost_to_lowering").total();
    int bars = ChartPlan.leading(lines, "acre_years", MOST_BARS);
    book.add(
        TableSheet.of(
                Messages.of("workbook.WetlandSheets.wetland"),
                Messages.of("common.Wetland-kept-by-watershed-whole-record"),
                notes(tables, lines),
                columns,
                lines)
            .withCharts(chart(Messages.of("common.Watershed"), "group", bars)));
  }

  private static List<String> notes(TablePackage tables, List<Line> lines) {
    List<String> notes = new ArrayList<>();
    notes.add(Messages.of("workbook.WetlandSheets.a-pond-counts-once-however-many"));
    double sum = lines.stream().mapToDouble(l -> l.number("acre_years").orElse(0)).sum();
    double all =
        Rows.of(tables, "wetland").where("grouping", "all").where("year", "all").lines().stream()
            .findFirst()
            .map(line -> line.number("acre_years").orElse(sum))
            .orElse(sum);
    if (Math.abs(all - sum) > SAME * Math.max(1, all)) {
      notes.add(Messages.of("workbook.WetlandSheets.watersheds-do-not-add-up-to"));
    }
    return notes;
  }

  static void byYear(Book book, TablePackage tables) {
    List<Line> lines =
        Rows.of(tables, "wetland")
            .where("grouping", "all")
            .only(row -> !row.text("year").equals("all"))
            .lines();
    Columns columns =
        Columns.of(tables, "wetland")
            .add("year")
            .heading(Messages.of("common.Fiscal-year"))
            .width(24);
    columns.add("sites", "sites_measured", "acres_retained_verified", "acres_retained_unverified");
    columns.add("hectares_retained_verified").live(hectares());
    columns.add("acre_years").total().add("acre_years_extrapolated").total();
    book.add(
        TableSheet.of(
                Messages.of("workbook.WetlandSheets.wetland-by-year"),
                Messages.of("common.Wetland-kept-by-fiscal-year"),
                List.of(Messages.of("common.Acres-stand-at-the-end-of")),
                columns,
                lines)
            .withCharts(chart(Messages.of("common.Fiscal-year"), "year", lines.size())));
  }

  private static Formula hectares() {
    return Formula.product(
        List.of("acres_retained_verified"),
        "*Hectares_per_acre",
        OptionalDouble.of(Setting.HECTARES_PER_ACRE));
  }

  private static ChartPlan[] chart(String axis, String category, int count) {
    return count == 0
        ? new ChartPlan[0]
        : new ChartPlan[] {
          new ChartPlan(
              Messages.of(
                  "workbook.WetlandSheets.acre-years-of-wetland-kept-verified",
                  Map.of("toLowerCase", axis.toLowerCase(Locale.ROOT))),
              Messages.of("workbook.WetlandSheets.bars-acre-years-over-verified-working"),
              ChartPlan.Kind.COLUMNS,
              axis,
              Messages.of("common.Acre-years"),
              "#,##0",
              List.of(
                  ChartPlan.Series.of(
                      Messages.of("common.Acre-years"), category, "acre_years", count)))
        };
  }
}
