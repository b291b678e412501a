package pondtally.intake;

import java.io.Serializable;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names a row as it stood, so that a corrected list can say which row it replaces.
 *
 * @param file path below the program folder
 * @param sheet name of the sheet; empty for text files
 * @param row row number as a spreadsheet shows it
 * @param print fingerprint of its cells
 */
public record FixKey(String file, String sheet, int row, String print) implements Serializable {

  private static final Pattern TEXT =
      Pattern.compile("fix1\\|([0-9a-f]{16})\\|(\\d{1,9})\\|([^|]+)\\|([^|]*)");

  /** The key of a row of a file. */
  public static FixKey of(String file, String sheet, SourceRow row) {
    return new FixKey(file, sheet, row.row(), FixPrint.of(row.cells()));
  }

  /** The key as one cell. */
  public String text() {
    return "fix1|%s|%s|%s|%s".formatted(print, row, encoded(file), encoded(sheet));
  }

  /** The key that a cell holds; empty where it holds none. */
  static Optional<FixKey> parse(String cell) {
    Matcher key = TEXT.matcher(Blank.clean(cell));
    if (!key.matches()) {
      return Optional.empty();
    }
    try {
      int row = Integer.parseInt(key.group(2));
      return Optional.of(
          new FixKey(decoded(key.group(3)), decoded(key.group(4)), row, key.group(1)));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static String decoded(String text) {
    return URLDecoder.decode(text, StandardCharsets.UTF_8);
  }

  /** The row for people. */
  String words() {
    return sheet.isEmpty()
        ? "%s, row %s".formatted(file, row)
        : "%s, sheet %s, row %s".formatted(file, sheet, row);
  }
}
