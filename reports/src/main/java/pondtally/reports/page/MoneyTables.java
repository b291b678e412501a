package pondtally.reports.page;

import java.util.List;
import java.util.stream.Stream;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.view.FundingRule;
import pondtally.reports.view.Groups;
import pondtally.reports.view.Rows;

/** What it cost, what a unit of outcome cost, and who paid. */
final class MoneyTables {

  private static final String KINDS = Messages.of("common.Cash-and-in-kind-value-stand");
  private static final String CLUSTERS =
      Messages.of("page.MoneyTables.site-clusters-with-a-device-whose");

  private MoneyTables() {}

  static Stream<PageTable> of(TablePackage tables) {
    return Stream.of(
        units(tables), perProperty(tables), byWatershed(tables), byYear(tables), funding(tables));
  }

  private static PageTable byWatershed(TablePackage tables) {
    Rows rows = Rows.of(tables, "costs").where("grouping", "watershed").where("year", "all");
    Grid grid =
        Grid.of(tables, "costs", "group")
            .head(
                Messages.of("common.Watershed"),
                "group",
                group -> GroupText.label("watershed", group))
            .number(Shape.COUNT, "sites", "devices", "devices_costed");
    return amounts(grid)
        .build(
            Messages.of("common.What-was-spent-by-watershed-whole"),
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
            .head(Messages.of("common.Fiscal-year"), "year", year -> year)
            .note(Messages.of("common.A-fiscal-year-is-named-by"));
    return amounts(grid).build(Messages.of("common.What-was-spent-by-fiscal-year"), rows);
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
            .head(Messages.of("page.MoneyTables.measure"), "measure", GroupText::words)
            .head(Messages.of("page.MoneyTables.counted"), "basis", GroupText::words);
    return unitColumns(grid, Messages.of("page.MoneyTables.units-of-outcome"), Shape.ONE)
        .build(Messages.of("page.MoneyTables.what-one-unit-of-outcome-cost"), rows);
  }

  private static PageTable perProperty(TablePackage tables) {
    Rows rows =
        Rows.of(tables, "cost_effectiveness")
            .where("grouping", "watershed")
            .where("year", "all")
            .where("measure", "per-property");
    Grid grid =
        Grid.of(tables, "cost_effectiveness", "group", "basis")
            .head(
                Messages.of("common.Watershed"),
                "group",
                group -> GroupText.label("watershed", group))
            .head(Messages.of("page.MoneyTables.counted"), "basis", GroupText::words)
            .note(Messages.of("page.MoneyTables.a-property-behind-two-devices-counts"));
    return unitColumns(grid, Messages.of("common.Properties-protected-verified"), Shape.COUNT)
        .build(Messages.of("common.What-a-protected-property-cost-by"), rows);
  }

  private static Grid unitColumns(Grid grid, String units, Shape shape) {
    return grid.note(CLUSTERS)
        .number(Shape.DOLLARS, "numerator_usd")
        .number(units, shape, "denominator")
        .estimate(
            Messages.of("page.MoneyTables.cost-of-one-unit"),
            "value_usd",
            "lower",
            "upper",
            Estimate::dollars)
        .number(Shape.COUNT, "clusters", "clusters_left_out");
  }

  private static PageTable funding(TablePackage tables) {
    Rows rows = Rows.of(tables, "funding");
    return Grid.of(tables, "funding", "funder", "period_start", "period_end")
        .note(FundingRule.EACH_LINE_ONCE)
        .note(FundingRule.VOLUNTEERS)
        .head(Messages.of("common.Funder"), "funder", funder -> funder)
        .words(date -> date, "period_start", "period_end")
        .number(Shape.DOLLARS, "cash_usd", "in_kind_usd", "volunteer_usd", "award_usd")
        .number(Shape.DOLLARS, "match_required_usd", "match_claimed_usd")
        .words(MoneyTables::yesNo, "match_met")
        .build(Messages.of("common.Who-paid-in-dollars-of-the"), rows);
  }

  private static String yesNo(String truth) {
    return List.of("true", "false").contains(truth)
        ? truth.equals("true") ? Messages.of("common.yes") : Messages.of("common.no")
        : truth;
  }
}
