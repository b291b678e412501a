package pondtally.reports.edition;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * The coordinator's key, from which replacement names are made: HMAC-SHA-256 (RFC 2104, FIPS 180-4)
 * of the partner and the partner's own name. The same key gives the same replacement each year;
 * without the key nobody can tell from a replacement which name it stands for, nor try names out.
 */
public final class EditionKey {

  private static final int BYTES = 32;
  private static final int SHOWN_BYTES = 6;
  private static final int MOST_BYTES = 1000;

  private final byte[] key;

  private EditionKey(byte[] key) {
    this.key = key;
  }

  /** A key for one run, kept nowhere: the next run has other replacement names. */
  public static EditionKey fresh() {
    byte[] key = new byte[BYTES];
    new SecureRandom().nextBytes(key);
    return new EditionKey(key);
  }

  /**
   * The key in {@code file}; where there is no such file, a new key is written to it, for its owner
   * alone (mode 600).
   *
   * @throws IllegalArgumentException where the file holds something else
   */
  public static EditionKey of(Path file) throws IOException {
    if (Files.notExists(file, LinkOption.NOFOLLOW_LINKS)) {
      return create(file);
    }
    String text = text(file);
    if (!text.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException(
          "%s is no key file: expected 64 hexadecimal digits, as --key writes them into a new file."
              .formatted(file));
    }
    return new EditionKey(HexFormat.of().parseHex(text));
  }

  /** What the file says; nothing where it is too long for a key, or no file, as a pipe is. */
  private static String text(Path file) throws IOException {
    boolean isFile = Files.readAttributes(file, BasicFileAttributes.class).isRegularFile();
    return isFile && Files.size(file) <= MOST_BYTES ? Files.readString(file).strip() : "";
  }

  /** Whether the system lets others than its owner read or write the file. */
  public static boolean isOpenToOthers(Path file) {
    try {
      return Files.getPosixFilePermissions(file).stream()
          .anyMatch(right -> !right.name().startsWith("OWNER"));
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }

  private static EditionKey create(Path file) throws IOException {
    EditionKey made = fresh();
    boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
    if (posix) {
      Files.createFile(
          file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
    } else {
      Files.createFile(file);
    }
    Files.writeString(
        file, HexFormat.of().formatHex(made.key) + "\n", StandardOpenOption.TRUNCATE_EXISTING);
    return made;
  }

  /** The replacement for a partner's own name of a {@code kind} of thing, e.g. {@code site}. */
  String replacement(String kind, String partner, String name) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(key, "HmacSHA256"));
      String text = kind + '\0' + partner + '\0' + name;
      byte[] hash = mac.doFinal(text.getBytes(StandardCharsets.UTF_8));
      return kind + "-" + HexFormat.of().formatHex(hash, 0, SHOWN_BYTES);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java platform has HmacSHA256", e);
    }
  }
}
