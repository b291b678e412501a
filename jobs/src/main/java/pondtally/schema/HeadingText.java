package pondtally.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A column heading taken apart: its words, and the unit that it names.
 *
 * @param key letters and digits of the whole heading, lower case; what is matched first
 * @param baseKey the same without the unit; equal to {@code key} where no unit was found
 * @param unit the unit; null: none found
 * @param comment text in brackets at the end that is no unit; empty: none
 */
record HeadingText(String key, String baseKey, Unit unit, String comment) {

  private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s_,;:/\\u00a0-]+");

  static HeadingText of(String heading) {
    String text = heading.strip();
    String comment = "";
    int open = openingBracket(text);
    if (open > 0) {
      comment = text.substring(open + 1, text.length() - 1).strip();
      text = text.substring(0, open).strip();
      Optional<Unit> bracketed = Unit.find(comment);
      if (bracketed.isPresent()) {
        return new HeadingText(key(heading), key(text), bracketed.get(), "");
      }
    }
    return unbracketed(text, comment);
  }

  private static int openingBracket(String text) {
    if (text.endsWith(")")) {
      return text.lastIndexOf('(');
    }
    return text.endsWith("]") ? text.lastIndexOf('[') : -1;
  }

  private static HeadingText unbracketed(String text, String comment) {
    List<String> words = words(text);
    for (int i = words.size() - 1; i >= 0; i--) {
      if (i > 0) {
        Optional<Unit> pair = Unit.find(words.get(i - 1) + words.get(i));
        if (pair.isPresent()) {
          return without(text, words, i - 1, i, pair.get(), comment);
        }
      }
      Optional<Unit> single = Unit.find(words.get(i));
      if (single.isPresent()) {
        return without(text, words, i, i, single.get(), comment);
      }
    }
    return new HeadingText(key(text), key(text), null, comment);
  }

  /** Leaves the words from first to last out, and an "in" or "per" that leads to them. */
  private static HeadingText without(
      String text, List<String> words, int first, int last, Unit unit, String comment) {
    List<String> rest = new ArrayList<>(words.subList(0, first));
    if (rest.size() > 1 && rest.get(rest.size() - 1).equals("in")) {
      rest.remove(rest.size() - 1);
    }
    rest.addAll(words.subList(last + 1, words.size()));
    return new HeadingText(key(text), key(String.join("", rest)), unit, comment);
  }

  private static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    for (String word : BETWEEN_WORDS.split(text.toLowerCase(Locale.ROOT), -1)) {
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    return words;
  }

  /** Letters and digits of a heading in lower case; {@code #} counts as "no". */
  static String key(String heading) {
    StringBuilder key = new StringBuilder(heading.length());
    for (int i = 0; i < heading.length(); i++) {
      char c = heading.charAt(i);
      if (c == '#') {
        key.append("no");
      } else if (Character.isLetterOrDigit(c)) {
        key.append(Character.toLowerCase(c));
      }
    }
    return key.toString();
  }
}
