package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pondtally.history.Rows.days;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.hipparchus.analysis.integration.TrapezoidIntegrator;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Test;

/** A pond's area through time; days, and half days where the line is built. */
class AreaLineTest {

  private static final int NEVER = Integer.MAX_VALUE;

  private static AreaLine line(int abandonedOn, double... dayAndAcres) {
    TreeMap<Integer, Double> measured = new TreeMap<>();
    for (int i = 0; i < dayAndAcres.length; i += 2) {
      measured.put((int) (2 * dayAndAcres[i]), dayAndAcres[i + 1]);
    }
    return AreaLine.of(measured, abandonedOn);
  }

  @Test
  void itIsStraightBetweenMeasurementsAndConstantOutside() {
    AreaLine line = line(NEVER, 100, 4, 200, 8);
    assertEquals(4, line.acresAt(0));
    assertEquals(4, line.acresAt(200));
    assertEquals(5, line.acresAt(250), 1e-12);
    assertEquals(8, line.acresAt(400));
    assertEquals(8, line.acresAt(4000));
  }

  @Test
  void acreDaysAreItsIntegral() {
    AreaLine line = line(NEVER, 100, 4, 200, 8);
    assertEquals(600, line.acreDays(days(100, 200)), 1e-9); // mean 6 acres, 100 days
    assertEquals(50 * 4 + 600 + 10 * 8, line.acreDays(days(50, 210)), 1e-9);
    assertEquals(0, line.acreDays(Stretches.NONE));
  }

  @Test
  void whatLiesOutsideTheMeasurementsIsExtrapolated() {
    AreaLine line = line(NEVER, 100, 4, 200, 8);
    assertEquals(50 * 4 + 10 * 8, line.acreDaysExtrapolated(days(50, 210)), 1e-9);
    assertEquals(0, line.acreDaysExtrapolated(days(100, 200)));
    AreaLine one = line(NEVER, 100, 4);
    assertEquals(40, one.acreDaysExtrapolated(days(95, 105)), 1e-9);
  }

  @Test
  void anAbandonedDamHasNoAreaFromThatDay() {
    AreaLine line = line(300, 100, 4, 200, 8); // abandoned on day 150
    assertEquals(5.96, line.acresAt(298), 1e-12);
    assertEquals(0, line.acresAt(300));
    assertEquals(250, line.acreDays(days(100, 200)), 1e-9); // mean 5 acres, 50 days
    assertEquals(0, line.acreDays(days(160, 200)));
  }

  @Test
  void itAgreesWithAGeneralPurposeInterpolatorAndIntegrator() {
    Random random = new Random(7);
    for (int run = 0; run < 50; run++) {
      TreeMap<Integer, Double> measured = new TreeMap<>();
      while (measured.size() < 5) {
        measured.put(2 * random.nextInt(500), 20 * random.nextDouble());
      }
      AreaLine line = AreaLine.of(measured, NEVER);
      double[] at = measured.keySet().stream().mapToDouble(k -> k).toArray();
      double[] acres = measured.values().stream().mapToDouble(v -> v).toArray();
      PolynomialSplineFunction spline = new LinearInterpolator().interpolate(at, acres);
      double halfDayAcres = 0;
      for (int i = 1; i < at.length; i++) {
        halfDayAcres += new TrapezoidIntegrator().integrate(100_000, spline, at[i - 1], at[i]);
      }
      Stretches whole = Stretches.between((int) at[0], (int) at[4]);
      assertEquals(halfDayAcres / 2, line.acreDays(whole), 1e-6 * halfDayAcres);
      int moment = (int) at[0] + random.nextInt((int) (at[4] - at[0]));
      assertEquals(spline.value(moment), line.acresAt(moment), 1e-9);
    }
  }

  @Test
  void aStretchCutInTwoHasTheSameAcreDays() {
    AreaLine line = line(NEVER, 10, 3, 20, 9, 90, 1);
    double parts = 0;
    for (Stretches part : List.of(days(0, 13), days(13, 20), days(20, 77), days(77, 120))) {
      parts += line.acreDays(part);
    }
    assertEquals(line.acreDays(days(0, 120)), parts, 1e-9);
  }

  @Test
  void itsMeasurementsCanBeRead() {
    assertEquals(Map.of(200, 4.0, 400, 8.0), line(NEVER, 200, 8, 100, 4).measurements());
  }
}
