package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Groups;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;
import pondtally.reports.view.SurvivalMethod;

/** Failure rates: watersheds, pipe types, and the other groups of devices. */
final class RateSheets {

  private static final int MOST_BARS = 24;
  private static final String RATE = "per_100_device_years";
  private static final String ORDER =
      Messages.of("workbook.RateSheets.groups-stand-in-order-of-size");

  private RateSheets() {}

  static void watersheds(Book book, TablePackage tables) {
    Columns columns =
        rates(tables, Messages.of("common.Watershed"))
            .add("expected")
            .format(Format.ONE)
            .total()
            .add("shrunken", "funnel_lower", "funnel_upper", "outside_funnel");
    List<Line> lines = lines(tables, "watershed");
    book.add(
        TableSheet.of(
                Messages.of("workbook.RateSheets.watersheds"),
                Messages.of("common.Failures-by-watershed"),
                List.of(ORDER, Messages.of("common.Expected-failures-allow-for-pipe-type")),
                endings(columns),
                lines)
            .withCharts(
                chart(
                    tables,
                    lines,
                    Messages.of("workbook.RateSheets.failure-rate-by-watershed-with-95"),
                    Messages.of("common.Watershed"))));
  }

  static void pipes(Book book, TablePackage tables) {
    Map<String, Line> survival =
        Rows.of(tables, "survival_summary")
            .where("grouping", "pipe")
            .where("method", SurvivalMethod.of())
            .by("group");
    List<Line> lines =
        lines(tables, "pipe").stream()
            .map(line -> line.beside("survival_summary", survival.get(line.text("group"))))
            .toList();
    Columns columns = rates(tables, Messages.of("common.Pipe-type")).beside("survival_summary");
    SurvivalSheets.horizons(columns, lines, "survival_summary.")
        .add("median_years", "median_lower", "median_upper");
    book.add(
        TableSheet.of(
                Messages.of("workbook.RateSheets.pipe-types"),
                Messages.of("workbook.RateSheets.pipe-types-compared"),
                List.of(ORDER, Messages.of("common.Comparisons-are-observational-crews-sites-and")),
                endings(columns),
                lines)
            .withCharts(
                chart(
                    tables,
                    lines,
                    Messages.of("workbook.RateSheets.failure-rate-by-pipe-type-with"),
                    Messages.of("common.Pipe-type"))));
  }

  static void others(Book book, TablePackage tables) {
    List<Line> lines = new ArrayList<>();
    for (String grouping : List.of("kind", "setting", "build", "cohort", "crew")) {
      lines.addAll(lines(tables, grouping));
    }
    Columns columns =
        Columns.of(tables, "failure_rates")
            .add("grouping", "group", "devices", "failures", "device_years", RATE)
            .live(Formula.ratio("failures", "device_years", 100))
            .add("lower", "upper")
            .add("note", Messages.of("common.Note"), Format.TEXT);
    book.add(
        TableSheet.of(
                Messages.of("workbook.RateSheets.other-groups"),
                Messages.of("workbook.RateSheets.failures-by-kind-of-device-setting"),
                List.of(
                    Messages.of("workbook.RateSheets.the-same-devices-come-again-under"), ORDER),
                columns,
                lines)
            .withKeyColumns(2));
  }

  private static Columns rates(TablePackage tables, String heading) {
    return Columns.of(tables, "failure_rates")
        .add("group")
        .heading(heading)
        .width(26)
        .add("devices")
        .total()
        .add("failures")
        .total()
        .add("device_years")
        .total()
        .add(RATE)
        .live(Formula.ratio("failures", "device_years", 100))
        .add("lower", "upper");
  }

  private static Columns endings(Columns columns) {
    return columns
        .add("note", Messages.of("common.Note"), Format.TEXT)
        .add("minus", Messages.of("common.Bar-down-to-lower-limit"), Format.ONE)
        .live(Formula.difference(RATE, "lower"))
        .add("plus", Messages.of("common.Bar-up-to-upper-limit"), Format.ONE)
        .live(Formula.difference("upper", RATE));
  }

  private static List<Line> lines(TablePackage tables, String grouping) {
    return Rows.of(tables, "failure_rates")
        .where("grouping", grouping)
        .where("year", "all")
        .list()
        .stream()
        .sorted(Groups.bySize())
        .map(row -> Line.of(row).with(Map.of("note", note(row, tables))))
        .toList();
  }

  private static String note(Row row, TablePackage tables) {
    String reason = row.text("withheld_reason");
    if (!reason.isEmpty()) {
      return reason;
    }
    if (Line.of(row).number(RATE).isEmpty()) {
      return Messages.of("workbook.RateSheets.no-rate-nothing-followed-long-enough");
    }
    return Groups.isSmall(Line.of(row), tables)
        ? Messages.of("common.small-group-not-ranked")
        : Messages.of("workbook.RateSheets.enough-to-compare");
  }

  private static ChartPlan[] chart(
      TablePackage tables, List<Line> lines, String title, String axis) {
    int count = 0;
    while (count < Math.min(lines.size(), MOST_BARS)
        && !Groups.isSmall(lines.get(count), tables)
        && lines.get(count).number(RATE).isPresent()) {
      count++;
    }
    if (count == 0) {
      return new ChartPlan[0];
    }
    return new ChartPlan[] {
      new ChartPlan(
          title,
          Messages.of(
              "workbook.RateSheets.bars-failures-per-100-device-years",
              Map.of("count", String.valueOf(count))),
          ChartPlan.Kind.COLUMNS,
          axis,
          Messages.of("common.Failures-per-100-device-years"),
          "0",
          List.of(
              ChartPlan.Series.of(
                      Messages.of("common.Failures-per-100-device-years"), "group", RATE, count)
                  .withLimits("minus", "plus")))
    };
  }
}
