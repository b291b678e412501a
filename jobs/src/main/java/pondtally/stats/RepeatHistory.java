package pondtally.stats;

import java.util.Arrays;

/** One device's span of follow-up (entry, exit] and the times of its events, in order. */
public final class RepeatHistory {
  private final double entry;
  private final double exit;
  private final double[] eventTimes;

  private RepeatHistory(double entry, double exit, double[] eventTimes) {
    this.entry = entry;
    this.exit = exit;
    this.eventTimes = eventTimes;
  }

  /**
   * A device's history.
   *
   * @param entry from 0
   * @param exit at least the entry
   * @param eventTimes in any order; entry &lt; time ≤ exit; two may be equal
   * @throws IllegalArgumentException for times out of order or not finite
   */
  public static RepeatHistory of(double entry, double exit, double... eventTimes) {
    double[] sorted = eventTimes.clone();
    Arrays.sort(sorted);
    boolean span = entry >= 0 && exit >= entry && exit < Double.POSITIVE_INFINITY;
    boolean inside = sorted.length == 0 || (sorted[0] > entry && sorted[sorted.length - 1] <= exit);
    if (!span || !inside) {
      throw new IllegalArgumentException(
          "events at " + Arrays.toString(sorted) + " in follow-up from " + entry + " to " + exit);
    }
    return new RepeatHistory(entry, exit, sorted);
  }

  /** Time from which the device is at risk. */
  public double entry() {
    return entry;
  }

  /** Time to which the device is at risk. */
  public double exit() {
    return exit;
  }

  double[] eventTimes() {
    return eventTimes;
  }
}
