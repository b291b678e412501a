package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Shares of causes, incidence by cause and repeat failures of invented lives. */
final class InventedCauses {

  private final TestTables tables;
  private final List<InventedLife> lives;

  InventedCauses(TestTables tables, List<InventedLife> lives) {
    this.tables = tables;
    this.lives = lives;
  }

  void causes() {
    long all = lives.stream().filter(InventedLife::failed).count();
    tables.table("failure_causes");
    for (String cause : InventedLife.CAUSES) {
      long count = lives.stream().filter(life -> life.cause().equals(cause)).count();
      double p = all == 0 ? 0 : (double) count / all;
      double z = 1.96;
      double half =
          z
              * Math.sqrt(p * (1 - p) / Math.max(1, all) + z * z / (4.0 * all * all))
              / (1 + z * z / all);
      double mid = (p + z * z / (2 * all)) / (1 + z * z / all);
      tables.row(
          "failure_causes",
          "grouping",
          "all",
          "group",
          "all",
          "cause",
          cause,
          "failures",
          count,
          "share",
          all == 0 ? null : p,
          "lower",
          all == 0 ? null : mid - half,
          "upper",
          all == 0 ? null : mid + half);
    }
  }

  void incidence() {
    List<InventedLife> sorted = new ArrayList<>(lives);
    sorted.sort((a, b) -> Integer.compare(a.days(), b.days()));
    Map<String, Double> incidence = new TreeMap<>();
    double s = 1;
    int atRisk = sorted.size();
    for (InventedLife life : sorted) {
      String cause = life.failed() ? life.cause() : life.retired() ? "retired" : "";
      if (!cause.isEmpty()) {
        double now = incidence.merge(cause, s / atRisk, Double::sum);
        s *= 1 - 1.0 / atRisk;
        tables.row(
            "cumulative_incidence",
            "grouping",
            "all",
            "group",
            "all",
            "cause",
            cause,
            "time_days",
            (double) life.days(),
            "at_risk",
            atRisk,
            "incidence",
            now,
            "lower",
            now * 0.75,
            "upper",
            Math.min(1, now * 1.3));
      }
      atRisk--;
    }
  }

  void repeats() {
    for (String group : List.of("all")) {
      List<InventedLife> sorted = new ArrayList<>(lives);
      sorted.sort((a, b) -> Integer.compare(a.days(), b.days()));
      double mean = 0;
      double variance = 0;
      int atRisk = sorted.size();
      for (InventedLife life : sorted) {
        if (life.failed()) {
          mean += 1.6 / atRisk;
          variance += 3.0 / atRisk / atRisk;
          double half = 1.96 * Math.sqrt(variance);
          tables.row(
              "repeat_failures",
              "grouping",
              "all",
              "group",
              group,
              "time_days",
              (double) life.days(),
              "at_risk",
              atRisk,
              "mean_failures",
              mean,
              "lower",
              Math.max(0, mean - half),
              "upper",
              mean + half);
        }
        atRisk--;
      }
    }
  }
}
