package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.stats.LogRank;
import pondtally.stats.LogRankWeight;
import pondtally.stats.RiskTable;

/**
 * Whether later years of installation, or wider pipes of one wall, fail sooner or later than others
 * (Tarone 1975). Years and inches are the scores.
 */
final class TrendTests {

  private static final String TEST = "trend";

  private TrendTests() {}

  /** Both trends, where there are at least two years or two diameters of a wall. */
  static List<TestAnalysis.Row> rows(LifeTally tally, int groupsBelow) {
    List<TestAnalysis.Row> rows = new ArrayList<>();
    addYears(rows, tally, Comparisons.groups(tally, Grouping.COHORT, groupsBelow));
    addDiameters(rows, tally, Comparisons.groups(tally, Grouping.PIPE, groupsBelow));
    return rows;
  }

  private static void addYears(
      List<TestAnalysis.Row> rows, LifeTally tally, List<GroupKey> cohorts) {
    if (cohorts.size() > 1) {
      double[] years =
          cohorts.stream().mapToDouble(key -> Double.parseDouble(key.group())).toArray();
      List<RiskTable> tables = cohorts.stream().map(tally::failures).toList();
      LogRank test = LogRank.of(tables, LogRankWeight.LOG_RANK);
      String dating = TestNotes.ofDating(tally.dating(), Grouping.COHORT);
      rows.add(row(Grouping.COHORT, null, test.trend(years), "later installations", dating));
    }
  }

  private static void addDiameters(
      List<TestAnalysis.Row> rows, LifeTally tally, List<GroupKey> pipes) {
    SortedMap<String, SortedMap<Double, GroupKey>> walls = new TreeMap<>();
    SortedSet<Double> inches = new TreeSet<>();
    for (GroupKey pipe : pipes) {
      String[] words = pipe.group().split(" ");
      if (words.length == 3) {
        double diameter = Double.parseDouble(words[1]);
        walls.computeIfAbsent(words[0], k -> new TreeMap<>()).put(diameter, pipe);
        inches.add(diameter);
      }
    }
    if (walls.values().stream().anyMatch(byDiameter -> byDiameter.size() > 1)) {
      List<List<RiskTable>> strata =
          walls.values().stream().map(wall -> tables(tally, wall, inches)).toList();
      double[] scores = inches.stream().mapToDouble(Double::doubleValue).toArray();
      LogRank test = LogRank.stratified(strata, LogRankWeight.LOG_RANK);
      rows.add(row(Grouping.PIPE, "wall", test.trend(scores), "wider pipes of one wall", null));
    }
  }

  private static List<RiskTable> tables(
      LifeTally tally, SortedMap<Double, GroupKey> wall, SortedSet<Double> inches) {
    return inches.stream()
        .map(d -> wall.containsKey(d) ? tally.failures(wall.get(d)) : RiskTable.empty())
        .toList();
  }

  private static TestAnalysis.Row row(
      Grouping grouping, String strata, LogRank.Trend trend, String what, String dating) {
    if (trend.z().isEmpty()) {
      return new TestAnalysis.Row(
          TEST, grouping.code(), strata, null, null, null, null, null, null, "no failure to test");
    }
    double z = trend.z().getAsDouble();
    String note = "direction, if any: " + what + " fail " + (z > 0 ? "sooner" : "later");
    return new TestAnalysis.Row(
        TEST,
        grouping.code(),
        strata,
        null,
        null,
        z * z,
        1,
        Cells.of(trend.pValue()),
        null,
        TestNotes.joined(z == 0 ? null : note, dating));
  }
}
