package pondtally.reports.workbook;

import java.util.List;
import pondtally.reports.text.Messages;

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
              Messages.of("workbook.ModelFigure.net-benefit-present-value"),
              "USD",
              Format.TWO,
              "[benefit_usd]-[cost_usd]"),
          new ModelFigure(
              "equivalent_annual_usd",
              Messages.of("workbook.ModelFigure.cost-a-year-the-same-each"),
              Messages.of("common.Usd-a-year"),
              Format.TWO,
              "[cost_usd]" + RECOVERY),
          new ModelFigure(
              "equivalent_annual_net_usd",
              Messages.of("workbook.ModelFigure.net-benefit-a-year-the-same"),
              Messages.of("common.Usd-a-year"),
              Format.TWO,
              "[net_usd]" + RECOVERY),
          new ModelFigure(
              "cost_usd",
              Messages.of("workbook.ModelFigure.cost-present-value"),
              "USD",
              Format.TWO,
              "SUMPRODUCT({factor},{cost})"),
          new ModelFigure(
              "benefit_usd",
              Messages.of("workbook.ModelFigure.damage-avoided-present-value"),
              "USD",
              Format.TWO,
              "SUMPRODUCT({factor},{benefit})"),
          new ModelFigure(
              "ratio",
              Messages.of("workbook.ModelFigure.damage-avoided-per-dollar-of-cost"),
              Messages.of("workbook.ModelFigure.usd-per-usd"),
              Format.TWO,
              Formula.orUnknown("IF([cost_usd]>0,[benefit_usd]/[cost_usd],NA())")),
          new ModelFigure(
              "payback_year",
              Messages.of("workbook.ModelFigure.year-by-whose-end-it-has"),
              "year",
              Format.LABEL,
              "IF(COUNT({paid})=0,\""
                  + Messages.of("workbook.ModelWriter.not-within-the-horizon")
                  + "\",MIN({paid}))"),
          new ModelFigure(
              "break_even_damage_usd",
              Messages.of("workbook.ModelFigure.yearly-damage-at-which-it-just"),
              Messages.of("common.Usd-a-year"),
              Format.TWO,
              Formula.orUnknown("[cost_usd]/SUMPRODUCT({factor},{share})")));
}
