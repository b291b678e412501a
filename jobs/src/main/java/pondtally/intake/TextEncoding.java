package pondtally.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * How the bytes of a text file stand for characters. A byte-order mark decides; else zero bytes
 * tell UTF-16; else the file is UTF-8 if all of it is; else Windows-1252, as a guess.
 *
 * @param charset the encoding
 * @param markLength bytes of the byte-order mark
 * @param isGuessed whether nothing in the file proves it
 */
record TextEncoding(Charset charset, int markLength, boolean isGuessed) {

  private static final Charset GUESS = Charset.forName("windows-1252");
  private static final int BUFFER = 1 << 16;

  /** More than one zero byte in so many is no text. */
  private static final int MOST_ZEROS = 50;

  static TextEncoding of(Path path) throws IOException {
    byte[] head = head(path);
    TextEncoding marked = marked(head);
    if (marked != null) {
      boolean isTrue = !marked.charset.equals(StandardCharsets.UTF_8) || isUtf8(path);
      return isTrue ? marked : new TextEncoding(GUESS, marked.markLength, true);
    }
    TextEncoding wide = wide(head);
    if (wide != null) {
      return wide;
    }
    if (isAscii(path) || isUtf8(path)) {
      return new TextEncoding(StandardCharsets.UTF_8, 0, false);
    }
    return new TextEncoding(GUESS, 0, true);
  }

  /**
   * The encoding that columns.yaml states. A byte-order mark is proof and wins.
   *
   * @throws IOException if the file holds bytes that are none of that encoding
   */
  static TextEncoding stated(Path path, Charset charset) throws IOException {
    TextEncoding marked = marked(head(path));
    if (marked != null) {
      return of(path);
    }
    if (!isAll(path, charset)) {
      throw new IOException(
          "columns.yaml says encoding: %s, but it is written in another. Correct columns.yaml"
              .formatted(charset.name().toLowerCase(Locale.ROOT)));
    }
    return new TextEncoding(charset, 0, false);
  }

  private static byte[] head(Path path) throws IOException {
    try (InputStream in = Files.newInputStream(path)) {
      return in.readNBytes(4096);
    }
  }

  private static TextEncoding marked(byte[] head) {
    if (startsWith(head, 0xEF, 0xBB, 0xBF)) {
      return new TextEncoding(StandardCharsets.UTF_8, 3, false);
    }
    if (startsWith(head, 0xFF, 0xFE)) {
      return new TextEncoding(StandardCharsets.UTF_16LE, 2, false);
    }
    return startsWith(head, 0xFE, 0xFF)
        ? new TextEncoding(StandardCharsets.UTF_16BE, 2, false)
        : null;
  }

  private static boolean startsWith(byte[] head, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (i >= head.length || (head[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  /** UTF-16 without a mark: every other byte of Western text is zero. */
  private static TextEncoding wide(byte[] head) throws IOException {
    int[] zeros = new int[2];
    for (int i = 0; i < head.length; i++) {
      zeros[i % 2] += head[i] == 0 ? 1 : 0;
    }
    int pairs = head.length / 2;
    if (zeros[1] * 2 > pairs && zeros[0] * 10 <= pairs) {
      return new TextEncoding(StandardCharsets.UTF_16LE, 0, false);
    }
    if (zeros[0] * 2 > pairs && zeros[1] * 10 <= pairs) {
      return new TextEncoding(StandardCharsets.UTF_16BE, 0, false);
    }
    if ((zeros[0] + zeros[1]) * MOST_ZEROS > head.length) {
      throw new IOException("it is not a text file (it holds zero bytes)");
    }
    return null;
  }

  private static boolean isAscii(Path path) throws IOException {
    byte[] buffer = new byte[BUFFER];
    try (InputStream in = Files.newInputStream(path)) {
      for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
        int all = 0;
        for (int i = 0; i < n; i++) {
          all |= buffer[i];
        }
        if (all < 0) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean isUtf8(Path path) throws IOException {
    return isAll(path, StandardCharsets.UTF_8);
  }

  private static boolean isAll(Path path, Charset charset) throws IOException {
    char[] buffer = new char[BUFFER];
    try (Reader in =
        new InputStreamReader(
            Files.newInputStream(path),
            charset
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT))) {
      int n = 0;
      while (n >= 0) {
        n = in.read(buffer);
      }
      return true;
    } catch (CharacterCodingException e) {
      return false;
    }
  }

  /** The characters of the file, without the byte-order mark. */
  Reader open(Path path) throws IOException {
    InputStream in = Files.newInputStream(path);
    try {
      in.skipNBytes(markLength);
      return new InputStreamReader(in, charset);
    } catch (IOException e) {
      in.close();
      throw e;
    }
  }
}
