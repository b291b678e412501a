package pondtally.stage;

import java.io.EOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.StandardOpenOption;

/**
 * Bytes that wait in a temporary file of their own. The file is removed when nobody refers to it
 * any more; on most systems it has no name from the beginning. One thread may append; once it is
 * done, several may read.
 */
final class SpilledBytes {

  private final FileChannel file;
  private long size;

  SpilledBytes() {
    try {
      file =
          FileChannel.open(
              Files.createTempFile("pondtally-", ".packed"),
              StandardOpenOption.READ,
              StandardOpenOption.WRITE,
              StandardOpenOption.DELETE_ON_CLOSE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Adds bytes at the end; where they begin. */
  long append(byte[] bytes) {
    long at = size;
    ByteBuffer rest = ByteBuffer.wrap(bytes);
    try {
      while (rest.hasRemaining()) {
        size += file.write(rest, size);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return at;
  }

  byte[] read(long at, int length) {
    ByteBuffer bytes = ByteBuffer.allocate(length);
    try {
      while (bytes.hasRemaining()) {
        if (file.read(bytes, at + bytes.position()) < 0) {
          throw new EOFException("a temporary file ends early");
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.array();
  }
}
