package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.List;
import pondtally.reports.table.Row;
import pondtally.reports.view.Line;

/** The values that the model's formulas come to before anybody changes an assumption. */
final class ModelYears {

  private ModelYears() {}

  /**
   * One year's row.
   *
   * @param factor present value of a dollar; 0 past the horizon
   * @param benefit damage avoided, dollars
   * @param cost dollars
   * @param netSoFar present value of benefit less cost up to its end
   * @param paid whether that is 0 or more, within the horizon
   */
  record Year(double factor, double benefit, double cost, double netSoFar, boolean paid) {}

  /** Year 0, in which it is built, and the years after. */
  static List<Year> of(ModelSheet model) {
    Line own = Line.of(model.row());
    double rate = own.number("discount_rate").orElseThrow();
    double horizon = own.number("horizon_years").orElseThrow();
    List<Year> years = new ArrayList<>();
    double net = -own.number("build_usd").orElseThrow();
    years.add(new Year(1, 0, -net, net, net >= 0));
    for (Row row : model.years()) {
      int year = Integer.parseInt(row.text("year"));
      Line line = Line.of(row);
      double factor = year <= horizon ? Math.pow(1 + rate, -year) : 0;
      double benefit =
          own.number("damage_per_year_usd").orElseThrow() * line.number("working_share").orElse(0);
      double cost = cost(own, line);
      net += factor * (benefit - cost);
      years.add(new Year(factor, benefit, cost, net, year <= horizon && net >= 0));
    }
    return years;
  }

  private static double cost(Line own, Line year) {
    double repairs = year.number("repairs").orElse(0);
    double replacements = year.number("replacements").orElse(0);
    double visits = year.number("visits").orElse(0) - repairs - replacements;
    return visits * own.number("visit_usd").orElseThrow()
        + repairs * own.number("repair_usd").orElseThrow()
        + replacements * own.number("replacement_usd").orElseThrow();
  }
}
