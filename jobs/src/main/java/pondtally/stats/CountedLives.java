package pondtally.stats;

import java.io.Serializable;
import java.util.Arrays;

/**
 * Follow-up of many lives, counted by time: how many entered, and how many ended with which
 * outcome, at each distinct time. All curves, rates and tests of this package can be computed from
 * such counts exactly, so that a million lives take the room of some thousand days.
 *
 * <p>A life is followed over (entry, exit]: it is at risk for t with entry &lt; t ≤ exit (delayed
 * entry; one censored at t is still at risk at t). Outcome 0 is censored, 1 to K are kinds of
 * event. Times are in any one unit, such as days, from the life's own start; any double at or above
 * 0.
 *
 * <p>The order of adding and of merging never matters: only whole numbers are added up. Assumes
 * that the end of follow-up says nothing about the event that would have come (noninformative
 * censoring). Counts up to 2^53 are exact in what is computed from them.
 */
public final class CountedLives implements Serializable {
  /** The outcome of a life whose follow-up ended without an event. */
  public static final int CENSORED = 0;

  private static final long serialVersionUID = 1;
  private static final int ENTERED = 0;
  private static final int EXITED = 1;
  private static final int SCATTER = 0x9E3779B1;

  private final int kinds;

  /**
   * A cell a slot: the bits of its time, what is counted there, and how many; 0 where it is free.
   */
  private long[] times;

  private short[] columns;
  private long[] counts;
  private int used;
  private long withoutFollowUp;

  private CountedLives(int kinds, int capacity) {
    this.kinds = kinds;
    allocate(capacity);
  }

  private void allocate(int capacity) {
    times = new long[capacity];
    columns = new short[capacity];
    counts = new long[capacity];
    used = 0;
  }

  /** Empty counts with one kind of event. */
  public static CountedLives ofOneKind() {
    return ofKinds(1);
  }

  /** Empty counts with K kinds of event, numbered 1 to K; K from 1 to 32,766. */
  public static CountedLives ofKinds(int kinds) {
    if (kinds < 1 || kinds > Short.MAX_VALUE - EXITED) {
      throw new IllegalArgumentException(kinds + " kinds of event, expected 1 to 32766");
    }
    return new CountedLives(kinds, 16);
  }

  /** Adds one life; see {@link #add(double, double, int, long)}. Returns this. */
  public CountedLives add(double entry, double exit, int outcome) {
    return add(entry, exit, outcome, 1);
  }

  /**
   * Adds lives with the same follow-up. A life with entry = exit has no follow-up: it is counted in
   * {@link #livesWithoutFollowUp()} and nowhere else.
   *
   * @param entry time from which it is watched, at least 0
   * @param exit time at which it fails or is last seen, at least the entry
   * @param outcome 0 censored, or the kind of event, 1 to K
   * @param lives how many, at least 0
   * @return this
   * @throws IllegalArgumentException for times out of order or not finite, an unknown outcome, or
   *     an event without follow-up (at the moment of entry nobody is at risk)
   */
  public CountedLives add(double entry, double exit, int outcome, long lives) {
    if (!(entry >= 0 && exit >= entry && exit < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "follow-up from " + entry + " to " + exit + " is not a span of time");
    }
    if (outcome < 0 || outcome > kinds || lives < 0) {
      throw new IllegalArgumentException(
          "outcome " + outcome + " of " + kinds + " kinds, lives " + lives);
    }
    if (exit == entry) {
      addWithoutFollowUp(exit, outcome, lives);
    } else if (lives > 0) {
      count(entry, ENTERED, lives);
      count(exit, EXITED + outcome, lives);
    }
    return this;
  }

  private void addWithoutFollowUp(double time, int outcome, long lives) {
    if (outcome != CENSORED) {
      throw new IllegalArgumentException(
          "an event at " + time + ", the moment of entry: nobody is at risk then");
    }
    withoutFollowUp = Math.addExact(withoutFollowUp, lives);
  }

  private void count(double time, int column, long lives) {
    count(Double.doubleToLongBits(time + 0.0), (short) column, lives);
  }

  private void count(long time, short column, long lives) {
    int at = find(time, column);
    if (counts[at] == 0) {
      if (2 * used >= counts.length) {
        grow();
        at = find(time, column);
      }
      times[at] = time;
      columns[at] = column;
      used++;
    }
    counts[at] = Math.addExact(counts[at], lives);
  }

  /** The slot of a cell, or the free one where it belongs. */
  private int find(long time, short column) {
    int mask = counts.length - 1;
    long mixed = (time + column) * 0x9E3779B97F4A7C15L;
    int at = (int) (mixed >>> 32 ^ mixed >>> 47) & mask;
    while (counts[at] != 0 && (times[at] != time || columns[at] != column)) {
      at = (at + 1) & mask;
    }
    return at;
  }

  private void grow() {
    long[] oldTimes = times;
    short[] oldColumns = columns;
    long[] oldCounts = counts;
    allocate(2 * oldCounts.length);
    for (int i = 0; i < oldCounts.length; i++) {
      if (oldCounts[i] != 0) {
        count(oldTimes[i], oldColumns[i], oldCounts[i]);
      }
    }
  }

