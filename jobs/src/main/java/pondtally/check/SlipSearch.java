package pondtally.check;

import java.util.Arrays;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Nearest strings in a sorted list by edit distance with exchanged neighbors (optimal string
 * alignment; Damerau 1964). The list is walked like a tree of shared beginnings: a row of distances
 * is kept for each letter, reused as far as the next string begins alike, and all strings whose
 * beginning is already too far are skipped at once.
 */
final class SlipSearch {

  private final String[] sorted;
  private final String id;

  /** {@code rows[d][j]}: distance of the first d letters of the string from the first j of id. */
  private int[][] rows = new int[32][];

  SlipSearch(String[] sorted, String id) {
    this.sorted = sorted;
    this.id = id;
    rows[0] = new int[id.length() + 1];
    for (int j = 0; j <= id.length(); j++) {
      rows[0][j] = j;
    }
  }

  /** All strings at the smallest distance, where that is at most {@code limit}. */
  SortedSet<String> nearest(int limit) {
    SortedSet<String> best = new TreeSet<>();
    int bound = limit;
    String before = "";
    int known = 0;
    int i = 0;
    while (i < sorted.length && limit > 0) {
      String candidate = sorted[i];
      int depth = Math.min(known, sharedBeginning(before, candidate));
      boolean near = true;
      while (near && depth < candidate.length()) {
        near = fill(candidate, ++depth) <= bound;
      }
      before = candidate;
      known = depth;
      if (!near) {
        i = endOfBeginning(i, depth);
        continue;
      }
      int distance = rows[depth][id.length()];
      if (distance < bound) {
        best.clear();
        bound = distance;
      }
      if (distance <= bound) {
        best.add(candidate);
      }
      i++;
    }
    return best;
  }

  /** Fills the row of the candidate's letter {@code depth}; its smallest distance. */
  private int fill(String candidate, int depth) {
    int[] row = rowAt(depth);
    int[] above = rows[depth - 1];
    char letter = candidate.charAt(depth - 1);
    row[0] = depth;
    int smallest = depth;
    for (int j = 1; j <= id.length(); j++) {
      int cost = letter == id.charAt(j - 1) ? 0 : 1;
      int value = Math.min(above[j - 1] + cost, Math.min(above[j], row[j - 1]) + 1);
      if (exchanged(candidate, depth, j)) {
        value = Math.min(value, rows[depth - 2][j - 2] + 1);
      }
      row[j] = value;
      smallest = Math.min(smallest, value);
    }
    return smallest;
  }

  private boolean exchanged(String candidate, int depth, int j) {
    return depth > 1
        && j > 1
        && candidate.charAt(depth - 1) == id.charAt(j - 2)
        && candidate.charAt(depth - 2) == id.charAt(j - 1);
  }

  private int[] rowAt(int depth) {
    if (depth >= rows.length) {
      rows = Arrays.copyOf(rows, 2 * depth);
    }
    if (rows[depth] == null) {
      rows[depth] = new int[id.length() + 1];
    }
    return rows[depth];
  }

  private static int sharedBeginning(String a, String b) {
    int end = Math.min(a.length(), b.length());
    int i = 0;
    while (i < end && a.charAt(i) == b.charAt(i)) {
      i++;
    }
    return i;
  }

  /** The first place after {@code from} whose string does not begin with the same letters. */
  private int endOfBeginning(int from, int letters) {
    String candidate = sorted[from];
    int step = 1;
    int low = from;
    while (low + step < sorted.length
        && sorted[low + step].regionMatches(0, candidate, 0, letters)) {
      low += step;
      step *= 2;
    }
    int high = Math.min(low + step, sorted.length);
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (sorted[middle].regionMatches(0, candidate, 0, letters)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }
}
