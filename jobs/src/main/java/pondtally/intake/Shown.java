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
          shown.append(String.format("\\u%04x", (int) c));
        } else {
          shown.append(c);
        }
      }
    }
  }

  /** Control and format characters (which include those that reverse the direction of text). */
  private static boolean isUnseen(char c) {
    return Character.isISOControl(c) || Character.getType(c) == Character.FORMAT;
  }
}
