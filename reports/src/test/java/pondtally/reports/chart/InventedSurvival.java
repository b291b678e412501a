package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Product-limit curves of invented lives, and what is read from them. */
final class InventedSurvival {

  private final TestTables tables;

  InventedSurvival(TestTables tables) {
    this.tables = tables;
  }

  void survival(String grouping, Map<String, List<InventedLife>> groups) {
    groups.forEach(
        (group, members) -> {
          TreeMap<Integer, int[]> days = new TreeMap<>();
          members.forEach(
              life -> days.computeIfAbsent(life.days(), d -> new int[2])[life.failed() ? 0 : 1]++);
          int atRisk = members.size();
          double s = 1;
          double sum = 0;
          int supported = -1;
          Map<Integer, double[]> at = new LinkedHashMap<>();
          for (var day : days.entrySet()) {
            int events = day.getValue()[0];
            int censored = day.getValue()[1];
            s *= 1 - (double) events / atRisk;
            sum += atRisk > events ? (double) events / (atRisk * (double) (atRisk - events)) : 0;
            double[] limits = limits(s, sum, atRisk);
            tables.row(
                "survival_curves",
                "grouping",
                grouping,
                "group",
                group,
                "method",
                "product-limit",
                "time_days",
                (double) day.getKey(),
                "at_risk",
                atRisk,
                "events",
                events,
                "censored",
                censored,
                "survival",
                s,
                "std_error",
                s * Math.sqrt(sum),
                "lower",
                s == 0 ? null : limits[0],
                "upper",
                s == 0 ? null : limits[1]);
            at.put(day.getKey(), new double[] {s, limits[0], limits[1]});
            supported = atRisk >= 5 ? day.getKey() : supported;
            atRisk -= events + censored;
          }
          summary(grouping, group, members, at, supported);
        });
  }

  private static double[] limits(double s, double sum, int atRisk) {
    if (s >= 1 || s <= 0) {
      return new double[] {Math.pow(0.025, 1.0 / atRisk), 1};
    }
    double width = 1.96 * Math.sqrt(sum) / Math.abs(Math.log(s));
    return new double[] {Math.pow(s, Math.exp(width)), Math.pow(s, Math.exp(-width))};
  }

  private void summary(
      String grouping,
      String group,
      List<InventedLife> members,
      Map<Integer, double[]> at,
      int supported) {
    List<Object> cells =
        new ArrayList<>(
            List.of(
                "grouping",
                grouping,
                "group",
                group,
                "method",
                "product-limit",
                "devices",
                members.size(),
                "lives",
                members.size(),
                "failures",
                members.stream().filter(InventedLife::failed).count()));
    if (supported >= 0) {
      Collections.addAll(cells, "supported_days", (double) supported);
    }
    for (int years : new int[] {1, 3, 5}) {
      double[] last = null;
      for (var entry : at.entrySet()) {
        last = entry.getKey() <= years * 365.25 ? entry.getValue() : last;
      }
      if (last != null && supported >= years * 365.25) {
        String column = "survival_" + years + "y";
        Collections.addAll(
            cells, column, last[0], column + "_lower", last[1], column + "_upper", last[2]);
      }
    }
    tables.row("survival_summary", cells.toArray());
  }
}
