package pondtally.reports.workbook;

import java.util.List;

/**
 * A figure of the live model: a formula over the assumptions and the rows of years.
 *
 * @param column of the result table that holds the program's own value
 * @param formula without the equals sign; {@code {x}} stands for all year rows of column x, {@code
 *     [y]} for the figure y
 */
record ModelFigure(String column, String label, String unit, Format format, String formula) {

  private static final String RECOVERY =
      "*IF(Model_discount_rate=0,1/Model_horizon_years,Model_discount_rate/(1-(1+Model_discount_rate)^-Model_horizon_years))";

  /** Net benefit and annual cost stand before the ratio. */
  static final List<ModelFigure> ALL =
      List.of(
          new ModelFigure(
              "net_usd",
              "Net benefit, present value",
              "USD",
              Format.TWO,
              "[benefit_usd]-[cost_usd]"),
          new ModelFigure(
              "equivalent_annual_usd",
              "Cost a year, the same each year",
              "USD a year",
              Format.TWO,
              "[cost_usd]" + RECOVERY),
          new ModelFigure(
              "equivalent_annual_net_usd",
              "Net benefit a year, the same each year",
              "USD a year",
              Format.TWO,
              "[net_usd]" + RECOVERY),
          new ModelFigure(
              "cost_usd", "Cost, present value", "USD", Format.TWO, "SUMPRODUCT({factor},{cost})"),
          new ModelFigure(
              "benefit_usd",
              "Damage avoided, present value",
              "USD",
              Format.TWO,
              "SUMPRODUCT({factor},{benefit})"),
          new ModelFigure(
              "ratio",
              "Damage avoided per dollar of cost",
              "USD per USD",
              Format.TWO,
              Formula.orUnknown("IF([cost_usd]>0,[benefit_usd]/[cost_usd],NA())")),
          new ModelFigure(
              "payback_year",
              "Year by whose end it has paid (discounted)",
              "year",
              Format.LABEL,
              "IF(COUNT({paid})=0,\"not within the horizon\",MIN({paid}))"),
          new ModelFigure(
              "break_even_damage_usd",
              "Yearly damage at which it just pays",
              "USD a year",
              Format.TWO,
              Formula.orUnknown("[cost_usd]/SUMPRODUCT({factor},{share})")));
}
