package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pondtally.stats.HazardReference.number;
import static pondtally.stats.HazardReference.whole;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Interval estimate against published data and the results of reference solvers; sources are in
 * {@code published/hazards/README.md}.
 */
class IntervalEstimatePublishedTest {
  /** Beadle et al. 1984: cosmetic deterioration after radiotherapy, in months. */
  static IntervalCounts cosmesis(String group) {
    IntervalCounts counts = IntervalCounts.empty();
    for (Map<String, String> row : HazardReference.rows("breast_cosmesis")) {
      if (group.equals("both") || group.equals(row.get("group"))) {
        counts.add(0, number(row, "left"), number(row, "right"), 1);
      }
    }
    return counts;
  }

  @ParameterizedTest
  @ValueSource(strings = {"RT", "RCT", "both"})
  void massesOfTheCosmesisTrial(String group) {
    IntervalEstimate estimate = IntervalEstimate.of(cosmesis(group));
    List<Map<String, String>> expected =
        HazardReference.rows("turnbull_breast_cosmesis", "group", group);
    assertEquals(expected.size(), estimate.masses().size());
    for (int j = 0; j < expected.size(); j++) {
      IntervalEstimate.Mass mass = estimate.masses().get(j);
      assertEquals(number(expected.get(j), "left"), mass.leftDays());
      assertEquals(number(expected.get(j), "right"), mass.rightDays());
      assertEquals(number(expected.get(j), "mass"), mass.mass(), 1e-9);
      assertEquals(number(expected.get(j), "survival_after"), mass.survivalAfter(), 1e-9);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"RT", "RCT", "both"})
  void likelihoodOfTheCosmesisTrial(String group) {
    IntervalEstimate estimate = IntervalEstimate.of(cosmesis(group));
    Map<String, String> expected =
        HazardReference.rows("turnbull_breast_cosmesis_stats", "group", group).get(0);
    assertEquals(number(expected, "loglik"), estimate.logLikelihood(), 1e-10);
    assertEquals(number(expected, "npsurv_loglik"), estimate.logLikelihood(), 1e-10);
    assertEquals(whole(expected, "turnbull_intervals"), estimate.masses().size());
    assertEquals(
        whole(expected, "intervals_with_mass"),
        estimate.masses().stream().filter(m -> m.mass() > 1e-9).count());
    assertTrue(estimate.residual() < 1e-10, "residual " + estimate.residual());
  }

  /**
   * The general-purpose fit stops early and lets the curve fall at midpoints: its own note allows
   * 1.3e-3.
   */
  @ParameterizedTest
  @ValueSource(strings = {"RT", "RCT", "both"})
  void curveLiesWithinItsBoundsAroundTheLooserReference(String group) {
    IntervalEstimate estimate = IntervalEstimate.of(cosmesis(group));
    for (Map<String, String> row :
        HazardReference.rows("turnbull_breast_cosmesis_survfit", "group", group)) {
      IntervalEstimate.Bounds bounds = estimate.survivalBounds(number(row, "time"));
      double reference = number(row, "survival");
      assertTrue(
          reference > bounds.lower() - 1.3e-3 && reference < bounds.upper() + 1.3e-3,
          () -> row + " outside " + bounds);
    }
  }

  /** Fay and Shaw 2010 print four decimals; figures typed from memory (see README). */
  @Test
  void printedMasses() {
    int checked = 0;
    for (Map<String, String> row : HazardReference.rows("published_checks")) {
      String quantity = row.get("quantity");
      if (quantity.contains("mass (")) {
        IntervalEstimate estimate =
            IntervalEstimate.of(cosmesis(quantity.substring(0, quantity.indexOf(' '))));
        double right = Double.parseDouble(quantity.replaceAll(".*,(\\d+)\\]", "$1"));
        IntervalEstimate.Mass mass =
            estimate.masses().stream()
                .filter(m -> m.rightDays() == right)
                .findFirst()
                .orElseThrow();
        assertEquals(number(row, "published"), mass.mass(), 5.01e-5, quantity);
        checked++;
      }
    }
    assertEquals(19, checked);
  }

  /**
   * Nelson 1982, p. 415: turbine parts inspected once each; every reading stands alone, so masses
   * are plain shares.
   */
  @Test
  void turbinePartCracks() {
    IntervalCounts counts = IntervalCounts.empty();
    for (Map<String, String> row : HazardReference.rows("turbine_part_cracks")) {
      counts.add(0, number(row, "left"), number(row, "right"), Long.parseLong(row.get("count")));
    }
    IntervalEstimate estimate = IntervalEstimate.of(counts);
    List<Map<String, String>> expected = HazardReference.rows("turnbull_cracks");
    assertEquals(expected.size(), estimate.masses().size());
    for (int j = 0; j < expected.size(); j++) {
      assertEquals(number(expected.get(j), "right"), estimate.masses().get(j).rightDays());
      assertEquals(number(expected.get(j), "mass"), estimate.masses().get(j).mass(), 1e-12);
      assertEquals(
          number(expected.get(j), "survival_after"),
          estimate.masses().get(j).survivalAfter(),
          1e-12);
    }
  }
}
