package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pondtally.stats.Published.assertCell;
import static pondtally.stats.Published.count;
import static pondtally.stats.Published.number;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Valve seat replacements of 41 diesel engines, Nelson 1995. */
class MeanCumulativePublishedTest {
  @Test
  void valveSeats() {
    List<RepeatHistory> engines = engines();
    assertEquals(41, engines.size());
    RepeatCounts counts = new RepeatCounts();
    engines.forEach(counts::add);
    assertEquals(48, counts.events());
    MeanCumulative mean = MeanCumulative.of(counts);
    RepeatSpread spread = mean.spread();
    engines.forEach(engine -> spread.add(List.of(engine)));
    List<CSVRecord> rows = Published.rows("curves/mcf_valve_seat.csv");
    assertEquals(46, rows.size());
    assertEquals(46, mean.rows());
    for (int i = 0; i < rows.size(); i++) {
      CSVRecord row = rows.get(i);
      double robust = spread.variances()[i];
      assertEquals(number(row, "time"), mean.time(i));
      assertEquals(count(row, "n_risk"), mean.atRisk(i));
      assertEquals(count(row, "n_events"), mean.events(i));
      assertCell(row, "mcf", mean.mean(i));
      assertCell(row, "var_poisson", mean.poissonVariance(i));
      assertCell(row, "var_lawless_nadeau", robust);
      assertCell(row, "se_lawless_nadeau", Math.sqrt(robust));
      Limits limits = mean.limits(i, Math.sqrt(robust), 0.95);
      assertCell(row, "lower95_log", limits.lower());
      assertCell(row, "upper95_log", limits.upper());
    }
  }

  private static List<RepeatHistory> engines() {
    Map<String, List<Double>> events = new TreeMap<>();
    Map<String, Double> ends = new TreeMap<>();
    for (CSVRecord row : Published.rows("curves/valve_seat.csv")) {
      List<Double> own = events.computeIfAbsent(row.get("id"), id -> new ArrayList<>());
      if (row.get("status").equals("1")) {
        own.add(number(row, "time"));
      } else {
        ends.put(row.get("id"), number(row, "time"));
      }
    }
    return ends.entrySet().stream()
        .map(e -> RepeatHistory.of(0, e.getValue(), unboxed(events.get(e.getKey()))))
        .toList();
  }

  private static double[] unboxed(List<Double> values) {
    return values.stream().mapToDouble(v -> v).toArray();
  }
}
