package pondtally.reports.workbook;

import java.util.List;
import java.util.OptionalDouble;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Convention;
import pondtally.reports.view.FundingRule;
import pondtally.reports.view.Rows;
import pondtally.reports.view.WetlandValue;

/** Benefit against cost, what moves it, and who paid. */
final class BenefitSheets {

  private static final OptionalDouble ONE = OptionalDouble.of(1);

  private BenefitSheets() {}

  static void benefit(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "benefit_cost")
            .add("grouping", "group", "basis")
            .add("discount_rate")
            .format(Format.SHARE)
            .add("horizon_years")
            .add("net_usd")
            .live(Formula.difference("benefit_usd", "cost_usd"))
            .add("equivalent_annual_usd", "equivalent_annual_net_usd")
            .add("cost_usd", "benefit_usd")
            .add("ratio")
            .live(Formula.ratio("benefit_usd", "cost_usd", 1))
            .add("ratio_lower", "ratio_upper", "chance_above_one", "payback_year")
            .add("break_even_damage_usd", "sites", "sites_left_out")
            .add("sites_without_damage", "sites_without_cost", "clusters")
            .add("resamples", "undefined_resamples", "damage_per_year_usd")
            .add("build_usd", "visit_usd", "repair_usd", "replacement_usd")
            .add("replaced_share")
            .format(Format.SHARE)
            .add("fit", "taken_from_all");
    book.add(
        TableSheet.of(
                Messages.of("workbook.BenefitSheets.benefit-and-cost"),
                Messages.of("workbook.BenefitSheets.benefit-against-the-alternative"),
                List.of(
                    Convention.APART,
                    Convention.RATIO,
                    Convention.BASELINE,
                    Messages.of("workbook.BenefitSheets.the-share-of-resamples-above-1")),
                columns,
                Rows.of(tables, "benefit_cost").lines())
            .withKeyColumns(2));
  }

  static void sensitivity(Book book, TablePackage tables) {
    Columns columns = Columns.of(tables, "sensitivity").addAll();
    columns
        .add("swing", Messages.of("workbook.BenefitSheets.ratio-high-less-low"), Format.TWO)
        .live(Formula.difference("ratio_high", "ratio_low"));
    book.add(
        TableSheet.of(
            Messages.of("workbook.BenefitSheets.sensitivity"),
            Messages.of("common.How-the-benefit-cost-ratio-moves"),
            List.of(Messages.of("common.One-assumption-is-moved-at-a"), Convention.RATIO),
            columns,
            Rows.of(tables, "sensitivity").lines()));
  }

  static void wetlandValue(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "wetland_value")
            .add("grouping", "group", "year", "acre_years")
            .add("low_usd_per_acre_year", "high_usd_per_acre_year")
            .add("low_usd")
            .live(Formula.product(List.of("acre_years", "low_usd_per_acre_year"), "", ONE))
            .add("high_usd")
            .live(Formula.product(List.of("acre_years", "high_usd_per_acre_year"), "", ONE))
            .add("source", "source_year");
    book.add(
        TableSheet.of(
                Messages.of("workbook.BenefitSheets.value-of-wetland"),
                Messages.of("common.What-the-kept-wetland-may-be"),
                List.of(WetlandValue.APART),
                columns,
                Rows.of(tables, "wetland_value").lines())
            .withKeyColumns(2));
  }

  static void funding(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "funding")
            .add("funder", "period_start", "period_end")
            .add("cash_usd")
            .total()
            .add("in_kind_usd")
            .total()
            .add("volunteer_usd")
            .total()
            .add("award_usd")
            .total();
    columns
        .add(
            "spent_share",
            Messages.of("workbook.BenefitSheets.cash-as-share-of-award"),
            Format.SHARE)
        .live(Formula.ratio("cash_usd", "award_usd", 1));
    columns.add("match_required_usd").total().add("match_met");
    book.add(
        TableSheet.of(
            Messages.of("workbook.BenefitSheets.who-paid"),
            Messages.of("common.Who-paid-in-dollars-of-the"),
            List.of(
                FundingRule.EACH_LINE_ONCE,
                FundingRule.VOLUNTEERS,
                Messages.of("workbook.BenefitSheets.match-counts-in-kind-volunteer-and")),
            columns,
            Rows.of(tables, "funding").lines()));
  }
}