  /**
   * Adds all that another has counted; the other stays as it is. Returns this. Throws
   * IllegalArgumentException if the numbers of kinds differ.
   */
  public CountedLives merge(CountedLives other) {
    if (other.kinds != kinds) {
      throw new IllegalArgumentException(
          "counts of " + other.kinds + " kinds of event cannot join " + kinds);
    }
    int slots = other.counts.length;
    for (int i = 0; i < slots; i++) {
      // Scattered: cells in the order of their slots would crowd the first slots of a smaller
      // table.
      int from = i * SCATTER & (slots - 1);
      if (other.counts[from] != 0) {
        count(other.times[from], other.columns[from], other.counts[from]);
      }
    }
    withoutFollowUp = Math.addExact(withoutFollowUp, other.withoutFollowUp);
    return this;
  }

  /** How many kinds of event are told apart. */
  public int kinds() {
    return kinds;
  }

  /** Lives with follow-up. */
  public long lives() {
    return total(ENTERED);
  }

  /** Lives that were added with entry = exit: never at risk, part of no other count. */
  public long livesWithoutFollowUp() {
    return withoutFollowUp;
  }

  /** Lives that ended without an event. */
  public long censored() {
    return total(EXITED);
  }

  /** Events of all kinds. */
  public long events() {
    return lives() - censored();
  }

  /** Events of one kind, 1 to K. */
  public long events(int kind) {
    checkKind(kind);
    return total(EXITED + kind);
  }

  /** Sum of exit − entry over all lives, in the unit of the times. */
  public double timeAtRisk() {
    return anyEvent().timeAtRisk();
  }

  /** At risk, events of any kind and censored at each time of exit. */
  public RiskTable anyEvent() {
    int[] all = new int[kinds];
    Arrays.setAll(all, i -> i + 1);
    return eventsOf(all);
  }

  /**
   * At risk, events and censored at each time of exit, where only the kinds given count as the
   * event: lives that ended by another kind are censored there.
   */
  public RiskTable eventsOf(int... eventKinds) {
    boolean[] isEvent = new boolean[kinds + 1];
    for (int kind : eventKinds) {
      checkKind(kind);
      isEvent[kind] = true;
    }
    double[] ages = distinctTimes();
    long[] entered = new long[ages.length];
    long[] events = new long[ages.length];
    long[] censored = new long[ages.length];
    for (int cell = 0; cell < counts.length; cell++) {
      if (counts[cell] != 0) {
        int column = columns[cell];
        long[] into = column == ENTERED ? entered : isEvent[column - EXITED] ? events : censored;
        into[Arrays.binarySearch(ages, Double.longBitsToDouble(times[cell]))] += counts[cell];
      }
    }
    return RiskTable.of(ages, entered, events, censored);
  }

  private double[] distinctTimes() {
    double[] all = new double[used];
    int n = 0;
    for (int cell = 0; cell < counts.length; cell++) {
      if (counts[cell] != 0) {
        all[n++] = Double.longBitsToDouble(times[cell]);
      }
    }
    Arrays.sort(all);
    int distinct = 0;
    for (int i = 0; i < n; i++) {
      if (i == 0 || all[i] != all[i - 1]) {
        all[distinct++] = all[i];
      }
    }
    return Arrays.copyOf(all, distinct);
  }

  private void checkKind(int kind) {
    if (kind < 1 || kind > kinds) {
      throw new IllegalArgumentException("kind of event " + kind + ", expected 1 to " + kinds);
    }
  }

  private long total(int column) {
    long sum = 0;
    for (int cell = 0; cell < counts.length; cell++) {
      sum += columns[cell] == column ? counts[cell] : 0;
    }
    return sum;
  }

  private Object writeReplace() {
    return new Packed(this);
  }

  /**
   * The counts in order of time and column, without free slots: the same bytes whatever the order
   * of adding.
   */
  private static final class Packed implements Serializable {
    private static final long serialVersionUID = 2;

    private final int kinds;
    private final double[] times;
    private final short[] columns;
    private final long[] counts;
    private final long withoutFollowUp;

    private Packed(CountedLives lives) {
      kinds = lives.kinds;
      withoutFollowUp = lives.withoutFollowUp;
      times = new double[lives.used];
      columns = new short[lives.used];
      counts = new long[lives.used];
      int n = 0;
      for (double time : lives.distinctTimes()) {
        long bits = Double.doubleToLongBits(time);
        for (short column = 0; column < lives.kinds + 2; column++) {
          long count = lives.counts[lives.find(bits, column)];
          if (count != 0) {
            times[n] = time;
            columns[n] = column;
            counts[n++] = count;
          }
        }
      }
    }

    private Object readResolve() {
      CountedLives lives = ofKinds(kinds);
      for (int i = 0; i < times.length; i++) {
        lives.count(times[i], columns[i], counts[i]);
      }
      lives.withoutFollowUp = withoutFollowUp;
      return lives;
    }
  }
}
