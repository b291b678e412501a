package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pondtally.reports.table.Row;

/**
 * A curve in steps, read from a table.
 *
 * @param group as the table has it
 * @param label as readers see it
 * @param steps by time
 * @param supportedYears where drawing ends: the last age with enough under observation; empty where
 *     there never were enough
 */
record StepCurve(String group, String label, List<Step> steps, OptionalDouble supportedYears) {

  /** Figures stop where fewer than this many are under observation. */
  static final long LEAST_AT_RISK = 5;

  static final double DAYS_PER_YEAR = 365.25;

  /**
   * What the curve says from {@code years} on.
   *
   * @param atRisk under observation just before; empty where the method gives none
   * @param events at this age
   * @param censored at this age
   */
  record Step(
      double years,
      OptionalDouble atRisk,
      long events,
      long censored,
      double value,
      OptionalDouble lower,
      OptionalDouble upper) {

    static Step of(Row row, String valueColumn, long events, long censored) {
      return new Step(
          row.number("time_days").orElseThrow() / DAYS_PER_YEAR,
          row.number("at_risk"),
          events,
          censored,
          row.number(valueColumn).orElseThrow(),
          row.number("lower"),
          row.number("upper"));
    }
  }

  /** The last age with enough under observation, by the steps themselves. */
  static OptionalDouble supported(List<Step> steps) {
    if (steps.stream().allMatch(step -> step.atRisk.isEmpty())) {
      return steps.stream().mapToDouble(Step::years).max();
    }
    return steps.stream()
        .filter(step -> step.atRisk.orElse(0) >= LEAST_AT_RISK)
        .mapToDouble(Step::years)
        .max();
  }

  boolean isDrawn() {
    return supportedYears.isPresent();
  }

  /** Steps up to where drawing ends. */
  List<Step> drawn() {
    double end = supportedYears.orElse(-1);
    return steps.stream().filter(step -> step.years <= end).toList();
  }

  /** The steps to draw, those closer together than {@code years} as one. */
  List<Step> drawn(double years) {
    List<Step> drawn = drawn();
    List<Step> apart = new ArrayList<>();
    for (int i = 0; i < drawn.size(); i++) {
      boolean isLast = i == drawn.size() - 1;
      if (isLast || bin(drawn.get(i), years) != bin(drawn.get(i + 1), years)) {
        apart.add(drawn.get(i));
      }
    }
    return apart;
  }

  private static long bin(Step step, double years) {
    return (long) Math.floor(step.years / years);
  }

  /** Whether steps were cut off because few were left. */
  boolean isCut() {
    return drawn().size() < steps.size();
  }

  /** The step in force at {@code years}; empty before the first. */
  Optional<Step> at(double years) {
    int low = 0;
    int high = steps.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (steps.get(middle).years <= years) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low == 0 ? Optional.empty() : Optional.of(steps.get(low - 1));
  }
}
