package pondtally.intake;

import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayDeque;
import java.util.Deque;

/** Lines of a text, of a length that is bounded, with the possibility to put some back. */
final class LineReader implements Closeable {

  private static final int LONGEST = 1_000_000;

  private final Reader in;
  private final char[] buffer = new char[1 << 16];
  private final Deque<String> putBack = new ArrayDeque<>();
  private int at;
  private int end;
  private boolean skipsLineFeed;

  LineReader(Reader in) {
    this.in = in;
  }

  /** The next line without its end; null: there is none. */
  String next() throws IOException {
    if (!putBack.isEmpty()) {
      return putBack.pop();
    }
    StringBuilder begun = null;
    while (fill()) {
      int start = at;
      int i = start;
      while (i < end && buffer[i] != '\n' && buffer[i] != '\r') {
        i++;
      }
      at = i;
      if (i < end) {
        skipsLineFeed = buffer[i] == '\r';
        at = i + 1;
        return begun == null
            ? new String(buffer, start, i - start)
            : begun.append(buffer, start, i - start).toString();
      }
      begun = begun == null ? new StringBuilder() : begun;
      begun.append(buffer, start, i - start);
      if (begun.length() > LONGEST) {
        throw new IOException("a line is longer than 1,000,000 characters");
      }
    }
    return begun == null ? null : begun.toString();
  }

  /** Whether there is something in the buffer; a line feed that ends a CR LF is passed over. */
  private boolean fill() throws IOException {
    for (; ; ) {
      if (at == end) {
        end = in.read(buffer);
        at = 0;
        if (end <= 0) {
          end = 0;
          return false;
        }
      }
      if (!skipsLineFeed || buffer[at] != '\n') {
        skipsLineFeed = false;
        return true;
      }
      skipsLineFeed = false;
      at++;
    }
  }

  /** Makes {@code line} the next one. */
  void putBack(String line) {
    putBack.push(line);
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
