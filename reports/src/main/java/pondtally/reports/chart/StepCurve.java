package pondtally.reports.chart;

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

  /** Whether steps were cut off because few were left. */
  boolean isCut() {
    return drawn().size() < steps.size();
  }

  /** The step in force at {@code years}; empty before the first. */
  Optional<Step> at(double years) {
    return steps.stream().filter(step -> step.years <= years).reduce((first, last) -> last);
  }
}
