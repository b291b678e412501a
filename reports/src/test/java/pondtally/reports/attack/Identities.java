package pondtally.reports.attack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import pondtally.reports.attack.Figures.Key;

/**
 * What columns say of each other within a row, as their descriptions do: sums, and counts of which
 * one is part of another. Each is used where it holds in all rows.
 */
final class Identities {

  /**
   * @param table where it holds
   * @param factors the columns with their factors
   * @param isLimit whether they come to at most nought instead of nought
   */
  private record Identity(String table, Map<String, Double> factors, boolean isLimit) {}

  private static final List<Identity> KNOWN =
      List.of(
          sum("costs", "total_usd", "build_usd", "upkeep_usd", "in_kind_usd"),
          sum("benefit_cost", "benefit_usd", "net_usd", "cost_usd"),
          sum(
              "benefit_cost",
              "cost_usd",
              "build_usd",
              "visit_usd",
              "repair_usd",
              "replacement_usd"),
          sum("costs", "devices", "devices_costed", "devices_estimated"),
          part("costs", "devices_costed", "devices"),
          part("costs", "devices_estimated", "devices"),
          part("costs", "sites", "devices"),
          part("costs", "before_index_nominal_usd", "total_usd"),
          part("wetland", "sites_measured", "sites"),
          part("wetland", "ponds", "sites"),
          part("wetland", "acre_years_extrapolated", "acre_years"),
          part("wetland", "acres_before", "acres_retained_verified"),
          part("properties", "properties_protected", "properties_recorded"),
          part("survival_summary", "failures", "lives"),
          part("survival_summary", "devices", "lives"),
          part("season_forecast", "devices_failed", "devices"),
          part("season_forecast", "lower", "expected_failures"),
          part("removals_avoided", "sites_left_out", "sites"),
          part("benefit_cost", "sites_without_damage", "sites_left_out"),
          part("benefit_cost", "sites_without_cost", "sites_left_out"),
          part("benefit_cost", "clusters", "sites"),
          part("parametric_fits", "failures", "lives"));

  private final Map<String, Figures> tables;
  private final Equations equations;

  Identities(Map<String, Figures> tables, Equations equations) {
    this.tables = tables;
    this.equations = equations;
  }

  private static Identity sum(String table, String total, String... parts) {
    Map<String, Double> factors = new TreeMap<>(Map.of(total, -1.0));
    Stream.of(parts).forEach(part -> factors.put(part, 1.0));
    return new Identity(table, factors, false);
  }

  private static Identity part(String table, String part, String whole) {
    return new Identity(table, Map.of(part, 1.0, whole, -1.0), true);
  }

  void learn() {
    for (Identity identity : KNOWN) {
      Figures figures = tables.get(identity.table());
      if (figures != null && figures.columns().containsAll(identity.factors().keySet())) {
        learn(identity, figures);
      }
    }
  }

  private void learn(Identity identity, Figures figures) {
    List<Key> rows = new ArrayList<>();
    for (Key key : figures.keys()) {
      boolean isThere =
          identity.factors().keySet().stream().allMatch(column -> figures.isThere(key, column));
      if (isThere) {
        double sum = 0;
        double size = 0;
        for (Map.Entry<String, Double> factor : identity.factors().entrySet()) {
          double term = factor.getValue() * figures.value(key, factor.getKey());
          sum += term;
          size += Math.abs(term);
        }
        if (Attack.isSame(sum + size, size) || (identity.isLimit() && sum < 0)) {
          rows.add(key);
        } else {
          return;
        }
      }
    }
    rows.forEach(key -> learn(identity, figures, key));
  }

  private void learn(Identity identity, Figures figures, Key key) {
    Map<String, Double> unknown = new TreeMap<>();
    double rest = 0;
    for (Map.Entry<String, Double> factor : identity.factors().entrySet()) {
      if (!figures.isHidden(key, factor.getKey())) {
        rest -= factor.getValue() * figures.value(key, factor.getKey());
      } else {
        String name = figures.name(key, factor.getKey());
        unknown.put(name, factor.getValue());
        if (figures.isEverNegative(factor.getKey())) {
          equations.mayBeNegative(name);
        }
      }
    }
    // Years of single groups hang on nothing: with them the programs would only become longer.
    if (!unknown.isEmpty() && unknown.keySet().stream().anyMatch(equations::knows)) {
      if (identity.isLimit()) {
        equations.atMost(unknown, rest);
      } else {
        equations.add(unknown, rest);
      }
    }
  }
}
