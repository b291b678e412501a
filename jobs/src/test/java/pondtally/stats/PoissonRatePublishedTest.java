package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pondtally.stats.Published.assertCell;
import static pondtally.stats.Published.count;
import static pondtally.stats.Published.number;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Exact limits of counts, rates and ratios against R's poisson.test, and printed figures. */
class PoissonRatePublishedTest {
  @Test
  void garwoodLimits() {
    List<CSVRecord> rows = Published.rows("rates/poisson_garwood_limits.csv");
    assertEquals(105, rows.size());
    for (CSVRecord row : rows) {
      Limits limits = PoissonRate.countLimits(count(row, "count"), number(row, "conf"));
      assertCell(row, "lower", limits.lower());
      assertCell(row, "upper", limits.upper());
    }
  }

  @Test
  void rates() {
    List<CSVRecord> rows = Published.rows("rates/poisson_rates.csv");
    assertEquals(4, rows.size());
    for (CSVRecord row : rows) {
      PoissonRate rate = PoissonRate.of(count(row, "events"), number(row, "exposure"));
      assertCell(row, "rate", rate.per100DeviceYears().getAsDouble() / 100);
      Limits limits = rate.limitsPer100DeviceYears();
      assertCell(row, "lower95", limits.lower().getAsDouble() / 100);
      assertCell(row, "upper95", limits.upper().getAsDouble() / 100);
    }
  }

  @Test
  void ratios() {
    List<CSVRecord> rows = Published.rows("rates/poisson_rate_ratio.csv");
    assertEquals(4, rows.size());
    for (CSVRecord row : rows) {
      double level = number(row, "conf");
      RateRatio ratio =
          RateRatio.of(
              new PoissonRate(count(row, "events1"), number(row, "time1"), level),
              new PoissonRate(count(row, "events2"), number(row, "time2"), level));
      assertCell(row, "rate_ratio", ratio.ratio());
      assertCell(row, "lower", ratio.limits().lower());
      assertCell(row, "upper", ratio.limits().upper());
      assertCell(row, "p_exact_central", ratio.pValue());
    }
  }

  /** Garwood 1936 as tabled by Pearson & Hartley; typed from memory. */
  @Test
  void printedLimits() {
    assertEquals(3.69, PoissonRate.countLimits(0, 0.95).upper().getAsDouble(), 0.005);
    assertEquals(5.57, PoissonRate.countLimits(1, 0.95).upper().getAsDouble(), 0.005);
    assertEquals(11.67, PoissonRate.countLimits(5, 0.95).upper().getAsDouble(), 0.005);
    assertEquals(18.39, PoissonRate.countLimits(10, 0.95).upper().getAsDouble(), 0.005);
    assertEquals(4.80, PoissonRate.countLimits(10, 0.95).lower().getAsDouble(), 0.005);
    // Welsh nickel workers, printed on the help page of R's poisson.test.
    Limits nickel = PoissonRate.of(137, 24.19893).limitsPer100DeviceYears();
    assertEquals(4.753125, nickel.lower().getAsDouble() / 100, 5e-7);
    assertEquals(6.692709, nickel.upper().getAsDouble() / 100, 5e-7);
  }
}
