package pondtally.reports.edition;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** What of the result tables is published at all. A table that is not named here is left out. */
final class PublicColumns {

  /** Groupings that are published: crews are private, and pipes within watersheds too small. */
  static final Set<String> GROUPINGS =
      Set.of("all", "pipe", "kind", "watershed", "cohort", "build", "setting");

  /** Tables with a line for each group that is kept, with its figures withheld. */
  static final Set<String> KEPT_LINES =
      Set.of("failure_rates", "costs", "wetland", "survival_summary");

  /** Tables of which a small group's rows are left out altogether. */
  static final Set<String> GROUPED =
      Set.of(
          "survival_curves",
          "survival_summary",
          "dating_comparison",
          "cumulative_incidence",
          "repeat_failures",
          "parametric_fits",
          "fit_check",
          "failure_rates",
          "failure_causes",
          "costs",
          "cost_effectiveness",
          "benefit_cost",
          "benefit_years",
          "wetland",
          "removals_avoided",
          "properties",
          "season_forecast",
          "visit_interval");

  /** Tables that compare two groups. */
  static final Set<String> PAIRS =
      Set.of("mean_life_differences", "group_tests", "rate_ratios", "sample_size");

  /** Tables about the whole program alone. */
  static final Set<String> WHOLE = Set.of("sensitivity");

  /** Figures of a group's line that add up to the line of all groups, by table. */
  static final Map<String, List<String>> ADDITIVE =
      Map.of(
          "costs",
          List.of(
              "sites",
              "devices",
              "devices_costed",
              "build_usd",
              "upkeep_usd",
              "in_kind_usd",
              "estimated_usd",
              "total_usd",
              "volunteer_hours",
              "devices_estimated"),
          "failure_rates",
          List.of("devices", "failures", "device_years", "expected"),
          "survival_summary",
          List.of("devices", "lives", "failures", "device_years"),
          "failure_causes",
          List.of("failures"),
          "wetland",
          List.of(
              "sites",
              "sites_measured",
              "ponds",
              "acres_before",
              "acres_retained_verified",
              "acres_retained_unverified",
              "acre_years",
              "acre_years_extrapolated",
              "hectares_retained_verified",
              "acres_lost_to_lowering"),
          "properties",
          List.of("properties_recorded", "properties_protected", "property_years"),
          "cost_effectiveness",
          List.of("numerator_usd", "denominator"),
          "benefit_cost",
          List.of("cost_usd", "benefit_usd", "sites", "sites_left_out"),
          "season_forecast",
          List.of("expected_failures", "visits", "hours", "cost_usd"));

  /** Columns besides grouping and group that single out a row of an additive table. */
  static final Map<String, List<String>> ALSO_KEY =
      Map.of(
          "survival_summary", List.of("method"),
          "failure_rates", List.of("year"),
          "costs", List.of("year"),
          "wetland", List.of("year"),
          "failure_causes", List.of("cause"),
          "properties", List.of("year", "property_type"),
          "cost_effectiveness", List.of("year", "measure", "basis"),
          "benefit_cost", List.of("basis", "discount_rate"),
          "removals_avoided", List.of("year", "evidence"),
          "season_forecast", List.of("year"));

  /**
   * Counts of what was left out, by table: told for all devices together only. They are nought in
   * most groups, and a nought is known as soon as the others make up the total.
   */
  static final Map<String, List<String>> OF_ALL_ONLY =
      Map.of(
          "benefit_cost", List.of("sites_without_damage", "sites_without_cost"),
          "cost_effectiveness", List.of("clusters_left_out"),
          "season_forecast", List.of("devices_failed"));

  private PublicColumns() {}
}
