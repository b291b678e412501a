package pondtally.stats;

import java.util.Arrays;
import java.util.function.IntPredicate;

/** Counts by failure-day number and, within it, by profile; equal pairs are added up. */
final class HazardBuckets {
  private final int[] start;
  private final int[] profile;
  private final long[] count;

  private HazardBuckets(int[] start, int[] profile, long[] count) {
    this.start = start;
    this.profile = profile;
    this.count = count;
  }

  /** Sorts the chosen rows by number; rows come in order of profile. */
  static HazardBuckets of(
      int[] number, int[] profile, long[] count, int most, IntPredicate chosen) {
    int[] start = new int[most + 2];
    for (int i = 0; i < number.length; i++) {
      if (chosen.test(i)) {
        start[number[i] + 1]++;
      }
    }
    for (int k = 1; k < start.length; k++) {
      start[k] += start[k - 1];
    }
    int[] next = Arrays.copyOf(start, most + 1);
    int[] profiles = new int[start[most + 1]];
    long[] counts = new long[start[most + 1]];
    int[] filled = next.clone();
    for (int i = 0; i < number.length; i++) {
      if (chosen.test(i)) {
        int k = number[i];
        if (filled[k] > next[k] && profiles[filled[k] - 1] == profile[i]) {
          counts[filled[k] - 1] += count[i];
        } else {
          profiles[filled[k]] = profile[i];
          counts[filled[k]++] = count[i];
        }
      }
    }
    return packed(start, filled, profiles, counts);
  }

  private static HazardBuckets packed(int[] start, int[] filled, int[] profiles, long[] counts) {
    int[] tight = new int[start.length];
    int at = 0;
    for (int k = 0; k < filled.length; k++) {
      int length = filled[k] - start[k];
      System.arraycopy(profiles, start[k], profiles, at, length);
      System.arraycopy(counts, start[k], counts, at, length);
      at += length;
      tight[k + 1] = at;
    }
    return new HazardBuckets(tight, Arrays.copyOf(profiles, at), Arrays.copyOf(counts, at));
  }

  /** Where the entries of a number begin; they end where those of the next begin. */
  int from(int number) {
    return start[number];
  }

  int to(int number) {
    return start[number + 1];
  }

  int profile(int entry) {
    return profile[entry];
  }

  long count(int entry) {
    return count[entry];
  }
}
