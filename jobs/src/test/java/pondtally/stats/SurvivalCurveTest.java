package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Fractions worked by hand, edges, and properties that any product-limit curve must have. */
class SurvivalCurveTest {
  @Test
  void handFractions() {
    // Fail 100, cut 200, fail 300, cut 400: S(300) = 3/4 · 1/2.
    SurvivalCurve curve =
        curve(CountedLives.ofOneKind().add(0, 100, 1).add(0, 200, 0).add(0, 300, 1).add(0, 400, 0));
    assertEquals(1, curve.at(99.5).getAsDouble());
    assertEquals(3 / 4.0, curve.at(100).getAsDouble(), 1e-12);
    assertEquals(3 / 4.0, curve.at(299).getAsDouble(), 1e-12);
    assertEquals(3 / 8.0, curve.at(400).getAsDouble(), 1e-12);
    // Greenwood at 300: (3/8)² (1/(4·3) + 1/(2·1)) = 9/64 · 7/12 = 21/256.
    assertEquals(Math.sqrt(21 / 256.0), curve.stdErrorAt(300).getAsDouble(), 1e-12);
    assertEquals(1 / 4.0 + 1 / 2.0, curve.cumulativeHazard(2), 1e-12);
    assertEquals(1 / 16.0 + 1 / 4.0, curve.hazardVarianceAalen(2), 1e-12);
    assertEquals(300, curve.quantile(0.5).getAsDouble());
    assertEquals(100, curve.quantile(0.25).getAsDouble());
    assertEquals(OptionalDouble.empty(), curve.quantile(0.75));
    // Area to 400: 100 + 200·3/4 + 100·3/8.
    assertEquals(287.5, curve.restrictedMean(400).mean(), 1e-12);
    // Error: areas 187.5 and 37.5 after the failures, squared times 1/12 and 1/2.
    double variance = 187.5 * 187.5 / 12 + 37.5 * 37.5 / 2;
    assertEquals(Math.sqrt(variance), curve.restrictedMean(400).stdError(), 1e-12);
  }

  @Test
  void nothingIsSaidAfterTheLastExit() {
    SurvivalCurve cut = curve(CountedLives.ofOneKind().add(0, 5, 1).add(0, 9, 0));
    assertEquals(OptionalDouble.empty(), cut.at(9.5));
    assertEquals(Limits.none(), cut.limitsAt(9.5));
    assertEquals(OptionalDouble.empty(), cut.stdErrorAt(9.5));
    SurvivalCurve dead = curve(CountedLives.ofOneKind().add(0, 5, 1));
    assertEquals(0, dead.at(50).getAsDouble());
    assertEquals(OptionalDouble.empty(), dead.stdErrorAt(50));
  }

  @Test
  void noDevices() {
    SurvivalCurve none = curve(CountedLives.ofOneKind());
    assertEquals(0, none.rows());
    assertEquals(1, none.at(0).getAsDouble());
    assertEquals(OptionalDouble.empty(), none.at(1));
    assertEquals(OptionalDouble.empty(), none.quantile(0.5));
    assertEquals(Limits.none(), none.quantileLimits(0.5));
    SurvivalFigures figures = SurvivalFigures.of(none);
    assertEquals(OptionalDouble.empty(), figures.lastTime());
    assertEquals(OptionalDouble.empty(), figures.survivalAt(1));
    assertTrue(figures.meanLife(10).isEmpty());
  }

  @Test
  void whereNothingFailedTheLowerLimitIsExact() {
    CountedLives lives = CountedLives.ofOneKind().add(0, 10, 0, 3).add(0, 20, 0, 7);
    SurvivalCurve curve = curve(lives);
    assertEquals(Math.pow(0.025, 1 / 10.0), curve.limits(0).lower().getAsDouble(), 1e-15);
    assertEquals(Math.pow(0.025, 1 / 7.0), curve.limits(1).lower().getAsDouble(), 1e-15);
    assertEquals(1, curve.limits(1).upper().getAsDouble());
    assertEquals(Math.pow(0.025, 1 / 7.0), curve.limitsAt(15).lower().getAsDouble(), 1e-15);
    assertEquals(Limits.of(1, 1), curve.limitsAt(0));
    assertEquals(0, curve.stdError(0).getAsDouble());
    SurvivalCurve textbook =
        SurvivalCurve.of(lives.anyEvent(), CurveInterval.LOG_LOG, CurveEdge.TEXTBOOK, 0.95);
    assertEquals(Limits.none(), textbook.limits(0));
    assertEquals(Limits.none(), curve.restrictedMean(10).limits());
  }

  @Test
  void allFailAtOnce() {
    SurvivalCurve curve = curve(CountedLives.ofOneKind().add(0, 8, 1, 6));
    assertEquals(0, curve.survival(0));
    assertEquals(OptionalDouble.empty(), curve.stdError(0));
    assertEquals(Limits.none(), curve.limits(0));
    assertEquals(8, curve.quantile(0.5).getAsDouble());
    assertEquals(Limits.none(), curve.quantileLimits(0.5));
    assertEquals(8, curve.restrictedMean(20).mean());
    assertEquals(0, curve.hazardVarianceKlein(0));
  }

  @Test
  void productOfFractionsReachesExactlyOneHalf() {
    // 3/4 · 2/3 is 1/2, but not in binary arithmetic.
    CountedLives lives = CountedLives.ofOneKind().add(0, 1, 1).add(0, 2, 1).add(0, 3, 0, 2);
    assertEquals(2, curve(lives).quantile(0.5).getAsDouble());
  }

