package pondtally.reports.page;

import java.util.stream.Stream;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Convention;
import pondtally.reports.view.Rows;
import pondtally.reports.view.WetlandValue;

/** Benefit against the alternative, and what moves it. */
final class BenefitTables {

  private BenefitTables() {}

  static Stream<PageTable> of(TablePackage tables) {
    return Stream.of(program(tables), groups(tables), sensitivity(tables), wetland(tables));
  }

  private static PageTable program(TablePackage tables) {
    Rows rows = Rows.of(tables, "benefit_cost").where("grouping", "all");
    return columns(Grid.of(tables, "benefit_cost", "group", "basis", "discount_rate"))
        .build(Messages.of("page.BenefitTables.benefit-against-cost-whole-program"), rows);
  }

  private static PageTable groups(TablePackage tables) {
    Rows rows = Rows.of(tables, "benefit_cost").only(row -> !row.text("grouping").equals("all"));
    Grid grid =
        Grid.of(tables, "benefit_cost", "grouping", "group", "basis", "discount_rate")
            .head(Messages.of("common.Grouping"), "grouping", GroupText::grouping)
            .group(Messages.of("common.Group"), GroupText::label);
    return columns(grid)
        .build(Messages.of("page.BenefitTables.benefit-against-cost-by-group"), rows)
        .fold();
  }

  private static Grid columns(Grid grid) {
    return grid.note(Convention.APART)
        .note(Convention.RATIO)
        .note(Convention.BASELINE)
        .note(Messages.of("page.BenefitTables.share-of-resamples-above-1-assumptions"))
        .head(Messages.of("page.BenefitTables.basis"), "basis", GroupText::words)
        .number(
            Messages.of("page.BenefitTables.discount-rate-a-year"), Shape.PERCENT, "discount_rate")
        .number(Shape.ONE, "horizon_years")
        .number(Shape.DOLLARS, "net_usd", "equivalent_annual_usd", "equivalent_annual_net_usd")
        .number(Shape.DOLLARS, "cost_usd", "benefit_usd")
        .estimate(
            Messages.of("page.BenefitTables.benefit-per-dollar-of-cost"),
            "ratio",
            "ratio_lower",
            "ratio_upper",
            Estimate::ratio)
        .number(Shape.PERCENT, "chance_above_one")
        .number(Shape.LABEL, "payback_year")
        .number(Shape.DOLLARS, "break_even_damage_usd", "damage_per_year_usd")
        .number(Shape.COUNT, "sites", "sites_without_damage", "sites_without_cost");
  }

  private static PageTable wetland(TablePackage tables) {
    return Grid.of(tables, "wetland_value", "grouping", "group", "year")
        .note(WetlandValue.APART)
        .head(Messages.of("common.Grouping"), "grouping", GroupText::grouping)
        .group(Messages.of("common.Group"), GroupText::label)
        .number(Shape.ONE, "acre_years")
        .number(Shape.DOLLARS, "low_usd_per_acre_year", "high_usd_per_acre_year")
        .number(Shape.DOLLARS, "low_usd", "high_usd")
        .head(Messages.of("common.Source"), "source", source -> source)
        .number(Shape.LABEL, "source_year")
        .build(
            Messages.of("common.What-the-kept-wetland-may-be"),
            Rows.of(tables, "wetland_value").where("year", "all"));
  }

  private static PageTable sensitivity(TablePackage tables) {
    return Grid.of(tables, "sensitivity", "assumption")
        .note(Messages.of("common.One-assumption-is-moved-at-a"))
        .note(Convention.RATIO)
        .head(Messages.of("common.Assumption"), "assumption", GroupText::words)
        .number(Shape.TWO, "low", "base", "high", "ratio_low", "ratio_base", "ratio_high")
        .build(
            Messages.of("common.How-the-benefit-cost-ratio-moves"), Rows.of(tables, "sensitivity"));
  }
}
