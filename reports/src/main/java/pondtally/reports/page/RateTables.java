package pondtally.reports.page;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Groups;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** How often devices fail, and of what. */
final class RateTables {

  private static final String RATE = "per_100_device_years";
  private static final String ORDER = Messages.of("page.RateTables.groups-stand-in-order-of-size");

  private RateTables() {}

  static Stream<PageTable> of(TablePackage tables) {
    return Stream.of(
        watersheds(tables),
        rates(
            tables,
            "pipe",
            Messages.of("common.Failures-by-pipe-type"),
            Messages.of("common.Pipe-type")),
        causes(tables),
        causesByPipe(tables),
        other(tables, "kind", Messages.of("common.kind-of-device")),
        other(tables, "setting", Messages.of("common.Setting")),
        other(tables, "build", Messages.of("page.RateTables.specification")),
        other(tables, "cohort", Messages.of("page.RateTables.install-year")),
        other(tables, "crew", Messages.of("common.Crew")));
  }

  private static PageTable watersheds(TablePackage tables) {
    Rows rows = rows(tables, "watershed");
    return rateColumns(tables, "watershed", Messages.of("common.Watershed"))
        .number(Messages.of("page.RateTables.failures-expected"), Shape.ONE, "expected")
        .number(Messages.of("page.RateTables.rate-drawn-toward-the-mean"), Shape.ONE, "shrunken")
        .said(Messages.of("common.Note"), row -> note(row, tables))
        .note(ORDER)
        .note(Messages.of("common.Expected-failures-allow-for-pipe-type"))
        .build(Messages.of("common.Failures-by-watershed"), rows, sorted(rows));
  }

  private static PageTable other(TablePackage tables, String grouping, String heading) {
    return rates(
            tables,
            grouping,
            Messages.of(
                "page.RateTables.failures-by",
                Map.of("toLowerCase", heading.toLowerCase(java.util.Locale.ROOT))),
            heading)
        .fold();
  }

  private static PageTable rates(
      TablePackage tables, String grouping, String caption, String heading) {
    Rows rows = rows(tables, grouping);
    return rateColumns(tables, grouping, heading)
        .said(Messages.of("common.Note"), row -> note(row, tables))
        .note(ORDER)
        .build(caption, rows, sorted(rows));
  }

  private static Grid rateColumns(TablePackage tables, String grouping, String heading) {
    return Grid.of(tables, "failure_rates", "group")
        .head(heading, "group", group -> GroupText.label(grouping, group))
        .number(Shape.COUNT, "devices", "failures")
        .number(Shape.ONE, "device_years")
        .estimate(
            Messages.of("common.Failures-per-100-device-years"),
            RATE,
            "lower",
            "upper",
            Estimate::rate);
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
      return Messages.of("page.RateTables.beyond-what-chance-explains");
    }
    return Groups.isSmall(Line.of(row), tables) ? Messages.of("common.small-group-not-ranked") : "";
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
        .note(Messages.of("common.The-cause-is-what-the-visitor"))
        .build(Messages.of("common.What-failures-were-put-down-to"), rows, sorted);
  }

  private static PageTable causesByPipe(TablePackage tables) {
    Rows rows = Rows.of(tables, "failure_causes").where("grouping", "pipe");
    return causeColumns(
            Grid.of(tables, "failure_causes", "group", "cause")
                .group(Messages.of("common.Pipe-type"), GroupText::label))
        .note(Messages.of("page.RateTables.shares-are-of-the-failures-of"))
        .build(Messages.of("page.RateTables.what-failures-were-put-down-to"), rows)
        .fold();
  }

  private static Grid causeColumns(Grid grid) {
    return grid.head(Messages.of("common.Cause"), "cause", GroupText::words)
        .number(Shape.COUNT, "failures")
        .estimate(
            Messages.of("page.RateTables.share-of-failures"),
            "share",
            "lower",
            "upper",
            Estimate::percent);
  }
}
