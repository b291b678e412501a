package pondtally.intake;

import java.util.List;
import java.util.Locale;

/** Finds the word that somebody may have meant. It is only ever suggested, never used. */
final class Likeness {

  private static final int LONGEST = 40;

  private Likeness() {}

  /** The nearest of {@code words}; empty where none is near, or two are equally so. */
  static String nearest(String text, List<String> words) {
    String given = text.toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
    if (given.length() < 3 || given.length() > LONGEST) {
      return "";
    }
    String nearest = "";
    int least = Integer.MAX_VALUE;
    for (String word : words) {
      int edits = word.contains(given) || given.contains(word) ? 0 : edits(given, word);
      if (edits == least) {
        nearest = "";
      } else if (edits < least) {
        least = edits;
        nearest = word;
      }
    }
    return least <= Math.max(1, given.length() / 3) ? nearest : "";
  }

  /**
   * Insertions, deletions, replacements, and swaps of neighboring letters that turn one word into
   * the other, no letter being touched twice (Damerau 1964).
   */
  private static int edits(String from, String to) {
    int[][] edits = new int[from.length() + 1][to.length() + 1];
    for (int i = 0; i <= from.length(); i++) {
      for (int j = 0; j <= to.length(); j++) {
        edits[i][j] = i == 0 || j == 0 ? i + j : least(edits, from, to, i, j);
      }
    }
    return edits[from.length()][to.length()];
  }

  private static int least(int[][] edits, String from, String to, int i, int j) {
    boolean isSame = from.charAt(i - 1) == to.charAt(j - 1);
    int replaced = edits[i - 1][j - 1] + (isSame ? 0 : 1);
    int least = Math.min(replaced, 1 + Math.min(edits[i - 1][j], edits[i][j - 1]));
    boolean isSwapped =
        i > 1
            && j > 1
            && from.charAt(i - 1) == to.charAt(j - 2)
            && from.charAt(i - 2) == to.charAt(j - 1);
    return isSwapped ? Math.min(least, edits[i - 2][j - 2] + 1) : least;
  }
}