  @Test
  void figuresStopWithFiveAtRisk() {
    CountedLives lives = CountedLives.ofOneKind();
    for (int day = 1; day <= 10; day++) {
      lives.add(0, day, 1);
    }
    SurvivalFigures figures = SurvivalFigures.of(curve(lives));
    assertEquals(6, figures.lastTime().getAsDouble());
    assertEquals(0.4, figures.survivalAt(6).getAsDouble(), 1e-12);
    assertEquals(OptionalDouble.empty(), figures.survivalAt(6.5));
    assertEquals(Limits.none(), figures.limitsAt(7));
    assertEquals(5, figures.median().getAsDouble());
    assertEquals(OptionalDouble.empty(), figures.quantile(0.75));
    assertEquals(6, figures.meanLife(8).orElseThrow().horizon());
    assertEquals(4.5, figures.meanLife(8).orElseThrow().mean(), 1e-12);
    assertEquals(3, figures.meanLife(3).orElseThrow().horizon());
    Limits whole = curve(lives).quantileLimits(0.5);
    assertEquals(whole.lower(), figures.medianLimits().lower());
    assertTrue(whole.upper().getAsDouble() > 6);
    assertEquals(OptionalDouble.empty(), figures.medianLimits().upper());
    assertThrows(IllegalArgumentException.class, () -> SurvivalFigures.of(curve(lives), 0));
  }

  @Test
  void differenceOfMeanLives() {
    RestrictedMean a = new RestrictedMean(10, 8, 0.3, 0.95);
    RestrictedMean.Difference d = a.minus(new RestrictedMean(10, 7, 0.4, 0.95));
    assertEquals(1, d.difference());
    assertEquals(0.5, d.stdError(), 1e-15);
    assertEquals(1 - 1.959963984540054 / 2, d.limits().lower().getAsDouble(), 1e-12);
    // 2 (1 − Φ(2)), from tables of the normal distribution.
    assertEquals(0.04550026389635842, d.pValue().getAsDouble(), 1e-12);
    RestrictedMean other = new RestrictedMean(9, 7, 0.4, 0.95);
    assertThrows(IllegalArgumentException.class, () -> a.minus(other));
    RestrictedMean.Difference none =
        new RestrictedMean(1, 1, 0, 0.95).minus(new RestrictedMean(1, 1, 0, 0.95));
    assertEquals(OptionalDouble.empty(), none.pValue());
    assertEquals(Limits.none(), none.limits());
  }

  @Test
  void wrongArgumentsAreRefused() {
    SurvivalCurve curve = curve(CountedLives.ofOneKind().add(0, 8, 1));
    assertThrows(IllegalArgumentException.class, () -> curve.at(-1));
    assertThrows(IllegalArgumentException.class, () -> curve.quantile(1));
    assertThrows(IllegalArgumentException.class, () -> curve.restrictedMean(Double.NaN));
    assertThrows(
        IllegalArgumentException.class,
        () -> SurvivalCurve.of(RiskTable.empty(), CurveInterval.LOG, CurveEdge.EXACT, 95));
  }

  @Test
  void scalingTimeScalesTheCurve() {
    SurvivalCurve days = curve(randomLives(new Random(7), 400, 1));
    SurvivalCurve scaled = curve(randomLives(new Random(7), 400, 8));
    for (int i = 0; i < days.rows(); i++) {
      assertEquals(8 * days.time(i), scaled.time(i));
      assertEquals(days.survival(i), scaled.survival(i));
      assertEquals(days.limits(i), scaled.limits(i));
    }
    assertEquals(8 * days.quantile(0.5).getAsDouble(), scaled.quantile(0.5).getAsDouble());
    assertEquals(8 * days.restrictedMean(50).mean(), scaled.restrictedMean(400).mean(), 1e-9);
  }

  @Test
  void cuttingLivesInTwoLeavesTheCurveUnchanged() {
    Random random = new Random(11);
    CountedLives whole = CountedLives.ofOneKind();
    CountedLives cut = CountedLives.ofOneKind();
    for (int i = 0; i < 500; i++) {
      double entry = random.nextInt(20);
      double exit = entry + 2 + random.nextInt(60);
      int outcome = random.nextInt(2);
      double middle = entry + 1 + random.nextInt((int) (exit - entry) - 1);
      whole.add(entry, exit, outcome);
      cut.add(entry, middle, 0).add(middle, exit, outcome);
    }
    SurvivalCurve a = curve(whole);
    SurvivalCurve b = curve(cut);
    assertEquals(whole.timeAtRisk(), cut.timeAtRisk());
    for (int row = 0; row < a.rows(); row++) {
      assertEquals(a.survival(row), b.at(a.time(row)).getAsDouble());
      assertEquals(a.atRisk(row), b.table().atRiskAt(a.time(row)));
      assertEquals(a.limits(row), b.limitsAt(a.time(row)));
    }
  }

  @Test
  void withoutCensoringItIsTheShareStillWorking() {
    Random random = new Random(5);
    CountedLives lives = CountedLives.ofOneKind();
    int[] ends = random.ints(1000, 1, 300).toArray();
    for (int end : ends) {
      lives.add(0, end, 1);
    }
    SurvivalCurve curve = curve(lives);
    for (int t = 0; t < 300; t++) {
      int day = t;
      long working = Arrays.stream(ends).filter(e -> e > day).count();
      assertEquals(working / 1000.0, curve.at(t).getAsDouble(), 1e-12);
    }
  }

  private static SurvivalCurve curve(CountedLives lives) {
    return SurvivalCurve.of(lives.anyEvent());
  }

  private static CountedLives randomLives(Random random, int n, double scale) {
    CountedLives lives = CountedLives.ofOneKind();
    for (int i = 0; i < n; i++) {
      double entry = random.nextInt(10);
      lives.add(scale * entry, scale * (entry + 1 + random.nextInt(80)), random.nextInt(2));
    }
    return lives;
  }
}
