package pondtally.stats;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

/**
 * How many service lives share each distinct follow-up (E, (L, R]): at risk after age E, failed
 * after age L and by age R.
 *
 * <p>Ages are in days since the start of the life. R is infinite for a life not seen to fail
 * (right-censored at L). A failure whose day is known has L = R. L = E is a failure some time
 * between entry and R. Counts are whole numbers, so merging in any order gives the same result: the
 * accumulator suits any split of the lives into parts.
 */
public final class IntervalCounts implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * One distinct follow-up.
   *
   * @param entryDays E, age at entry, 0 or more; the life is at risk after it
   * @param leftDays L, last age at which the device is known not to have failed
   * @param rightDays R, first age by which it is known to have failed; infinite if it was never
   *     seen failed; L if the day is known
   * @param count lives with exactly this follow-up
   */
  public record Row(double entryDays, double leftDays, double rightDays, long count)
      implements Serializable {
    static final Comparator<Row> ORDER =
        Comparator.comparingDouble(Row::leftDays)
            .thenComparingDouble(Row::rightDays)
            .thenComparingDouble(Row::entryDays);

    /** Whether the failure's day is known. */
    public boolean exact() {
      return leftDays == rightDays;
    }

    /** Whether a failure was seen at all. */
    public boolean failed() {
      return rightDays < Double.POSITIVE_INFINITY;
    }
  }

  private static final int WIDTH = 3;

  private static final int FIRST_SLOTS = 8;
  private static final int SCATTER = 0x9E3779B1;

  /**
   * E, L and R of each slot; a slot with a count of 0 is free. Whole and half days need half the
   * room; null once there is an age that would lose something.
   */
  private float[] shortAges = new float[WIDTH * FIRST_SLOTS];

  /** The same where some age needs the room; else null. */
  private double[] longAges;

  private int[] counts = new int[FIRST_SLOTS];
  private int used;

  private IntervalCounts() {}

  /** An accumulator with no life in it. */
  public static IntervalCounts empty() {
    return new IntervalCounts();
  }

  /**
   * Adds lives that share one follow-up.
   *
   * @throws IllegalArgumentException unless 0 ≤ E ≤ L ≤ R, with E and L finite, E below L where L =
   *     R, and a count of 0 or more
   * @throws ArithmeticException where more than 2,147,483,647 lives share one follow-up
   */
  public IntervalCounts add(double entryDays, double leftDays, double rightDays, long count) {
    boolean ordered =
        entryDays >= 0
            && entryDays <= leftDays
            && leftDays <= rightDays
            && leftDays < Double.POSITIVE_INFINITY;
    if (!ordered || (leftDays == rightDays && entryDays == leftDays) || count < 0) {
      throw new IllegalArgumentException(
          "follow-up E="
              + entryDays
              + ", L="
              + leftDays
              + ", R="
              + rightDays
              + ", count="
              + count
              + ": expected 0 <= E <= L <= R days, E < L for a failure on a known day, and a count of 0 or more");
    }
    if (count > 0) {
      // Adding 0.0 turns a negative zero into zero, so that both are one follow-up.
      count(entryDays + 0.0, leftDays + 0.0, rightDays + 0.0, count);
    }
    return this;
  }

  private void count(double entryDays, double leftDays, double rightDays, long count) {
    int at = find(entryDays, leftDays, rightDays);
    if (counts[at] == 0) {
      if (2 * used >= counts.length) {
        grow();
        at = find(entryDays, leftDays, rightDays);
      }
      set(WIDTH * at, entryDays);
      set(WIDTH * at + 1, leftDays);
      set(WIDTH * at + 2, rightDays);
      used++;
    }
    counts[at] = Math.toIntExact(counts[at] + count);
  }

  /** The slot of a follow-up, or the free one where it belongs. */
  private int find(double entryDays, double leftDays, double rightDays) {
    int mask = counts.length - 1;
    long bits =
        (Double.doubleToRawLongBits(entryDays) * 31 + Double.doubleToRawLongBits(leftDays)) * 31
            + Double.doubleToRawLongBits(rightDays);
    long mixed = bits * 0x9E3779B97F4A7C15L;
    int at = (int) (mixed >>> 32 ^ mixed >>> 47) & mask;
    while (counts[at] != 0
        && !(age(WIDTH * at) == entryDays
            && age(WIDTH * at + 1) == leftDays
            && age(WIDTH * at + 2) == rightDays)) {
      at = (at + 1) & mask;
    }
    return at;
  }

  private double age(int at) {
    return longAges == null ? shortAges[at] : longAges[at];
  }

  private void set(int at, double days) {
    if (longAges == null && (float) days != days) {
      longAges = new double[shortAges.length];
      for (int i = 0; i < longAges.length; i++) {
        longAges[i] = shortAges[i];
      }
      shortAges = null;
    }
    if (longAges == null) {
      shortAges[at] = (float) days;
    } else {
      longAges[at] = days;
    }
  }

  private void grow() {
    IntervalCounts old = new IntervalCounts();
    old.shortAges = shortAges;
    old.longAges = longAges;
    int[] oldCounts = counts;
    counts = new int[oldCounts.length * 2];
    shortAges = longAges == null ? new float[WIDTH * counts.length] : null;
    longAges = longAges == null ? null : new double[WIDTH * counts.length];
    for (int i = 0; i < oldCounts.length; i++) {
      if (oldCounts[i] != 0) {
        int from = WIDTH * i;
        int at = find(old.age(from), old.age(from + 1), old.age(from + 2));
        set(WIDTH * at, old.age(from));
        set(WIDTH * at + 1, old.age(from + 1));
        set(WIDTH * at + 2, old.age(from + 2));
        counts[at] = oldCounts[i];
      }
    }
  }

  /** Adds another accumulator's lives to this one. */
  public IntervalCounts merge(IntervalCounts other) {
    other.forEachScattered(row -> count(row.entryDays, row.leftDays, row.rightDays, row.count));
    return this;
  }

  /** The distinct follow-ups in order of L, R, E. */
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>(used);
    forEach(rows::add);
    rows.sort(Row.ORDER);
    return rows;
  }

  /** The distinct follow-ups in no order. */
  public void forEach(Consumer<Row> action) {
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] != 0) {
        int at = WIDTH * i;
        action.accept(new Row(age(at), age(at + 1), age(at + 2), counts[i]));
      }
    }
  }

  /**
   * The distinct follow-ups, not in the order of their slots: in that order they would crowd the
   * beginning of a smaller table.
   */
  private void forEachScattered(Consumer<Row> action) {
    int mask = counts.length - 1;
    for (int n = 0; n < counts.length; n++) {
      // An odd multiple goes through every slot once.
      int i = n * SCATTER & mask;
      if (counts[i] != 0) {
        int at = WIDTH * i;
        action.accept(new Row(age(at), age(at + 1), age(at + 2), counts[i]));
      }
    }
  }

  /** Number of distinct follow-ups. */
  public int distinct() {
    return used;
  }

  /** Number of lives. */
  public long lives() {
    long lives = 0;
    for (int count : counts) {
      lives += count;
    }
    return lives;
  }

  /** Number of lives seen to fail. */
  public long failures() {
    long failures = 0;
    for (int i = 0; i < counts.length; i++) {
      failures += age(WIDTH * i + 2) < Double.POSITIVE_INFINITY ? counts[i] : 0;
    }
    return failures;
  }

  /**
   * The same lives with every end moved outward to a whole multiple of {@code days}: L down, R up,
   * so that each interval still holds its failure. E moves up (no time at risk is invented) but
   * never above L. A known day becomes the span of {@code days} that ends on or after it. At 0 days
   * nothing changes.
   */
  public IntervalCounts roundedOutward(int days) {
    if (days <= 0) {
      return new IntervalCounts().merge(this);
    }
    IntervalCounts rounded = new IntervalCounts();
    forEachScattered(
        each -> {
          Row row = outward(each.entryDays, each.leftDays, each.rightDays, days);
          rounded.add(row.entryDays, row.leftDays, row.rightDays, each.count);
        });
    return rounded;
  }

  /** Where {@link #roundedOutward} puts one follow-up; the count of the row returned is 0. */
  static Row outward(double entryDays, double leftDays, double rightDays, int days) {
    if (days <= 0) {
      return new Row(entryDays, leftDays, rightDays, 0);
    }
    double right = days * Math.ceil(rightDays / days);
    double left = leftDays == rightDays ? right - days : days * Math.floor(leftDays / days);
    return new Row(Math.min(days * Math.ceil(entryDays / days), left) + 0.0, left, right, 0);
  }
}
