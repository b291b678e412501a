package pondtally.reports.chart;

import java.util.List;
import java.util.Map;

/** Failure rates of groups of invented lives, with the limits of a funnel. */
final class InventedRates {

  private final TestTables tables;
  private final List<InventedLife> lives;

  InventedRates(TestTables tables, List<InventedLife> lives) {
    this.tables = tables;
    this.lives = lives;
  }

  private double rate() {
    double years = lives.stream().mapToInt(InventedLife::days).sum() / 365.25;
    return lives.stream().filter(InventedLife::failed).count() / years;
  }

  void rates(String grouping, Map<String, List<InventedLife>> groups) {
    int number = 0;
    for (var entry : groups.entrySet()) {
      number++;
      boolean withheld = grouping.equals("watershed") && groups.size() == 8 && number == 6;
      if (withheld) {
        tables.row(
            "failure_rates",
            "grouping",
            grouping,
            "group",
            entry.getKey(),
            "year",
            "all",
            "withheld_reason",
            "fewer than 5 sites");
        continue;
      }
      long failures = entry.getValue().stream().filter(InventedLife::failed).count();
      if (grouping.equals("watershed") && number == 2 && failures > 0) {
        failures *= 3;
      }
      double years = entry.getValue().stream().mapToInt(InventedLife::days).sum() / 365.25;
      double expected = rate() * years;
      boolean isWatershed = grouping.equals("watershed") && expected > 0;
      double[] wide = byar(expected, 3.09);
      double[] narrow = byar(expected, 1.96);
      double[] exact = byar((double) failures, 1.96);
      tables.row(
          "failure_rates",
          "grouping",
          grouping,
          "group",
          entry.getKey(),
          "year",
          "all",
          "devices",
          entry.getValue().size(),
          "failures",
          failures,
          "device_years",
          years,
          "per_100_device_years",
          100 * failures / years,
          "lower",
          100 * exact[0] / years,
          "upper",
          100 * exact[1] / years,
          "expected",
          isWatershed ? expected : null,
          "funnel_lower",
          isWatershed ? 100 * wide[0] / years : null,
          "funnel_upper",
          isWatershed ? 100 * wide[1] / years : null,
          "funnel_lower_95",
          isWatershed ? 100 * narrow[0] / years : null,
          "funnel_upper_95",
          isWatershed ? 100 * narrow[1] / years : null,
          "outside_funnel",
          isWatershed ? failures < wide[0] || failures > wide[1] : null);
    }
  }

  /** Byar's approximation to Poisson limits. */
  private static double[] byar(double count, double z) {
    double up = count + 1;
    double lower =
        count <= 0
            ? 0
            : Math.max(0, count * Math.pow(1 - 1 / (9 * count) - z / (3 * Math.sqrt(count)), 3));
    return new double[] {lower, up * Math.pow(1 - 1 / (9 * up) + z / (3 * Math.sqrt(up)), 3)};
  }
}
