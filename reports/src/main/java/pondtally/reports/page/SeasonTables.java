package pondtally.reports.page;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;
import pondtally.reports.view.SeasonYear;

/** What the next season takes, and where to drive first. */
final class SeasonTables {

  private static final int FIRST = 40;

  private SeasonTables() {}

  static Stream<PageTable> of(TablePackage tables) {
    return Stream.of(
        forecast(tables),
        worklist(tables),
        byCrew(tables),
        interval(tables),
        BuyingTables.list(tables),
        OfficeTables.requests(tables),
        OfficeTables.lapses(tables),
        OfficeTables.expenses(tables));
  }

  private static PageTable forecast(TablePackage tables) {
    return Grid.of(tables, "season_forecast", "group", "year")
        .note(Messages.of("page.SeasonTables.failures-that-visits-find-if-every"))
        .note(Messages.of("page.SeasonTables.crew-days-hours-at-devices-in"))
        .named(Messages.of("common.Year"), row -> SeasonYear.name(Line.of(row)))
        .estimate(
            Messages.of("common.Expected-failures"),
            "expected_failures",
            "lower",
            "upper",
            estimate -> estimate.whole("failures"))
        .number(Shape.ONE, "repairs", "replacements")
        .number(Shape.COUNT, "visits", "hours", "crew_days")
        .estimate(
            Messages.of("common.Cost"), "cost_usd", "cost_lower", "cost_upper", Estimate::dollars)
        .build(
            Messages.of("common.What-the-next-years-are-expected"),
            Rows.of(tables, "season_forecast").where("grouping", "all"));
  }

  private static PageTable worklist(TablePackage tables) {
    Rows rows = Rows.of(tables, "worklist");
    List<Row> first = rows.list().stream().limit(FIRST).toList();
    Grid grid =
        Grid.of(tables, "worklist", "rank")
            .note(Messages.of("common.Devices-never-visited-come-first-then"));
    if (first.size() < rows.list().size()) {
      grid.note(Messages.of("page.SeasonTables.the-list-goes-on-in-program"));
    }
    return grid.head(Messages.of("page.SeasonTables.rank"), "rank", rank -> rank)
        .words(text -> text, "device_id", "site_id", "watershed", "crew")
        .words(GroupText::words, "block")
        .words(text -> text.isEmpty() ? "never" : text, "last_visit_on")
        .number(Shape.COUNT, "days_overdue")
        .number(Shape.PERCENT, "chance_failed")
        .number(Shape.COUNT, "properties")
        .number(Shape.ONE, "acres")
        .number(Shape.DOLLARS, "damage_per_year_usd", "expected_loss_usd")
        .build(Messages.of("common.Where-to-drive-first"), rows, first);
  }

  /** The head of the list once more, in the order in which crews drive. */
  private static PageTable byCrew(TablePackage tables) {
    Rows rows = Rows.of(tables, "worklist");
    List<Row> first =
        rows.list().stream()
            .limit(FIRST)
            .sorted(
                Comparator.comparing((Row row) -> text(tables, row, "watershed"))
                    .thenComparing(row -> text(tables, row, "crew"))
                    .thenComparingLong(row -> row.count("rank")))
            .toList();
    return Grid.of(tables, "worklist", "rank")
        .note(Messages.of("page.SeasonTables.two-pages-to-print-are-on"))
        .head(
            Messages.of("common.Watershed"),
            "watershed",
            group -> GroupText.label("watershed", group))
        .head(
            Messages.of("common.Crew"),
            "crew",
            crew -> crew.isEmpty() ? Messages.of("common.not-recorded") : crew)
        .words(text -> text, "rank", "device_id", "site_id")
        .number(Shape.COUNT, "days_overdue")
        .number(Shape.PERCENT, "chance_failed")
        .number(Shape.DOLLARS, "expected_loss_usd")
        .build(Messages.of("common.Where-to-drive-first-by-watershed"), rows, first);
  }

  private static String text(TablePackage tables, Row row, String column) {
    boolean there =
        tables
            .table("worklist")
            .map(table -> table.fields().stream().anyMatch(f -> f.name().equals(column)))
            .orElse(false);
    return there ? row.text(column) : "";
  }

  private static PageTable interval(TablePackage tables) {
    return Grid.of(tables, "visit_interval", "grouping", "group")
        .note(Messages.of("common.Yearly-cost-of-one-device-visits"))
        .note(Messages.of("page.SeasonTables.any-interval-between-from-and-to"))
        .head(Messages.of("common.Grouping"), "grouping", GroupText::grouping)
        .group(Messages.of("common.Group"), GroupText::label)
        .number(Shape.COUNT, "best_days", "nearly_from_days", "nearly_to_days")
        .number(Shape.DOLLARS, "cost_per_year_usd", "at_90", "at_180", "at_365")
        .build(
            Messages.of("common.Days-between-visits-that-cost-least"),
            Rows.of(tables, "visit_interval"));
  }
}
