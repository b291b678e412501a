package pondtally.check;

import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pondtally.record.Origin;

/**
 * Rows named in messages before the files' names are known: <code>{row:FILE/SHEET/ROW}</code>. A
 * value that happens to hold such a text is guarded, so that it is shown as the partner wrote it.
 */
final class Placeholders {

  private static final String OPEN = "{row:";
  private static final Pattern ANY =
      Pattern.compile("\\{(\\{+row:)|\\{row:(\\d{1,9})/(\\d{1,9})/(\\d{1,9})}");

  private Placeholders() {}

  static String of(Origin origin) {
    return OPEN + origin.file() + "/" + origin.sheet() + "/" + origin.row() + "}";
  }

  /** The text, kept from being taken for a placeholder. */
  static String guard(String text) {
    return text.replaceAll("(\\{+)row:", "{$1row:");
  }

  /** The message with its rows written out and its guards taken off. */
  static String expand(String message, Function<Origin, String> names) {
    return message.contains(OPEN)
        ? ANY.matcher(message).replaceAll(match -> quoted(match, names))
        : message;
  }

  private static String quoted(MatchResult match, Function<Origin, String> names) {
    String text =
        match.group(1) != null
            ? match.group(1)
            : names.apply(new Origin(part(match, 2), part(match, 3), part(match, 4), false));
    return Matcher.quoteReplacement(text);
  }

  private static int part(MatchResult match, int group) {
    return Integer.parseInt(match.group(group));
  }
}
