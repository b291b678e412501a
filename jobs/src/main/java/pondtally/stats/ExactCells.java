package pondtally.stats;

import java.io.Serializable;

/** A row of {@link ExactSum}s in 16 bytes each. */
final class ExactCells implements Serializable {
  private static final long serialVersionUID = 1;

  private final long[] high;
  private final long[] low;

  ExactCells(int cells) {
    this.high = new long[cells];
    this.low = new long[cells];
  }

  int size() {
    return high.length;
  }

  /** Adds whole units of 2⁻⁴⁰, as two halves of 128 bits. */
  void add(int cell, long otherHigh, long otherLow) {
    long sumLow = low[cell] + otherLow;
    long carry = Long.compareUnsigned(sumLow, otherLow) < 0 ? 1 : 0;
    long sumHigh = high[cell] + otherHigh + carry;
    if (((high[cell] ^ sumHigh) & (otherHigh ^ sumHigh)) < 0) {
      throw ExactSum.outOfRange();
    }
    high[cell] = sumHigh;
    low[cell] = sumLow;
  }

  void add(int cell, ExactSum sum) {
    add(cell, sum.high(), sum.low());
  }

  /** Adds to a cell what another cell holds. */
  void addCell(int cell, int other) {
    add(cell, high[other], low[other]);
  }

  void merge(ExactCells other) {
    for (int cell = 0; cell < high.length; cell++) {
      add(cell, other.high[cell], other.low[cell]);
    }
  }

  ExactCells copy() {
    ExactCells copy = new ExactCells(size());
    copy.merge(this);
    return copy;
  }

  double result(int cell) {
    return ExactSum.toDouble(high[cell], low[cell]);
  }
}
