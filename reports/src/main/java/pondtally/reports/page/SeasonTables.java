package pondtally.reports.page;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
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
        .note(
            "Failures that visits find, if every device is visited as planned. The limits hold them with a chance of 95%, if devices go on failing as they have; no device is added or retired.")
        .note("Crew days: hours at devices in days of eight hours; travel comes on top.")
        .named("Year", row -> SeasonYear.name(Line.of(row)))
        .estimate(
            "Expected failures",
            "expected_failures",
            "lower",
            "upper",
            estimate -> estimate.measured("failures"))
        .number(Shape.ONE, "repairs", "replacements")
        .number(Shape.COUNT, "visits", "hours", "crew_days")
        .estimate("Cost", "cost_usd", "cost_lower", "cost_upper", Estimate::dollars)
        .build(
            "What the next years are expected to take",
            Rows.of(tables, "season_forecast").where("grouping", "all"));
  }

  private static PageTable worklist(TablePackage tables) {
    Rows rows = Rows.of(tables, "worklist");
    List<Row> first = rows.list().stream().limit(FIRST).toList();
    Grid grid =
        Grid.of(tables, "worklist", "rank")
            .note(
                "Devices never visited come first. Then by expected loss: chance that the device has failed since it was last known to work, times the yearly damage at stake, until the next planned visit. Devices without recorded damage follow, by chance times acres.");
    if (first.size() < rows.list().size()) {
      grid.note("The list goes on in program.xlsx and tables/worklist.csv.");
    }
    return grid.head("Rank", "rank", rank -> rank)
        .words(text -> text, "device_id", "site_id", "watershed", "crew")
        .words(GroupText::words, "block")
        .words(text -> text.isEmpty() ? "never" : text, "last_visit_on")
        .number(Shape.COUNT, "days_overdue")
        .number(Shape.PERCENT, "chance_failed")
        .number(Shape.COUNT, "properties")
        .number(Shape.ONE, "acres")
        .number(Shape.DOLLARS, "damage_per_year_usd", "expected_loss_usd")
        .build("Where to drive first", rows, first);
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
        .note("Two pages to print are on sheet Worklist to print of program.xlsx.")
        .head("Watershed", "watershed", group -> GroupText.label("watershed", group))
        .head("Crew", "crew", crew -> crew.isEmpty() ? "not recorded" : crew)
        .words(text -> text, "rank", "device_id", "site_id")
        .number(Shape.COUNT, "days_overdue")
        .number(Shape.PERCENT, "chance_failed")
        .number(Shape.DOLLARS, "expected_loss_usd")
        .build("Where to drive first, by watershed and crew", rows, first);
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
        .note(
            "Yearly cost of one device: visits, and damage while it lies failed unnoticed. Repairs are left out: they hardly depend on the interval.")
        .note("Any interval between \"from\" and \"to\" costs at most 5% more than the cheapest.")
        .head("Grouping", "grouping", GroupText::grouping)
        .group("Group", GroupText::label)
        .number(Shape.COUNT, "best_days", "nearly_from_days", "nearly_to_days")
        .number(Shape.DOLLARS, "cost_per_year_usd", "at_90", "at_180", "at_365")
        .build("Days between visits that cost least", Rows.of(tables, "visit_interval"));
  }
}
