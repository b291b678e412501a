package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Groups;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;
import pondtally.reports.view.SurvivalMethod;

/** Failure rates: watersheds, pipe types, and the other groups of devices. */
final class RateSheets {

  private static final int MOST_BARS = 24;
  private static final String RATE = "per_100_device_years";
  private static final String ORDER =
      "Groups stand in order of size, not of merit. Read the limits before the rates: a group whose limits reach far says little.";

  private RateSheets() {}

  static void watersheds(Book book, TablePackage tables) {
    Columns columns =
        rates(tables, "Watershed")
            .add("expected")
            .format(Format.ONE)
            .total()
            .add("shrunken", "funnel_lower", "funnel_upper", "outside_funnel");
    List<Line> lines = lines(tables, "watershed");
    book.add(
        TableSheet.of(
                "Watersheds",
                "Failures by watershed",
                List.of(
                    ORDER,
                    "Expected failures allow for pipe type and age. A watershed is called different only where its rate lies beyond what chance alone explains (99.8% limits)."),
                endings(columns),
                lines)
            .withCharts(
                chart(tables, lines, "Failure rate by watershed, with 95% limits", "Watershed")));
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
    Columns columns = rates(tables, "Pipe type").beside("survival_summary");
    SurvivalSheets.horizons(columns, lines, "survival_summary.")
        .add("median_years", "median_lower", "median_upper");
    book.add(
        TableSheet.of(
                "Pipe types",
                "Pipe types compared",
                List.of(
                    ORDER,
                    "Comparisons are observational: crews, sites and years differ between pipe types."),
                endings(columns),
                lines)
            .withCharts(
                chart(tables, lines, "Failure rate by pipe type, with 95% limits", "Pipe type")));
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
            .add("note", "Note", Format.TEXT);
    book.add(
        TableSheet.of(
                "Other groups",
                "Failures by kind of device, setting, build, install year and crew",
                List.of(
                    "The same devices come again under each grouping, so filter to one grouping before adding anything up.",
                    ORDER),
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
        .add("note", "Note", Format.TEXT)
        .add("minus", "Bar down to lower limit", Format.ONE)
        .live(Formula.difference(RATE, "lower"))
        .add("plus", "Bar up to upper limit", Format.ONE)
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
      return "no rate: nothing followed long enough";
    }
    return Groups.isSmall(Line.of(row), tables) ? "small group, not ranked" : "enough to compare";
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
          "Bars: failures per 100 device-years, lines: 95% limits, for the "
              + count
              + " largest groups that are not small. The figures stand in the table on this sheet.",
          ChartPlan.Kind.COLUMNS,
          axis,
          "Failures per 100 device-years",
          "0",
          List.of(
              ChartPlan.Series.of("Failures per 100 device-years", "group", RATE, count)
                  .withLimits("minus", "plus")))
    };
  }
}
