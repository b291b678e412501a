package pondtally.reports.chart;

import java.util.Optional;
import java.util.OptionalDouble;
import pondtally.reports.table.Row;
import pondtally.reports.text.GroupText;

/**
 * A watershed in the funnel. The table's limits are rates per 100 device-years; over the rate
 * expected they are multiples, which all lie on one pair of curves.
 *
 * @param label of the watershed
 * @param expected failures
 * @param ratio failures found over expected
 * @param lower 99.8% limit of the ratio
 * @param upper 99.8% limit of the ratio
 * @param lower95 95% limit, where the table has it
 * @param upper95 95% limit, where the table has it
 */
record FunnelPoint(
    String label,
    double expected,
    double ratio,
    double lower,
    double upper,
    OptionalDouble lower95,
    OptionalDouble upper95,
    Place place) {

  /** Where it lies, and whether that means anything. */
  enum Place {
    INSIDE,
    SMALL,
    OUTSIDE
  }

  /** The point of a row; empty where failures, expected failures or limits are not known. */
  static Optional<FunnelPoint> of(Row row, ChartSource source) {
    OptionalDouble expected = row.number("expected");
    OptionalDouble failures = row.number("failures");
    OptionalDouble lower = row.number("funnel_lower");
    OptionalDouble upper = row.number("funnel_upper");
    OptionalDouble years = row.number("device_years");
    boolean isKnown =
        failures.isPresent() && lower.isPresent() && upper.isPresent() && years.isPresent();
    if (!isKnown || !(expected.orElse(0) > 0)) {
      return Optional.empty();
    }
    double expectedRate = 100 * expected.getAsDouble() / years.getAsDouble();
    return Optional.of(
        new FunnelPoint(
            GroupText.label("watershed", row.text("group")),
            expected.getAsDouble(),
            failures.getAsDouble() / expected.getAsDouble(),
            lower.getAsDouble() / expectedRate,
            upper.getAsDouble() / expectedRate,
            over(row, source, "funnel_lower_95", expectedRate),
            over(row, source, "funnel_upper_95", expectedRate),
            place(row, source)));
  }

  private static OptionalDouble over(
      Row row, ChartSource source, String column, double expectedRate) {
    if (!source.hasColumn("failure_rates", column) || row.number(column).isEmpty()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(row.number(column).getAsDouble() / expectedRate);
  }

  private static Place place(Row row, ChartSource source) {
    if (row.number("devices").orElse(0) < source.groupsBelow()) {
      return Place.SMALL;
    }
    return row.isTrue("outside_funnel") ? Place.OUTSIDE : Place.INSIDE;
  }
}
