package pondtally.reports.attack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pondtally.reports.attack.Figures.Key;

/** Withheld rates and unit costs, from the limits of what they are made of. */
final class Ratios {

  private record Ratio(
      String table, String column, double factor, String numerator, String denominator) {}

  private static final List<Ratio> KNOWN =
      List.of(
          new Ratio("failure_rates", "per_100_device_years", 100, "failures", "device_years"),
          new Ratio("cost_effectiveness", "value_usd", 1, "numerator_usd", "denominator"),
          new Ratio("benefit_cost", "ratio", 1, "benefit_usd", "cost_usd"));

  private Ratios() {}

  static List<HiddenFigure> of(Map<String, Figures> tables, Equations equations) {
    List<HiddenFigure> found = new ArrayList<>();
    for (Ratio ratio : KNOWN) {
      Figures figures = tables.get(ratio.table());
      for (Key key : figures.keys()) {
        if (figures.isThere(key, ratio.column()) && figures.isHidden(key, ratio.column())) {
          double[] over = limits(figures, ratio.numerator(), key, equations);
          double[] under = limits(figures, ratio.denominator(), key, equations);
          double least = under[1] == 0 ? 0 : ratio.factor() * over[0] / under[1];
          double most =
              under[0] <= 0 ? Double.POSITIVE_INFINITY : ratio.factor() * over[1] / under[0];
          found.add(
              new HiddenFigure(
                  figures.name(key, ratio.column()),
                  figures.value(key, ratio.column()),
                  least,
                  most));
        }
      }
    }
    return found;
  }

  private static double[] limits(Figures figures, String column, Key key, Equations equations) {
    if (!figures.isHidden(key, column)) {
      double value = figures.value(key, column);
      return new double[] {value, value};
    }
    return equations.limits(figures.name(key, column));
  }
}
