package pondtally.intake;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/**
 * The fingerprint of a row: the first 64 bits of SHA-256 (FIPS 180-4) over its cells. What a
 * spreadsheet program does to a cell by saving it leaves the fingerprint as it is.
 */
final class FixPrint {

  private static final int BYTES = 8;

  /** Longer texts are shortened in the list; their beginning counts. */
  private static final int LOOKED_AT = 5_000;

  private FixPrint() {}

  /** The fingerprint; empty cells at the end do not count. */
  static String of(List<String> cells) {
    MessageDigest sha = sha256();
    int last = cells.size();
    while (last > 0 && plain(cells.get(last - 1)).isEmpty()) {
      last--;
    }
    for (String cell : cells.subList(0, last)) {
      byte[] bytes = plain(cell).getBytes(StandardCharsets.UTF_8);
      sha.update((bytes.length + ":").getBytes(StandardCharsets.UTF_8));
      sha.update(bytes);
    }
    return HexFormat.of().formatHex(sha.digest(), 0, BYTES);
  }

  /** Whether two cells are the same to a reader of the list. */
  static boolean same(String a, String b) {
    return a.equals(b) || plain(a).equals(plain(b));
  }

  /** The cell as the list shows it: without space around it, control characters written out. */
  private static String plain(String cell) {
    String text = cell.replace("_x000D_", "").replace("_x005F_", "_");
    StringBuilder plain = new StringBuilder(text.length());
    for (int i = 0; i < text.length() && plain.length() < LOOKED_AT; i++) {
      char c = text.charAt(i);
      if (isUnprintable(text, i)) {
        plain.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
      } else if (c != '\r') {
        plain.append(c);
      }
    }
    return Blank.clean(plain.substring(0, Math.min(LOOKED_AT, plain.length())));
  }

  private static boolean isUnprintable(String text, int at) {
    char c = text.charAt(at);
    if (Character.isSurrogate(c)) {
      boolean isPair =
          Character.isHighSurrogate(c)
              ? at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1))
              : at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
      return !isPair;
    }
    return c > 0xfffd || (c < ' ' && c != '\t' && c != '\n' && c != '\r');
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
