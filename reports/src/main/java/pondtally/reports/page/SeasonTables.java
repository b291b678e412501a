package pondtally.reports.page;

import java.util.List;
import java.util.stream.Stream;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.view.Rows;

/** What the next season takes, and where to drive first. */
final class SeasonTables {

  private static final int FIRST = 40;

  private SeasonTables() {}

  static Stream<PageTable> of(TablePackage tables) {
    return Stream.of(forecast(tables), worklist(tables), interval(tables));
  }

  private static PageTable forecast(TablePackage tables) {
    return Grid.of(tables, "season_forecast", "group", "year")
        .note(
            "Limits hold the failures of the year with a chance of 90%, if devices go on failing as they have.")
        .head("Year", "year", year -> year)
        .estimate(
            "Expected failures",
            "expected_failures",
            "lower",
            "upper",
            estimate -> estimate.measured("failures"))
        .number(Shape.COUNT, "visits", "hours")
        .estimate("Cost", "cost_usd", "cost_lower", "cost_upper", Estimate::dollars)
        .build(
            "What the next years are expected to take",
            Rows.of(tables, "season_forecast").where("grouping", "all"));
  }

  private static PageTable worklist(TablePackage tables) {
    Rows rows = Rows.of(tables, "worklist");
    List<pondtally.reports.table.Row> first = rows.list().stream().limit(FIRST).toList();
    Grid grid =
        Grid.of(tables, "worklist", "rank")
            .note(
                "In order of expected loss: chance that the device has failed, times the yearly damage at stake, until the next planned visit. Devices without recorded damage follow, by acres.");
    if (first.size() < rows.list().size()) {
      grid.note("The list goes on in program.xlsx and tables/worklist.csv.");
    }
    return grid.head("Rank", "rank", rank -> rank)
        .words(text -> text, "device_id", "site_id", "watershed", "last_visit_on")
        .number(Shape.COUNT, "days_overdue")
        .number(Shape.PERCENT, "chance_failed")
        .number(Shape.COUNT, "properties")
        .number(Shape.ONE, "acres")
        .number(Shape.DOLLARS, "damage_per_year_usd", "expected_loss_usd")
        .build("Where to drive first", rows, first);
  }

  private static PageTable interval(TablePackage tables) {
    return Grid.of(tables, "visit_interval", "grouping", "group")
        .note("Cost of visits and of unnoticed downtime together.")
        .head("Grouping", "grouping", GroupText::grouping)
        .group("Group", GroupText::label)
        .number(Shape.COUNT, "best_days")
        .number(Shape.DOLLARS, "cost_per_year_usd", "at_90", "at_180", "at_365")
        .build("Days between visits that cost least", Rows.of(tables, "visit_interval"));
  }
}
