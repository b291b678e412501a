package pondtally.reports.page;

import java.util.stream.Stream;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.view.Rows;

/** Benefit against the alternative, and what moves it. */
final class BenefitTables {

  private static final String APART =
      "To date: what was spent against damage that verified working time avoided. Projected: one new device, looked ahead. The two are never mixed.";

  private BenefitTables() {}

  static Stream<PageTable> of(TablePackage tables) {
    return Stream.of(program(tables), groups(tables), sensitivity(tables));
  }

  private static PageTable program(TablePackage tables) {
    Rows rows = Rows.of(tables, "benefit_cost").where("grouping", "all");
    return columns(Grid.of(tables, "benefit_cost", "group", "basis", "discount_rate"))
        .build("Benefit against cost, whole program", rows);
  }

  private static PageTable groups(TablePackage tables) {
    Rows rows = Rows.of(tables, "benefit_cost").only(row -> !row.text("grouping").equals("all"));
    Grid grid =
        Grid.of(tables, "benefit_cost", "grouping", "group", "basis", "discount_rate")
            .head("Grouping", "grouping", GroupText::grouping)
            .group("Group", GroupText::label);
    return columns(grid).build("Benefit against cost, by group", rows).fold();
  }

  private static Grid columns(Grid grid) {
    return grid.note(APART)
        .head("Basis", "basis", GroupText::words)
        .number("Discount rate, a year", Shape.PERCENT, "discount_rate")
        .number(Shape.ONE, "horizon_years")
        .number(Shape.DOLLARS, "cost_usd", "benefit_usd", "net_usd")
        .estimate(
            "Benefit per dollar of cost", "ratio", "ratio_lower", "ratio_upper", Estimate::ratio)
        .number(Shape.PERCENT, "chance_above_one")
        .number(Shape.LABEL, "payback_year")
        .number(Shape.COUNT, "sites", "sites_left_out");
  }

  private static PageTable sensitivity(TablePackage tables) {
    return Grid.of(tables, "sensitivity", "assumption")
        .note("One assumption is moved at a time; the others stay at the value used.")
        .head("Assumption", "assumption", GroupText::words)
        .number(Shape.TWO, "low", "base", "high", "ratio_low", "ratio_base", "ratio_high")
        .build(
            "How the benefit-cost ratio moves with each assumption",
            Rows.of(tables, "sensitivity"));
  }
}
