package pondtally.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 sums. */
public final class Sha256 {

  private static final int BUFFER_BYTES = 1 << 16;

  private Sha256() {}

  /** The sum of a file, in hexadecimal. */
  public static String of(Path file) throws IOException {
    try (var in = Files.newInputStream(file)) {
      MessageDigest digest = digest();
      byte[] buffer = new byte[BUFFER_BYTES];
      for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
        digest.update(buffer, 0, n);
      }
      return HexFormat.of().formatHex(digest.digest());
    }
  }

  static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
