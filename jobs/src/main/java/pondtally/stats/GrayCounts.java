package pondtally.stats;

import java.io.Serializable;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How many lives of each group and stratum ended at each age, and how: what Gray's test needs.
 * Counts are whole numbers, so parts merge in any order to the same result.
 */
public final class GrayCounts implements Serializable {
  private static final long serialVersionUID = 1L;

  /** How a life ended. */
  public enum End {
    /** Last seen working. */
    CENSORED(0),
    /** The event whose incidence is compared. */
    EVENT(1),
    /** An event after which it can no longer happen. */
    COMPETING(2);

    /** Place in an array of counts. */
    final int place;

    End(int place) {
      this.place = place;
    }
  }

  private record Key(String stratum, String group, double days) implements Serializable {}

  private final HashMap<Key, long[]> counts = new HashMap<>();

  private GrayCounts() {}

  /** An accumulator with no life in it. */
  public static GrayCounts empty() {
    return new GrayCounts();
  }

  /**
   * Adds lives that ended alike.
   *
   * @param stratum within which groups are compared; one text for all without strata
   * @param days age at the end, above 0
   * @throws IllegalArgumentException for an age that is not above 0 or a negative count
   */
  public GrayCounts add(String stratum, String group, double days, End end, long count) {
    if (!(days > 0) || Double.isInfinite(days) || count < 0) {
      throw new IllegalArgumentException(
          "end at " + days + " days, count " + count + ": expected above 0 and 0 or more");
    }
    if (count > 0) {
      counts.computeIfAbsent(new Key(stratum, group, days), k -> new long[3])[end.place] += count;
    }
    return this;
  }

  /** Adds another accumulator's lives. */
  public GrayCounts merge(GrayCounts other) {
    other.counts.forEach(
        (key, theirs) -> {
          long[] ours = counts.computeIfAbsent(key, k -> new long[3]);
          for (int i = 0; i < 3; i++) {
            ours[i] += theirs[i];
          }
        });
    return this;
  }

  /** By stratum, then age, then group: lives by {@link End}. */
  SortedMap<String, SortedMap<Double, Map<String, long[]>>> sorted() {
    SortedMap<String, SortedMap<Double, Map<String, long[]>>> sorted = new TreeMap<>();
    counts.forEach(
        (key, ends) ->
            sorted
                .computeIfAbsent(key.stratum, s -> new TreeMap<>())
                .computeIfAbsent(key.days, d -> new TreeMap<>())
                .put(key.group, ends));
    return sorted;
  }
}
