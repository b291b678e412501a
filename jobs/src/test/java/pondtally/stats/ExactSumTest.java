package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ExactSumTest {
  private static final BigDecimal UNIT = new BigDecimal(BigInteger.ONE.shiftLeft(60));

  @Test
  void sumsThatPlainDoublesMiss() {
    assertEquals(1, new ExactSum().add(1e19).add(1).add(-1e19).result());
    assertEquals(0, new ExactSum().result());
    assertEquals(0x1p-60, new ExactSum().add(0x1p-60).result());
    assertEquals(0, new ExactSum().add(0x1p-62).result());
    assertEquals(-0.5, new ExactSum().add(-0.5).result());
    assertEquals(1e6, new ExactSum().add(0.5, 2_000_000).result());
    assertEquals(-1e18, new ExactSum().add(1e6, -1_000_000_000_000L).result());
  }

  @Test
  void anyOrderAndAnySplitGiveTheSameBytes() {
    Random random = new Random(42);
    double[] values = values(random);
    ExactSum forward = new ExactSum();
    ExactSum[] parts = new ExactSum[5];
    Arrays.setAll(parts, i -> new ExactSum());
    for (int i = 0; i < values.length; i++) {
      forward.add(values[i]);
      parts[random.nextInt(5)].add(values[values.length - 1 - i]);
    }
    ExactSum merged = new ExactSum();
    for (ExactSum part : parts) {
      merged.merge(part);
    }
    assertEquals(forward, merged);
    assertEquals(forward.hashCode(), merged.hashCode());
    assertEquals(forward.result(), merged.result());
    assertNotEquals(forward, merged.add(1));
  }

  /** Against the class library's decimal arithmetic, each value rounded to the unit first. */
  @Test
  void agreesWithDecimalArithmetic() {
    Random random = new Random(43);
    ExactSum sum = new ExactSum();
    BigDecimal units = BigDecimal.ZERO;
    for (double value : values(random)) {
      long times = random.nextInt(7) - 3;
      sum.add(value, times);
      BigDecimal one = new BigDecimal(value).multiply(UNIT).setScale(0, RoundingMode.HALF_EVEN);
      units = units.add(one.multiply(BigDecimal.valueOf(times)));
      assertEquals(units.toBigInteger().doubleValue() / 0x1p60, sum.result());
    }
  }

  @Test
  void refusesWhatItCannotHold() {
    ExactSum sum = new ExactSum().add(3);
    assertThrows(ArithmeticException.class, () -> sum.add(Double.NaN));
    assertThrows(ArithmeticException.class, () -> sum.add(Double.POSITIVE_INFINITY));
    assertThrows(ArithmeticException.class, () -> sum.add(0x1p65));
    assertThrows(ArithmeticException.class, () -> sum.add(0x1p64, 8));
    assertThrows(ArithmeticException.class, () -> sum.add(0x1p64, 7).add(0x1p64, 7));
    ExactSum low = new ExactSum().add(-0x1p64, 8);
    assertEquals(-0x1p67, low.result());
    assertThrows(ArithmeticException.class, () -> low.add(-1));
    assertEquals(-0x1p67, low.result());
  }

  private static double[] values(Random random) {
    double[] values = new double[3000];
    for (int i = 0; i < values.length; i++) {
      double size = Math.scalb(1 + random.nextDouble(), random.nextInt(110) - 65);
      values[i] = random.nextBoolean() ? size : -size;
    }
    return values;
  }

  @Test
  void everyTotalIsReadAsTheNearestDouble() {
    Random random = new Random(5);
    for (int i = 0; i < 200_000; i++) {
      long high = random.nextLong() >> random.nextInt(64);
      // Runs of zeros and ones lie on and beside the middle between two doubles.
      long low = i % 2 == 0 ? random.nextLong() : random.nextLong() >> 63 << random.nextInt(64);
      low += random.nextInt(3) - 1;
      BigInteger units =
          BigInteger.valueOf(high).shiftLeft(64).add(new BigInteger(Long.toUnsignedString(low)));
      assertEquals(units.doubleValue() / 0x1p60, ExactSum.toDouble(high, low), units::toString);
    }
  }
}
