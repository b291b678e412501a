package pondtally.reports.workbook;

import java.util.List;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Rows;

/** Benefit against cost, what moves it, and who paid. */
final class BenefitSheets {

  private BenefitSheets() {}

  static void benefit(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "benefit_cost")
            .add("grouping", "group", "basis")
            .add("discount_rate")
            .format(Format.SHARE)
            .add("horizon_years", "cost_usd", "benefit_usd")
            .add("net_usd")
            .live(Formula.difference("benefit_usd", "cost_usd"))
            .add("ratio")
            .live(Formula.ratio("benefit_usd", "cost_usd", 1))
            .add("ratio_lower", "ratio_upper", "chance_above_one", "payback_year")
            .add(
                "equivalent_annual_usd", "break_even_damage_usd", "sites", "sites_left_out", "fit");
    book.add(
        TableSheet.of(
                "Benefit and cost",
                "Benefit against the alternative",
                List.of(
                    "To date: what was spent against damage that verified working time avoided. Projected: one new device, looked ahead. The two are never mixed.",
                    "The share of resamples above 1 holds the assumptions fixed; it is not the chance that the program pays."),
                columns,
                Rows.of(tables, "benefit_cost").lines())
            .withKeyColumns(2));
  }

  static void sensitivity(Book book, TablePackage tables) {
    Columns columns = Columns.of(tables, "sensitivity").addAll();
    columns
        .add("swing", "Ratio, high less low", Format.TWO)
        .live(Formula.difference("ratio_high", "ratio_low"));
    book.add(
        TableSheet.of(
            "Sensitivity",
            "How the benefit-cost ratio moves with each assumption",
            List.of("One assumption is moved at a time; the others stay at the value used."),
            columns,
            Rows.of(tables, "sensitivity").lines()));
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
        .add("spent_share", "Cash as share of award", Format.SHARE)
        .live(Formula.ratio("cash_usd", "award_usd", 1));
    columns.add("match_required_usd").total().add("match_met");
    book.add(
        TableSheet.of(
            "Who paid",
            "Who paid, in dollars of the day",
            List.of(
                "A volunteer hour's published rate is not by itself allowable match under a federal award (2 CFR 200.306): ask the funder.",
                "Match counts in-kind, volunteer and other-source cash claimed against the award."),
            columns,
            Rows.of(tables, "funding").lines()));
  }
}
