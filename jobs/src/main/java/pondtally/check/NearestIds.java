package pondtally.check;

import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Finds the known id that an unknown one was probably meant to be. First an id that differs only in
 * case, in spaces, dashes and other marks, or in leading zeros; else the one with the fewest slips:
 * a letter too many, missing, wrong, or two neighbors exchanged. One slip is allowed in ids of 3 or
 * 4 characters, two in longer ones. Two that are equally near are both named; more than two say
 * nothing. Source of the distance: Damerau 1964.
 */
public final class NearestIds {

  /**
   * Beyond so many the ids are not slips but written in some other way: slips are not looked for.
   */
  private static final int SLIPS_LOOKED_FOR = 2000;

  private static final Pattern MARKS = Pattern.compile("[^\\p{L}\\p{N}]+");
  private static final Pattern LEADING_ZEROS = Pattern.compile("(?<!\\p{N})0+(?=\\p{N})");

  private final String[] sorted;

  private NearestIds(String[] sorted) {
    this.sorted = sorted;
  }

  /** In any order, repeats allowed. */
  public static NearestIds of(Collection<String> known) {
    return new NearestIds(known.stream().sorted().distinct().toArray(String[]::new));
  }

  /**
   * What to suggest for each of the ids that has a near one: an id, or {@code A or B}. One pass
   * over the known ids, and for each unknown id a walk along those that begin alike.
   */
  public Map<String, String> suggestions(Collection<String> unknown) {
    Map<String, SortedSet<String>> alike = alike(unknown);
    Map<String, String> suggestions = new TreeMap<>();
    for (String id : unknown) {
      SortedSet<String> near = alike.getOrDefault(plain(id), new TreeSet<>());
      if (near.isEmpty() && unknown.size() <= SLIPS_LOOKED_FOR) {
        near = new SlipSearch(sorted, id).nearest(slipsAllowed(id));
      }
      if (near.size() == 1 || near.size() == 2) {
        suggestions.put(id, String.join(" or ", near));
      }
    }
    return suggestions;
  }

  private Map<String, SortedSet<String>> alike(Collection<String> unknown) {
    Map<String, SortedSet<String>> alike = new HashMap<>();
    unknown.forEach(id -> alike.put(plain(id), new TreeSet<>()));
    alike.remove("");
    for (String id : sorted) {
      SortedSet<String> same = alike.get(plain(id));
      if (same != null) {
        same.add(id);
      }
    }
    return alike;
  }

  private static int slipsAllowed(String id) {
    if (id.length() < 3) {
      return 0;
    }
    return id.length() < 5 ? 1 : 2;
  }

  /** Lower case, without marks and without leading zeros of each number. */
  static String plain(String id) {
    return id.chars().allMatch(c -> c < 128) ? plainAscii(id) : plainOfAnyScript(id);
  }

  private static String plainOfAnyScript(String id) {
    String unpadded = LEADING_ZEROS.matcher(id).replaceAll("");
    return MARKS.matcher(unpadded).replaceAll("").toLowerCase(Locale.ROOT);
  }

  /** The same, quicker: a program has a million ids of this sort. */
  private static String plainAscii(String id) {
    StringBuilder plain = new StringBuilder(id.length());
    boolean inNumber = false;
    for (int i = 0; i < id.length(); i++) {
      char c = id.charAt(i);
      boolean pads = c == '0' && !inNumber && i + 1 < id.length() && isDigit(id.charAt(i + 1));
      inNumber = isDigit(c) && !pads;
      if (!pads && (isDigit(c) || isLetter(c))) {
        plain.append(Character.toLowerCase(c));
      }
    }
    return plain.toString();
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
  }
}
