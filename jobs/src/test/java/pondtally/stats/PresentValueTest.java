package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class PresentValueTest {
  @Test
  void handFractions() {
    // At 100 per cent a dollar halves each year.
    assertEquals(1 / 8.0, PresentValue.single(1, 3), 1e-15);
    assertEquals(7 / 8.0, PresentValue.uniform(1, 3), 1e-15);
    assertEquals(8 / 7.0, PresentValue.capitalRecovery(1, 3), 1e-15);
    assertEquals(10 + 5 / 2.0 - 4 / 4.0, PresentValue.net(1, 10, 5, -4), 1e-15);
    // Growth 50 per cent at 100 per cent: 3/4 + 9/16.
    assertEquals(21 / 16.0, PresentValue.modifiedUniform(1, 0.5, 2), 1e-15);
    assertEquals(0.25, PresentValue.realRate(0.5, 0.2), 1e-15);
    // Half fail in the first year, a quarter in the second: 100 · (1/2 · 1/2 + 1/4 · 1/4).
    assertEquals(31.25, PresentValue.expectedFailureCost(100, 1, 1, 0.5, 0.25), 1e-12);
    // Cost 30 against D in year 1 and half of it in year 2: D (1/2 + 1/8) = 30.
    assertEquals(48, PresentValue.breakEvenYearly(30, 1, 1, 0.5).getAsDouble(), 1e-12);
  }

  @Test
  void ratesThatCancel() {
    assertEquals(12, PresentValue.uniform(0, 12));
    assertEquals(12, PresentValue.modifiedUniform(0.04, 0.04, 12));
    assertEquals(12, PresentValue.modifiedUniform(0, 0, 12));
    assertEquals(1 / 12.0, PresentValue.capitalRecovery(0, 12), 1e-15);
    // Near 0 the factor tends to n − n(n+1)d/2, without loss of digits.
    assertEquals(12 - 78e-12, PresentValue.uniform(1e-12, 12), 1e-14);
    assertEquals(0, PresentValue.uniform(0.03, 0));
  }

  /** Worked: build $2,000, upkeep $200 a year, 10 years, against $900 a year. */
  @Test
  void workedDevice() {
    double[][] rows = {
      {0.02, 3796.52, 8084.33, 422.65},
      {0.03, 3706.04, 7677.18, 434.46},
      {0.07, 3404.72, 6321.22, 484.76}
    };
    for (double[] row : rows) {
      double device = 2000 + 200 * PresentValue.uniform(row[0], 10);
      assertEquals(row[1], device, 0.005);
      assertEquals(row[2], 900 * PresentValue.uniform(row[0], 10), 0.005);
      assertEquals(row[3], PresentValue.equivalentAnnual(device, row[0], 10), 0.005);
    }
  }

  @Test
  void payback() {
    // 100 out, 60 a year in: 60/2 + 60/4 + 60/8 = 52.5 at 100 per cent never pays; at 0 in year 2.
    assertEquals(OptionalInt.of(2), PresentValue.paybackYear(0, -100, 60, 60, 60));
    assertEquals(OptionalInt.empty(), PresentValue.paybackYear(1, -100, 60, 60, 60));
    assertEquals(OptionalInt.of(2), PresentValue.paybackYear(0.10, -100, 60, 60));
    assertEquals(OptionalInt.of(0), PresentValue.paybackYear(0.10, 5, -60));
    assertEquals(OptionalInt.empty(), PresentValue.paybackYear(0.10));
  }

  @Test
  void wrongArgumentsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> PresentValue.single(-1, 3));
    assertThrows(IllegalArgumentException.class, () -> PresentValue.single(0.03, -1));
    assertThrows(IllegalArgumentException.class, () -> PresentValue.uniform(Double.NaN, 3));
    assertThrows(IllegalArgumentException.class, () -> PresentValue.capitalRecovery(0.03, 0));
    assertThrows(IllegalArgumentException.class, () -> PresentValue.modifiedUniform(0.03, -1, 3));
    assertThrows(
        IllegalArgumentException.class, () -> PresentValue.expectedFailureCost(1, 0, 0.5, 0.6));
    assertEquals(OptionalDouble.empty(), PresentValue.breakEvenYearly(30, 0.03, 0, 0));
  }
}
