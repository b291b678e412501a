package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import pondtally.table.ResultTable;
import pondtally.table.TableSpec;

/** The sample brings something into every result table and every column of it. */
class EveryTableSparkTest {

  /** Made by other commands, on demand, or where a setting asks for it. */
  private static final Set<String> NOT_OF_A_RUN =
      Set.of(
          "contributions",
          "wetland_value",
          "changes",
          "restated",
          "changed_settings",
          "changed_files",
          "changed_rows",
          "changed_records");

  /**
   * Tables with the rows they hold at least: one for each year, group or part that must be there.
   */
  private static final Map<String, Integer> FEWEST_ROWS =
      Map.ofEntries(
          Map.entry("season_forecast", 5 * 10),
          Map.entry("visit_interval", 5),
          Map.entry("visit_interval_curve", 5 * 70),
          Map.entry("buying_list", 10),
          Map.entry("requests", 30),
          Map.entry("lapses", 20),
          Map.entry("program_expenses", 30),
          Map.entry("worklist", 100),
          Map.entry("wetland", 100),
          Map.entry("properties", 100),
          Map.entry("removals_avoided", 100),
          Map.entry("completeness", 20));

  /** What the sample has not: anything out of order, lines of what repairs took, a tenth year. */
  private static final Set<String> EMPTY_IS_GOOD =
      Set.of(
          "visit_interval.reason",
          "buying_list.per_repair",
          "survival_summary.survival_10y",
          "survival_summary.survival_10y_lower",
          "survival_summary.survival_10y_upper");

  @Test
  void everyDeclaredTableIsThere() {
    List<String> expected = new ArrayList<>();
    TableSpec.all().forEach(spec -> expected.add(spec.name()));
    expected.removeAll(NOT_OF_A_RUN);
    List<String> made = SampleRun.sample().tables().stream().map(ResultTable::name).toList();
    List<String> missing = new ArrayList<>(expected);
    missing.removeAll(made);
    assertEquals(List.of(), missing);
  }

  @Test
  void noneIsTrivial() {
    Map<String, String> trivial = new TreeMap<>();
    for (ResultTable table : SampleRun.sample().tables()) {
      if (NOT_OF_A_RUN.contains(table.name())) {
        continue;
      }
      List<CSVRecord> rows = SampleRun.rows(SampleRun.sample(), table.name());
      int fewest = FEWEST_ROWS.getOrDefault(table.name(), 2);
      if (rows.size() < fewest) {
        trivial.put(table.name(), rows.size() + " rows");
        continue;
      }
      for (String column : rows.get(0).toMap().keySet()) {
        Set<String> values = new HashSet<>();
        rows.forEach(row -> values.add(row.get(column)));
        boolean empty = values.equals(Set.of(""));
        if (empty && !EMPTY_IS_GOOD.contains(table.name() + "." + column)) {
          trivial.put(table.name() + "." + column, "always empty");
        }
      }
    }
    assertEquals(Map.of(), trivial);
  }

  @Test
  void theForecastCoversFiveYearsWithLimitsForAllPipesAndWatersheds() {
    Set<String> groupings = new HashSet<>();
    for (CSVRecord row : SampleRun.rows(SampleRun.sample(), "season_forecast")) {
      groupings.add(row.get("grouping"));
      double expected = Double.parseDouble(row.get("expected_failures"));
      assertTrue(Double.parseDouble(row.get("lower")) <= expected, row.toString());
      assertTrue(Double.parseDouble(row.get("upper")) >= expected, row.toString());
      int year = Integer.parseInt(row.get("year"));
      assertTrue(year >= 1 && year <= 5);
    }
    assertEquals(Set.of("all", "pipe", "watershed"), groupings);
  }
}
