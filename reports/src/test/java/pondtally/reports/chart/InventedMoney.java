package pondtally.reports.chart;

import java.time.LocalDate;
import java.util.Set;

/** Cost for each property, sensitivity and the coming seasons, made up outright. */
final class InventedMoney {

  private final TestTables tables;

  InventedMoney(TestTables tables) {
    this.tables = tables;
  }

  void costs(Set<String> watersheds) {
    cost("all", "all", 4310, 3105.0, 6240.0, 141);
    int number = 0;
    for (String group : watersheds) {
      number++;
      if (watersheds.size() == 8 && number == 5) {
        tables.row(
            "cost_effectiveness",
            "grouping",
            "watershed",
            "group",
            group,
            "year",
            "all",
            "measure",
            "per-property",
            "basis",
            "cash-and-in-kind",
            "denominator",
            0.0);
        continue;
      }
      double value = 2500 + 900 * ((number * 7) % 6);
      boolean noLimits = number % 8 == 3;
      cost(
          "watershed",
          group,
          value,
          noLimits ? null : value * 0.55,
          noLimits ? null : value * (number % 8 == 4 ? 6 : 1.7),
          3 + number * 5 % 31);
    }
  }

  private void cost(
      String grouping, String group, double value, Double lower, Double upper, double properties) {
    tables.row(
        "cost_effectiveness",
        "grouping",
        grouping,
        "group",
        group,
        "year",
        "all",
        "measure",
        "per-property",
        "basis",
        "cash-and-in-kind",
        "numerator_usd",
        value * properties,
        "denominator",
        properties,
        "value_usd",
        value,
        "lower",
        lower,
        "upper",
        upper,
        "clusters",
        88,
        "clusters_left_out",
        12);
  }

  void sensitivity() {
    Object[][] rows = {
      {"yearly damage", 0.5, 1.0, 1.5, 1.05, 2.1, 3.2},
      {"discount rate", 0.0, 0.03, 0.07, 2.5, 2.1, 1.7},
      {"working share", 0.72, 0.84, 0.92, 1.8, 2.1, 2.3},
      {"labor rate", 20.0, 28.0, 40.0, 2.3, 2.1, 1.8},
      {"horizon years", 5.0, 10.0, 20.0, 1.4, 2.1, 2.8}
    };
    for (Object[] row : rows) {
      tables.row(
          "sensitivity",
          "assumption",
          row[0],
          "low",
          row[1],
          "base",
          row[2],
          "high",
          row[3],
          "ratio_low",
          row[4],
          "ratio_base",
          row[5],
          "ratio_high",
          row[6]);
    }
  }

  void season() {
    for (int year = 2026; year <= 2028; year++) {
      double expected = 12.4 + (year - 2026) * 1.7;
      tables.row(
          "season_forecast",
          "grouping",
          "all",
          "group",
          "all",
          "year",
          year - 2025,
          "first_day",
          LocalDate.of(year, 1, 1),
          "last_day",
          LocalDate.of(year, 12, 31),
          "expected_failures",
          expected,
          "lower",
          expected - 5.6,
          "upper",
          expected + 6.9,
          "visits",
          310.0,
          "hours",
          742.0,
          "cost_usd",
          41250.0);
    }
  }
}
