package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import pondtally.stats.CountedLives;
import pondtally.stats.IntervalCounts;
import pondtally.stats.IntervalDraws;
import pondtally.stats.IntervalEstimate;
import pondtally.stats.PoissonWeights;
import pondtally.stats.RiskTable;

class IntervalCurveTest {

  private static final double FOREVER = Double.POSITIVE_INFINITY;

  /** Ten lives failed in (100, 200], ten in (300, 400], twenty still good at 500. */
  private static IntervalCounts counts() {
    return IntervalCounts.empty()
        .add(0, 100, 200, 10)
        .add(0, 300, 400, 10)
        .add(0, 500, FOREVER, 20);
  }

  private static RiskTable atRisk() {
    return CountedLives.ofOneKind().add(0, 500, 0, 40).anyEvent();
  }

  private static IntervalCurve curve(long clusters, int roundedToDays) {
    IntervalEstimate estimate = IntervalEstimate.of(counts());
    IntervalEstimate coarse = IntervalEstimate.of(counts().roundedOutward(roundedToDays));
    IntervalDraws draws = IntervalDraws.ofRounded(coarse, roundedToDays, 200);
    for (int life = 0; life < 40; life++) {
      byte[] drawn = new byte[200];
      PoissonWeights.of(1, "S" + life).fill(drawn);
      boolean failed = life < 20;
      double left = life < 10 ? 100 : failed ? 300 : 500;
      draws.add(0, left, failed ? left + 100 : FOREVER, drawn);
    }
    double[] ages = {50, 150, 350};
    return new IntervalCurve(estimate, coarse, atRisk(), draws, clusters, ages, 450);
  }

  @Test
  void sharesFallEvenlyAcrossIntervals() {
    IntervalEstimate estimate = IntervalEstimate.of(counts());
    double[] days = {50, 100, 150, 200, 250, 350, 400, 500};
    double[] shares = {1, 1, 0.875, 0.75, 0.75, 0.625, 0.5, 0.5};
    assertArrayEquals(shares, IntervalShares.at(estimate, days), 1e-9);
    assertTrue(Double.isNaN(IntervalShares.at(estimate, 501)));
  }

  @Test
  void meanLifeIsTheAreaUnderThatCurve() {
    // 100 + 87.5 + 75 + 62.5 + 25 days to day 450.
    double mean = IntervalShares.meanLife(IntervalEstimate.of(counts()), 450);
    assertEquals(350, mean, 1e-7);
    assertTrue(Double.isNaN(IntervalShares.meanLife(IntervalEstimate.of(counts()), 600)));
  }

  @Test
  void errorsAreThoseOfABinomialShareWhereEveryLifeIsACluster() {
    IntervalCurve.Figure half = curve(40, 0).survivalAt(400);
    assertEquals(0.5, half.value(), 1e-9);
    // sqrt(0.5 * 0.5 / 40) = 0.079; 200 resamples give it to about one part in twenty.
    assertEquals(0.079, half.stdError().orElseThrow(), 0.012);
    assertTrue(half.limits().lower().orElseThrow() < 0.39);
    assertTrue(half.limits().upper().orElseThrow() > 0.61);
  }

  @Test
  void nothingFailedYetIsNoCertainty() {
    IntervalCurve.Figure early = curve(40, 0).survivalAt(50);
    assertEquals(1, early.value());
    // The share at which 40 of 40 still work with probability 0.025 (Clopper and Pearson 1934).
    assertEquals(0.9119, early.limits().lower().orElseThrow(), 0.00005);
    assertEquals(1, early.limits().upper().orElseThrow());
  }

  @Test
  void fewerThanTenClustersHaveNoLimits() {
    IntervalCurve.Figure half = curve(9, 0).survivalAt(400);
    assertEquals(0.5, half.value(), 1e-9);
    assertFalse(half.limits().known());
    assertTrue(half.stdError().isEmpty());
  }

  @Test
  void roundedResamplesMoveErrorsAndNotTheEstimate() {
    IntervalCurve.Figure half = curve(40, 30).survivalAt(400);
    assertEquals(0.5, half.value(), 1e-9);
    assertEquals(0.079, half.stdError().orElseThrow(), 0.02);
    assertTrue(half.limits().lower().orElseThrow() < 0.5);
    assertTrue(half.limits().upper().orElseThrow() > 0.5);
  }

  @Test
  void drawsOfPartsAddUpAndStrangersAreRefused() {
    IntervalEstimate estimate = IntervalEstimate.of(counts());
    IntervalDraws whole = IntervalDraws.of(estimate, 2);
    IntervalDraws part = IntervalDraws.of(estimate, 2);
    whole.add(0, 100, 200, new byte[] {1, 0}).add(0, 500, FOREVER, new byte[] {2, 3});
    part.add(0, 100, 200, new byte[] {1, 0});
    part.merge(IntervalDraws.of(estimate, 2).add(0, 500, FOREVER, new byte[] {2, 3}));
    assertArrayEquals(new double[] {1, 0, 2}, whole.weights(0));
    assertArrayEquals(whole.weights(0), part.weights(0));
    assertArrayEquals(whole.weights(1), part.weights(1));
    assertThrows(IllegalArgumentException.class, () -> whole.add(0, 101, 200, new byte[] {1, 1}));
  }
}
