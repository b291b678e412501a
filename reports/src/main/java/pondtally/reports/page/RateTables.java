package pondtally.reports.page;

import java.util.List;
import java.util.stream.Stream;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.view.Groups;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** How often devices fail, and of what. */
final class RateTables {

  private static final String RATE = "per_100_device_years";
  private static final String ORDER =
      "Groups stand in order of size, not of merit. Read the limits before the rates.";

  private RateTables() {}

  static Stream<PageTable> of(TablePackage tables) {
    return Stream.of(
        watersheds(tables),
        rates(tables, "pipe", "Failures by pipe type", "Pipe type"),
        causes(tables),
        causesByPipe(tables),
        other(tables, "kind", "Kind of device"),
        other(tables, "setting", "Setting"),
        other(tables, "build", "Specification"),
        other(tables, "cohort", "Install year"),
        other(tables, "crew", "Crew"));
  }

  private static PageTable watersheds(TablePackage tables) {
    Rows rows = rows(tables, "watershed");
    return rateColumns(tables, "watershed", "Watershed")
        .number("Failures expected", Shape.ONE, "expected")
        .number("Rate drawn toward the mean", Shape.ONE, "shrunken")
        .said("Note", row -> note(row, tables))
        .note(ORDER)
        .note(
            "Expected failures allow for pipe type and age. A watershed is called different only where its rate lies beyond what chance alone explains (99.8% limits).")
        .build("Failures by watershed", rows, sorted(rows));
  }

  private static PageTable other(TablePackage tables, String grouping, String heading) {
    return rates(
            tables, grouping, "Failures by " + heading.toLowerCase(java.util.Locale.ROOT), heading)
        .fold();
  }

  private static PageTable rates(
      TablePackage tables, String grouping, String caption, String heading) {
    Rows rows = rows(tables, grouping);
    return rateColumns(tables, grouping, heading)
        .said("Note", row -> note(row, tables))
        .note(ORDER)
        .build(caption, rows, sorted(rows));
  }

  private static Grid rateColumns(TablePackage tables, String grouping, String heading) {
    return Grid.of(tables, "failure_rates", "group")
        .head(heading, "group", group -> GroupText.label(grouping, group))
        .number(Shape.COUNT, "devices", "failures")
        .number(Shape.ONE, "device_years")
        .estimate("Failures per 100 device-years", RATE, "lower", "upper", Estimate::rate);
  }

  private static Rows rows(TablePackage tables, String grouping) {
    return Rows.of(tables, "failure_rates").where("grouping", grouping).where("year", "all");
  }

  private static List<Row> sorted(Rows rows) {
    return rows.list().stream().sorted(Groups.bySize()).toList();
  }

  private static String note(Row row, TablePackage tables) {
    String reason = row.text("withheld_reason");
    if (!reason.isEmpty()) {
      return reason;
    }
    if (row.isTrue("outside_funnel")) {
      return "beyond what chance explains";
    }
    return Groups.isSmall(Line.of(row), tables) ? "small group, not ranked" : "";
  }

  private static PageTable causes(TablePackage tables) {
    Rows rows = Rows.of(tables, "failure_causes").where("grouping", "all").where("group", "all");
    List<Row> sorted =
        rows.list().stream()
            .sorted(
                java.util.Comparator.comparingDouble(
                        (Row row) -> -Line.of(row).number("failures").orElse(0))
                    .thenComparing(row -> row.text("cause")))
            .toList();
    return causeColumns(Grid.of(tables, "failure_causes", "cause"))
        .note(
            "The cause is what the visitor wrote down at the first visit that found the device failed.")
        .build("What failures were put down to", rows, sorted);
  }

  private static PageTable causesByPipe(TablePackage tables) {
    Rows rows = Rows.of(tables, "failure_causes").where("grouping", "pipe");
    return causeColumns(
            Grid.of(tables, "failure_causes", "group", "cause")
                .group("Pipe type", GroupText::label))
        .note("Shares are of the failures of that pipe type.")
        .build("What failures were put down to, by pipe type", rows)
        .fold();
  }

  private static Grid causeColumns(Grid grid) {
    return grid.head("Cause", "cause", GroupText::words)
        .number(Shape.COUNT, "failures")
        .estimate("Share of failures", "share", "lower", "upper", Estimate::percent);
  }
}
