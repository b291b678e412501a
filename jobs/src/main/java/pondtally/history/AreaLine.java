package pondtally.history;

import java.io.Serializable;
import java.util.Arrays;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A pond's wetland area through time: straight between dated measurements, constant before the
 * first and after the last, and zero from the day the dam was abandoned. Common practice for stocks
 * measured now and then, no source.
 */
public final class AreaLine implements Serializable {

  private static final long serialVersionUID = 1;

  private final int[] at;
  private final double[] acres;
  private final int abandonedOn;

  private AreaLine(int[] at, double[] acres, int abandonedOn) {
    this.at = at;
    this.acres = acres;
    this.abandonedOn = abandonedOn;
  }

  /**
   * The line through dated measurements.
   *
   * @param measured acres by half day since 1970-01-01; at least one
   * @param abandonedOn half day from which the area is zero; {@link Integer#MAX_VALUE} where the
   *     dam was not abandoned
   */
  public static AreaLine of(SortedMap<Integer, Double> measured, int abandonedOn) {
    int[] at = measured.keySet().stream().mapToInt(Integer::intValue).toArray();
    double[] acres = measured.values().stream().mapToDouble(Double::doubleValue).toArray();
    return new AreaLine(at, acres, abandonedOn);
  }

  /** Area at a moment, acres. */
  public double acresAt(int halfDay) {
    if (halfDay >= abandonedOn) {
      return 0;
    }
    return lineAt(halfDay);
  }

  private double lineAt(int halfDay) {
    int i = Arrays.binarySearch(at, halfDay);
    if (i >= 0) {
      return acres[i];
    }
    int next = -i - 1;
    if (next == 0) {
      return acres[0];
    }
    if (next == at.length) {
      return acres[at.length - 1];
    }
    double share = (double) (halfDay - at[next - 1]) / (at[next] - at[next - 1]);
    return acres[next - 1] + share * (acres[next] - acres[next - 1]);
  }

  /** Area over time, acre-days: the integral of the line over {@code time}. */
  public double acreDays(Stretches time) {
    double sum = 0;
    for (Stretch stretch : time.list()) {
      sum += integral(stretch.from(), Math.min(stretch.to(), abandonedOn)) / 2;
    }
    return sum;
  }

  /** The part of {@link #acreDays} that lies before the first or after the last measurement. */
  public double acreDaysExtrapolated(Stretches time) {
    return acreDays(time.minus(Stretches.between(at[0], at[at.length - 1])));
  }

  private double integral(int from, int to) {
    double sum = 0;
    int left = from;
    int i = 0;
    while (left < to) {
      while (i < at.length && at[i] <= left) {
        i++;
      }
      int right = i < at.length ? Math.min(at[i], to) : to;
      sum += (lineAt(left) + lineAt(right)) / 2 * (right - left);
      left = right;
    }
    return sum;
  }

  /** The measurements, acres by half day. */
  public Map<Integer, Double> measurements() {
    Map<Integer, Double> map = new TreeMap<>();
    for (int i = 0; i < at.length; i++) {
      map.put(at[i], acres[i]);
    }
    return map;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof AreaLine that
        && Arrays.equals(at, that.at)
        && Arrays.equals(acres, that.acres)
        && abandonedOn == that.abandonedOn;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Arrays.hashCode(at) + Arrays.hashCode(acres)) + abandonedOn;
  }
}
