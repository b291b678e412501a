package pondtally.intake;

/** A partner's value as messages show it. */
final class Shown {

  private static final int LONGEST = 60;

  private Shown() {}

  /** The value in quotes, control characters escaped, at most 60 characters of it. */
  static String value(String text) {
    StringBuilder shown = new StringBuilder("\"");
    int end = Math.min(text.length(), LONGEST);
    if (end < text.length() && Character.isHighSurrogate(text.charAt(end - 1))) {
      end--;
    }
    for (int i = 0; i < end; i++) {
      append(shown, text.charAt(i));
    }
    return shown.append(end < text.length() ? "…\"" : "\"").toString();
  }

  private static void append(StringBuilder shown, char c) {
    switch (c) {
      case '\n' -> shown.append("\\n");
      case '\r' -> shown.append("\\r");
      case '\t' -> shown.append("\\t");
      default -> {
        if (isUnseen(c)) {
          shown.append(escape(c));
        } else {
          shown.append(c);
        }
      }
    }
  }

  /** Whether the text holds characters that nobody sees, white space aside. */
  static boolean hasUnseen(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if ((c < ' ' || c >= 0x7f) && isUnseen(c) && !isWhite(c)) {
        return true;
      }
    }
    return false;
  }

  /** Which they are, in words. */
  static String unseenIn(String text) {
    int[] unseen = text.chars().filter(c -> isUnseen((char) c) && !isWhite((char) c)).toArray();
    String first = escape((char) unseen[0]);
    return unseen.length == 1
        ? "a character that cannot be seen, shown here as " + first
        : "%s characters that cannot be seen, shown here as %s and the like"
            .formatted(unseen.length, first);
  }

  /** The text without characters that nobody sees. */
  static String withoutUnseen(String text) {
    return text.codePoints()
        .filter(c -> c > Character.MAX_VALUE || !isUnseen((char) c) || isWhite((char) c))
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  private static boolean isWhite(char c) {
    return c == '\t' || c == '\n' || c == '\r';
  }

  private static String escape(char c) {
    return String.format("\\u%04x", (int) c);
  }

  /** Control and format characters (which include those that reverse the direction of text). */
  private static boolean isUnseen(char c) {
    return Character.isISOControl(c) || Character.getType(c) == Character.FORMAT;
  }
}
