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
  private static final long FREE = Double.doubleToLongBits(Double.NaN);
  private static final int ENTERED = 0;
  private static final int EXITED = 1;

  private final int kinds;
  private final int width;
  private long[] keys;
  private long[] counts;
  private int used;
  private long withoutFollowUp;

  private CountedLives(int kinds, int capacity) {
    this.kinds = kinds;
    this.width = kinds + 2;
    this.keys = new long[capacity];
    this.counts = new long[capacity * width];
    Arrays.fill(keys, FREE);
  }

  /** Empty counts with one kind of event. */
  public static CountedLives ofOneKind() {
    return ofKinds(1);
  }

  /** Empty counts with K kinds of event, numbered 1 to K; K at least 1. */
  public static CountedLives ofKinds(int kinds) {
    if (kinds < 1) {
      throw new IllegalArgumentException(kinds + " kinds of event, expected at least 1");
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
    int cell = slot(Double.doubleToLongBits(time + 0.0)) * width + column;
    counts[cell] = Math.addExact(counts[cell], lives);
  }

  private int slot(long key) {
    int at = find(keys, key);
    if (keys[at] == key) {
      return at;
    }
    if (2 * used >= keys.length) {
      grow();
      at = find(keys, key);
    }
    keys[at] = key;
    used++;
    return at;
  }

  private static int find(long[] keys, long key) {
    int mask = keys.length - 1;
    long mixed = key * 0x9E3779B97F4A7C15L;
    int at = (int) (mixed >>> 32 ^ mixed >>> 47) & mask;
    while (keys[at] != key && keys[at] != FREE) {
      at = (at + 1) & mask;
    }
    return at;
  }

  private void grow() {
    long[] oldKeys = keys;
    long[] oldCounts = counts;
    keys = new long[oldKeys.length * 2];
    counts = new long[keys.length * width];
    Arrays.fill(keys, FREE);
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldKeys[i] != FREE) {
        int at = find(keys, oldKeys[i]);
        keys[at] = oldKeys[i];
        System.arraycopy(oldCounts, i * width, counts, at * width, width);
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
    Packed added = Packed.of(other);
    for (int i = 0; i < added.times.length; i++) {
      for (int column = 0; column < width; column++) {
        long lives = added.counts[i * width + column];
        if (lives > 0) {
          count(added.times[i], column, lives);
        }
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
    Packed sorted = Packed.of(this);
    int n = sorted.times.length;
    long[] entered = new long[n];
    long[] events = new long[n];
    long[] censored = new long[n];
    for (int i = 0; i < n; i++) {
      entered[i] = sorted.counts[i * width];
      for (int outcome = 0; outcome <= kinds; outcome++) {
        (isEvent[outcome] ? events : censored)[i] += sorted.counts[i * width + EXITED + outcome];
      }
    }
    return RiskTable.of(sorted.times, entered, events, censored);
  }

  private void checkKind(int kind) {
    if (kind < 1 || kind > kinds) {
      throw new IllegalArgumentException("kind of event " + kind + ", expected 1 to " + kinds);
    }
  }

  private long total(int column) {
    long sum = 0;
    for (int cell = column; cell < counts.length; cell += width) {
      sum += counts[cell];
    }
    return sum;
  }

  private Object writeReplace() {
    return Packed.of(this);
  }

  /**
   * The counts in order of time, without free slots: the same bytes whatever the order of adding.
   */
  private static final class Packed implements Serializable {
    private static final long serialVersionUID = 1;

    private final int kinds;
    private final double[] times;
    private final long[] counts;
    private final long withoutFollowUp;

    private Packed(int kinds, double[] times, long[] counts, long withoutFollowUp) {
      this.kinds = kinds;
      this.times = times;
      this.counts = counts;
      this.withoutFollowUp = withoutFollowUp;
    }

    static Packed of(CountedLives lives) {
      double[] times = new double[lives.used];
      int n = 0;
      for (long key : lives.keys) {
        if (key != FREE) {
          times[n++] = Double.longBitsToDouble(key);
        }
      }
      Arrays.sort(times);
      long[] counts = new long[n * lives.width];
      for (int i = 0; i < n; i++) {
        int from = find(lives.keys, Double.doubleToLongBits(times[i])) * lives.width;
        System.arraycopy(lives.counts, from, counts, i * lives.width, lives.width);
      }
      return new Packed(lives.kinds, times, counts, lives.withoutFollowUp);
    }

    private Object readResolve() {
      int capacity = Math.max(16, Integer.highestOneBit(Math.max(1, times.length)) * 4);
      CountedLives lives = new CountedLives(kinds, capacity);
      for (int i = 0; i < times.length; i++) {
        int at = lives.slot(Double.doubleToLongBits(times[i]));
        System.arraycopy(counts, i * lives.width, lives.counts, at * lives.width, lives.width);
      }
      lives.withoutFollowUp = withoutFollowUp;
      return lives;
    }
  }
}
