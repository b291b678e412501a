package pondtally.stats;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Numbers at risk, events and censored at each distinct time of exit, in order of time: all that
 * the product-limit estimate, the cumulative hazard and the log-rank family need. Made by {@link
 * CountedLives}. At risk at t are the lives with entry &lt; t ≤ exit (delayed entry allowed).
 */
public final class RiskTable {
  private final double[] allTimes;
  private final long[] enteredBefore;
  private final long[] exitedBefore;
  private final double[] times;
  private final long[] atRisk;
  private final long[] events;
  private final long[] censored;
  private final double timeAtRisk;

  private RiskTable(
      double[] allTimes, long[] entered, long[] eventsAt, long[] censoredAt, int rows) {
    this.allTimes = allTimes;
    this.enteredBefore = new long[allTimes.length + 1];
    this.exitedBefore = new long[allTimes.length + 1];
    this.times = new double[rows];
    this.atRisk = new long[rows];
    this.events = new long[rows];
    this.censored = new long[rows];
    double lived = 0;
    int row = 0;
    for (int i = 0; i < allTimes.length; i++) {
      long exits = eventsAt[i] + censoredAt[i];
      if (exits > 0) {
        times[row] = allTimes[i];
        atRisk[row] = enteredBefore[i] - exitedBefore[i];
        events[row] = eventsAt[i];
        censored[row++] = censoredAt[i];
      }
      enteredBefore[i + 1] = enteredBefore[i] + entered[i];
      exitedBefore[i + 1] = exitedBefore[i] + exits;
      lived += allTimes[i] * (exits - entered[i]);
    }
    this.timeAtRisk = lived;
  }

  /** From sorted distinct times and, at each, the numbers that enter, fail and are censored. */
  static RiskTable of(double[] times, long[] entered, long[] events, long[] censored) {
    int rows = 0;
    for (int i = 0; i < times.length; i++) {
      rows += events[i] + censored[i] > 0 ? 1 : 0;
    }
    return new RiskTable(times, entered, events, censored, rows);
  }

  /** Nobody was followed. */
  public static RiskTable empty() {
    return of(new double[0], new long[0], new long[0], new long[0]);
  }

  /** Number of rows: distinct times at which somebody failed or was censored. */
  public int rows() {
    return times.length;
  }

  /** Time of a row; rows are in increasing order of time. */
  public double time(int row) {
    return times[row];
  }

  /** At risk at a row's time: entered before it and not yet out. */
  public long atRisk(int row) {
    return atRisk[row];
  }

  /** Events at a row's time. */
  public long events(int row) {
    return events[row];
  }

  /** Censored at a row's time (still at risk at that time). */
  public long censored(int row) {
    return censored[row];
  }

  /** At risk at any time t: entry &lt; t ≤ exit. */
  public long atRiskAt(double t) {
    int at = Arrays.binarySearch(allTimes, t);
    int before = at >= 0 ? at : -at - 1;
    return enteredBefore[before] - exitedBefore[before];
  }

  /** Lives followed. */
  public long lives() {
    return enteredBefore[allTimes.length];
  }

  /** Events in all. */
  public long events() {
    return Arrays.stream(events).sum();
  }

  /** Sum of exit − entry over all lives, in the unit of the times. */
  public double timeAtRisk() {
    return timeAtRisk;
  }

  /** Last row's time with at least so many at risk; empty if there never were. */
  public OptionalDouble lastTimeWithAtRisk(long minimum) {
    for (int row = rows() - 1; row >= 0; row--) {
      if (atRisk[row] >= minimum) {
        return OptionalDouble.of(times[row]);
      }
    }
    return OptionalDouble.empty();
  }

  /** The row at or before t, −1 if all rows are later. */
  int rowAtOrBefore(double t) {
    int at = Arrays.binarySearch(times, t);
    return at >= 0 ? at : -at - 2;
  }
}
