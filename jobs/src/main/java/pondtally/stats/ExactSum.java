package pondtally.stats;

import java.io.Serializable;
import java.math.BigInteger;

/**
 * Sum of doubles that is the same to the last bit in whatever order they come and however parts are
 * merged. Each value is rounded once to a whole multiple of 2⁻⁶⁰ (9·10⁻¹⁹) and added in 128-bit
 * whole numbers, which lose nothing.
 *
 * <p>Error: none for values of 2⁻⁸ (0.004) or more in size, and at most half of 2⁻⁶⁰ for each
 * smaller one; half a unit in the last place when the result is read. Range: single values below
 * 2⁶⁵ and totals within ±2⁶⁷ (1.5·10²⁰) in size.
 */
public final class ExactSum implements Serializable {
  /** Bits after the binary point. */
  static final int FRACTION_BITS = 60;

  private static final long serialVersionUID = 1;
  private static final double UNITS = 0x1p60;
  private static final double LARGEST = 0x1p65;
  private static final int WORD = 64;
  private static final long EXPONENT_BIAS = Double.MAX_EXPONENT;
  private static final int MANTISSA_BITS = 52;

  /** More than the 53 that a double holds and the one by which it is rounded. */
  private static final int KEPT_BITS = 62;

  private long high;
  private long low;

  /** A sum of nothing, 0. */
  public ExactSum() {}

  /**
   * Adds a value. Returns this.
   *
   * @throws ArithmeticException if it is NaN, infinite or 2⁶⁵ or more in size, or if the total
   *     leaves the range
   */
  public ExactSum add(double value) {
    return add(value, 1);
  }

  /**
   * Adds a value so many times; exact for any whole number of times, also a negative one. Returns
   * this; throws as {@link #add(double)}.
   */
  public ExactSum add(double value, long times) {
    if (!(Math.abs(value) < LARGEST)) {
      throw new ArithmeticException(value + " cannot be added up: it is not below 2^65 in size");
    }
    int shift = Math.max(0, Math.getExponent(value) - MANTISSA_BITS + FRACTION_BITS);
    long leading = (long) Math.rint(value * powerOfTwo(FRACTION_BITS - shift));
    if (shift < 64 && Math.abs(times) < 0x400) {
      // Below 2^63 in size, because the leading part has 53 bits.
      long product = leading * times;
      addParts(shift == 0 ? product >> 63 : product >> (64 - shift), product << shift);
    } else {
      addLarge(leading, shift, times);
    }
    return this;
  }

  /** 2 to a power from -1022 to 1023; multiplying by it is exact where nothing underflows. */
  private static double powerOfTwo(int power) {
    return Double.longBitsToDouble((power + EXPONENT_BIAS) << MANTISSA_BITS);
  }

  private void addLarge(long leading, int shift, long times) {
    BigInteger product =
        BigInteger.valueOf(leading).shiftLeft(shift).multiply(BigInteger.valueOf(times));
    if (product.bitLength() > 127) {
      throw outOfRange();
    }
    addParts(product.shiftRight(64).longValueExact(), product.longValue());
  }

  /** Adds what another has summed; the other stays as it is. Returns this. */
  public ExactSum merge(ExactSum other) {
    if ((other.high | other.low) != 0) {
      addParts(other.high, other.low);
    }
    return this;
  }

  private void addParts(long otherHigh, long otherLow) {
    long sumLow = low + otherLow;
    long carry = Long.compareUnsigned(sumLow, low) < 0 ? 1 : 0;
    long sumHigh = high + otherHigh + carry;
    // Overflow: both parts have one sign and the sum has the other.
    if (((high ^ sumHigh) & (otherHigh ^ sumHigh)) < 0) {
      throw outOfRange();
    }
    high = sumHigh;
    low = sumLow;
  }

  static ArithmeticException outOfRange() {
    return new ArithmeticException("a total left the range of ±2^67");
  }

  /** The double nearest to the sum. */
  public double result() {
    return toDouble(high, low);
  }

  long high() {
    return high;
  }

  long low() {
    return low;
  }

  static double toDouble(long high, long low) {
    if (high == low >> 63) {
      return low / UNITS;
    }
    long sizeLow = high < 0 ? -low : low;
    long sizeHigh = high < 0 ? ~high + (low == 0 ? 1 : 0) : high;
    int bits = WORD + WORD - leadingZeros(sizeHigh, sizeLow);
    // The leading bits of the size; the last of them tells whether anything was cut off, so that
    // the double is rounded as from all of them.
    int shift = bits - KEPT_BITS;
    long kept =
        shift < WORD ? sizeHigh << (WORD - shift) | sizeLow >>> shift : sizeHigh >>> (shift - WORD);
    double size = kept | (trailingZeros(sizeHigh, sizeLow) < shift ? 1 : 0);
    return Math.scalb(high < 0 ? -size : size, shift - FRACTION_BITS);
  }

  private static int leadingZeros(long high, long low) {
    return high == 0 ? WORD + Long.numberOfLeadingZeros(low) : Long.numberOfLeadingZeros(high);
  }

  private static int trailingZeros(long high, long low) {
    return low == 0 ? WORD + Long.numberOfTrailingZeros(high) : Long.numberOfTrailingZeros(low);
  }

  /** Whether two sums are equal to the last unit. */
  @Override
  public boolean equals(Object other) {
    return other instanceof ExactSum sum && high == sum.high && low == sum.low;
  }

  @Override
  public int hashCode() {
    return 31 * Long.hashCode(high) + Long.hashCode(low);
  }

  @Override
  public String toString() {
    return Double.toString(result());
  }
}
