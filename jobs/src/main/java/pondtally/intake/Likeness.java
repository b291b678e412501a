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
   * Insertions, deletions and replacements that turn one word into the other (Levenshtein 1966).
   */
  private static int edits(String from, String to) {
    int[] row = new int[to.length() + 1];
    for (int j = 0; j <= to.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= to.length(); j++) {
        int replaced = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[to.length()];
  }
}
