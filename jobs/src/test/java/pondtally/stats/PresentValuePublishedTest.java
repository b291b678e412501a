package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pondtally.stats.Published.assertCell;
import static pondtally.stats.Published.count;
import static pondtally.stats.Published.number;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Discounting against the formulas of NIST Handbook 135 in R, and printed factors. */
class PresentValuePublishedTest {
  @Test
  void factors() {
    List<CSVRecord> rows = Published.rows("cost/cost_factors.csv");
    assertEquals(24, rows.size());
    for (CSVRecord row : rows) {
      double d = number(row, "discount_rate");
      int n = (int) count(row, "years");
      assertCell(row, "SPV", PresentValue.single(d, n));
      assertCell(row, "UPV", PresentValue.uniform(d, n));
      assertCell(row, "UCR", PresentValue.capitalRecovery(d, n));
      assertCell(row, "UPV_star", PresentValue.modifiedUniform(d, number(row, "escalation"), n));
    }
  }

  @Test
  void netPresentCostAndEquivalentAnnualCost() {
    List<CSVRecord> rows = Published.rows("cost/cost_npv_eac.csv");
    assertEquals(9, rows.size());
    for (CSVRecord row : rows) {
      double[] costs =
          Published.rows("cost/cost_flows.csv").stream()
              .filter(r -> r.get("option").equals(row.get("option")))
              .mapToDouble(r -> number(r, "cost"))
              .toArray();
      double d = number(row, "discount_rate");
      int n = (int) count(row, "years");
      assertEquals(n + 1, costs.length);
      assertCell(row, "npv_cost", PresentValue.net(d, costs));
      double annual = PresentValue.equivalentAnnual(PresentValue.net(d, costs), d, n);
      assertCell(row, "equivalent_annual_cost", annual);
      assertCell(row, "undiscounted", PresentValue.net(0, costs));
    }
  }

  @Test
  void realRates() {
    for (CSVRecord row : Published.rows("cost/cost_real_rate.csv")) {
      double real = PresentValue.realRate(number(row, "nominal"), number(row, "inflation"));
      assertCell(row, "real_rate", real);
    }
  }

  @Test
  void expectedCostOfFirstFailure() {
    List<CSVRecord> rows = Published.rows("cost/cost_expected_failure.csv");
    double[] survival = new double[rows.size() + 1];
    survival[0] = 1;
    for (int t = 1; t < survival.length; t++) {
      survival[t] = number(rows.get(t - 1), "survival");
      double[] sofar = Arrays.copyOf(survival, t + 1);
      assertCell(
          rows.get(t - 1), "cumulative", PresentValue.expectedFailureCost(4000, 0.03, sofar));
    }
  }

  /** Factors and present values as printed; see each line for its source. */
  @Test
  void printedFactors() {
    // NIST Handbook 135 (Fuller & Petersen 1995), read in a second-hand copy.
    assertEquals(0.642, PresentValue.single(0.03, 15), 5e-4);
    assertEquals(11.94, PresentValue.uniform(0.03, 15), 5e-3);
    assertEquals(13.89, PresentValue.modifiedUniform(0.03, 0.02, 15), 5e-3);
    assertEquals(4.8562, PresentValue.modifiedUniform(0.03, 0.02, 5), 5e-5);
    // Documentation of a general financial library.
    assertEquals(3.790786769, PresentValue.uniform(0.10, 5), 5e-10);
    assertEquals(337733.5, 30000 * PresentValue.uniform(0.08, 30), 0.05);
    double everyThird = 0;
    for (int year = 3; year <= 50; year += 3) {
      everyThird += 1000 * PresentValue.single(0.03, year);
    }
    assertEquals(8174.547, everyThird, 5e-4);
    // Discount tables of NISTIR 85-3273, typed from memory.
    assertEquals(0.744, PresentValue.single(0.03, 10), 5e-4);
    assertEquals(8.53, PresentValue.uniform(0.03, 10), 5e-3);
    assertEquals(19.60, PresentValue.uniform(0.03, 30), 5e-3);
  }
}
