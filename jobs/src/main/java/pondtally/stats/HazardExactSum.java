package pondtally.stats;

import java.io.Serializable;

/**
 * Sums of doubles of moderate size in fixed point (62 bits behind the point), so that any order of
 * adding gives the same bits.
 */
final class HazardExactSum implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final double UNIT = 0x1p62;
  private static final long CARRY = 1L << 62;

  private final long[] whole;
  private final long[] part;

  HazardExactSum(int size) {
    whole = new long[size];
    part = new long[size];
  }

  /** Adds a value below 2^62 in size; what lies below 2^-62 is dropped. */
  void add(int at, double value) {
    double floor = Math.floor(value);
    if (!(Math.abs(floor) < UNIT)) {
      throw new ArithmeticException("a score of " + value + " is out of range");
    }
    carry(at, (long) floor, (long) ((value - floor) * UNIT));
  }

  void add(HazardExactSum other) {
    for (int at = 0; at < whole.length; at++) {
      carry(at, other.whole[at], other.part[at]);
    }
  }

  private void carry(int at, long moreWhole, long morePart) {
    long sum = part[at] + morePart;
    long over = sum < CARRY ? 0 : 1;
    part[at] = sum - over * CARRY;
    whole[at] = Math.addExact(whole[at], moreWhole + over);
  }

  double get(int at) {
    return whole[at] + part[at] / UNIT;
  }

  int size() {
    return whole.length;
  }
}
