package pondtally.reports.page;

import java.util.List;
import java.util.stream.Stream;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.view.FundingRule;
import pondtally.reports.view.Groups;
import pondtally.reports.view.Rows;

/** What it cost, what a unit of outcome cost, and who paid. */
final class MoneyTables {

  private static final String KINDS =
      "Cash and in-kind value stand apart. A device without cost records is unknown, not free: its estimate is never added.";
  private static final String CLUSTERS =
      "Site clusters with a device whose cost is not recorded are left out of cost and outcome alike.";

  private MoneyTables() {}

  static Stream<PageTable> of(TablePackage tables) {
    return Stream.of(
        units(tables), perProperty(tables), byWatershed(tables), byYear(tables), funding(tables));
  }

  private static PageTable byWatershed(TablePackage tables) {
    Rows rows = Rows.of(tables, "costs").where("grouping", "watershed").where("year", "all");
    Grid grid =
        Grid.of(tables, "costs", "group")
            .head("Watershed", "group", group -> GroupText.label("watershed", group))
            .number(Shape.COUNT, "sites", "devices", "devices_costed");
    return amounts(grid)
        .build(
            "What was spent, by watershed, whole record",
            rows,
            rows.list().stream().sorted(Groups.bySize()).toList());
  }

  private static PageTable byYear(TablePackage tables) {
    Rows rows =
        Rows.of(tables, "costs")
            .where("grouping", "all")
            .only(row -> !row.text("year").equals("all"));
    Grid grid =
        Grid.of(tables, "costs", "year")
            .head("Fiscal year", "year", year -> year)
            .note("A fiscal year is named by the calendar year in which it ends.");
    return amounts(grid).build("What was spent, by fiscal year", rows);
  }

  private static Grid amounts(Grid grid) {
    return grid.note(KINDS)
        .number(Shape.DOLLARS, "build_usd", "upkeep_usd", "in_kind_usd", "total_usd")
        .number(Shape.DOLLARS, "estimated_usd")
        .number(Shape.COUNT, "lines_before_index")
        .words(note -> note, "index_note");
  }

  private static PageTable units(TablePackage tables) {
    Rows rows = Rows.of(tables, "cost_effectiveness").where("grouping", "all").where("year", "all");
    Grid grid =
        Grid.of(tables, "cost_effectiveness", "group", "measure", "basis")
            .head("Measure", "measure", GroupText::words)
            .head("Counted", "basis", GroupText::words);
    return unitColumns(grid, "Units of outcome", Shape.ONE)
        .build("What one unit of outcome cost, whole program", rows);
  }

  private static PageTable perProperty(TablePackage tables) {
    Rows rows =
        Rows.of(tables, "cost_effectiveness")
            .where("grouping", "watershed")
            .where("year", "all")
            .where("measure", "per-property");
    Grid grid =
        Grid.of(tables, "cost_effectiveness", "group", "basis")
            .head("Watershed", "group", group -> GroupText.label("watershed", group))
            .head("Counted", "basis", GroupText::words)
            .note("A property behind two devices counts once.");
    return unitColumns(grid, "Properties protected, verified", Shape.COUNT)
        .build("What a protected property cost, by watershed", rows);
  }

  private static Grid unitColumns(Grid grid, String units, Shape shape) {
    return grid.note(CLUSTERS)
        .number(Shape.DOLLARS, "numerator_usd")
        .number(units, shape, "denominator")
        .estimate("Cost of one unit", "value_usd", "lower", "upper", Estimate::dollars)
        .number(Shape.COUNT, "clusters", "clusters_left_out");
  }

  private static PageTable funding(TablePackage tables) {
    Rows rows = Rows.of(tables, "funding");
    return Grid.of(tables, "funding", "funder", "period_start", "period_end")
        .note(FundingRule.EACH_LINE_ONCE)
        .note(FundingRule.VOLUNTEERS)
        .head("Funder", "funder", funder -> funder)
        .words(date -> date, "period_start", "period_end")
        .number(Shape.DOLLARS, "cash_usd", "in_kind_usd", "volunteer_usd", "award_usd")
        .number(Shape.DOLLARS, "match_required_usd", "match_claimed_usd")
        .words(MoneyTables::yesNo, "match_met")
        .build("Who paid, in dollars of the day", rows);
  }

  private static String yesNo(String truth) {
    return List.of("true", "false").contains(truth) ? truth.equals("true") ? "yes" : "no" : truth;
  }
}
