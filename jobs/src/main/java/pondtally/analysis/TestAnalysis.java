package pondtally.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.stats.LogRank;
import pondtally.stats.LogRankWeight;
import pondtally.stats.RiskTable;

/**
 * Whether survival differs between groups: the log-rank test over all groups of a grouping and for
 * each pair, and between pipe types also stratified by watershed, since the crew that uses one pipe
 * works in one valley; the Peto-Peto test, which gives early failures more weight; {@link
 * TrendTests trends} and {@link IncidenceTests causes}. Groups with fewer devices than {@code
 * groups_below}, and devices whose group is not recorded, are left out of the tests.
 */
public final class TestAnalysis {

  private static final String LOG_RANK = "log-rank";
  private static final Map<String, LogRankWeight> TESTS =
      Map.of(LOG_RANK, LogRankWeight.LOG_RANK, "peto-peto", LogRankWeight.PETO_PETO);
  private static final List<Grouping> GROUPINGS =
      List.of(
          Grouping.PIPE,
          Grouping.KIND,
          Grouping.WATERSHED,
          Grouping.CREW,
          Grouping.COHORT,
          Grouping.BUILD,
          Grouping.SETTING);

  private TestAnalysis() {}

  /** One row of the result table {@code group_tests}. */
  public record Row(
      String test,
      String grouping,
      String strata,
      String groupA,
      String groupB,
      Double statistic,
      Integer df,
      Double pValue,
      Double pAdjusted,
      String note) {}

  /** The rows of the result table. */
  public static List<Row> rows(LifeTally tally, int groupsBelow) {
    List<Row> rows = new ArrayList<>();
    for (Grouping grouping : GROUPINGS) {
      List<GroupKey> groups = Comparisons.groups(tally, grouping, groupsBelow);
      if (groups.size() < 2) {
        continue;
      }
      List<RiskTable> tables = groups.stream().map(tally::failures).toList();
      String dating = TestNotes.ofDating(tally.dating(), grouping);
      addTests(rows, grouping, null, groups, List.of(tables), dating);
      if (grouping == Grouping.PIPE) {
        addTests(rows, grouping, "watershed", groups, byWatershed(tally, groups), dating);
      }
    }
    rows.addAll(TrendTests.rows(tally, groupsBelow));
    rows.addAll(IncidenceTests.rows(tally, groupsBelow));
    return rows;
  }

  /** For each watershed, the lives of each pipe type there. */
  private static List<List<RiskTable>> byWatershed(LifeTally tally, List<GroupKey> pipes) {
    Map<String, List<RiskTable>> strata = new LinkedHashMap<>();
    for (GroupKey watershed : tally.groups(Grouping.WATERSHED)) {
      List<RiskTable> tables = new ArrayList<>();
      for (GroupKey pipe : pipes) {
        GroupKey both =
            new GroupKey(Grouping.PIPE_IN_WATERSHED, watershed.group() + " / " + pipe.group());
        tables.add(tally.has(both) ? tally.failures(both) : RiskTable.empty());
      }
      strata.put(watershed.group(), tables);
    }
    return List.copyOf(strata.values());
  }

  private static void addTests(
      List<Row> rows,
      Grouping grouping,
      String strata,
      List<GroupKey> groups,
      List<List<RiskTable>> tables,
      String dating) {
    String note =
        TestNotes.joined(
            dating, TestNotes.ofExpected(LogRank.stratified(tables, LogRankWeight.LOG_RANK)));
    for (Map.Entry<String, LogRankWeight> test : TESTS.entrySet()) {
      LogRank all = LogRank.stratified(tables, test.getValue());
      rows.add(row(test.getKey(), grouping, strata, null, all, OptionalDouble.empty(), note));
    }
    if (groups.size() > 2 && groups.size() <= Comparisons.MOST_PAIRED) {
      for (LogRank.Pair pair : LogRank.pairwise(tables, LogRankWeight.LOG_RANK)) {
        Comparisons.Pair names =
            new Comparisons.Pair(groups.get(pair.first()), groups.get(pair.second()));
        String rough = TestNotes.joined(dating, TestNotes.ofExpected(pair.test()));
        rows.add(row(LOG_RANK, grouping, strata, names, pair.test(), pair.adjustedP(), rough));
      }
    }
  }

  private static Row row(
      String test,
      Grouping grouping,
      String strata,
      Comparisons.Pair pair,
      LogRank result,
      OptionalDouble adjusted,
      String note) {
    return new Row(
        test,
        grouping.code(),
        strata,
        pair == null ? null : pair.a().group(),
        pair == null ? null : pair.b().group(),
        Cells.of(result.chiSquare()),
        result.degreesOfFreedom(),
        Cells.of(result.pValue()),
        Cells.of(adjusted),
        note);
  }
}
