package pondtally.stage;

import java.io.Serializable;

/** Records one after another as bytes, in memory or in a temporary file, and where each begins. */
final class PackedChunk implements Serializable {

  private static final long serialVersionUID = 1;

  /** So few that where a record begins is a short number. */
  static final int MOST_BYTES = 1 << 15;

  private final char[] starts;
  private final int length;

  /** Null where the bytes are in the file. */
  private final byte[] bytes;

  private final transient SpilledBytes file;
  private final transient long at;

  private PackedChunk(char[] starts, int length, byte[] bytes, SpilledBytes file, long at) {
    this.starts = starts;
    this.length = length;
    this.bytes = bytes;
    this.file = file;
    this.at = at;
  }

  static PackedChunk of(byte[] bytes, char[] starts) {
    return new PackedChunk(starts, bytes.length, bytes, null, 0);
  }

  /** The same, its bytes in a file. */
  PackedChunk in(SpilledBytes file) {
    return isInMemory() ? new PackedChunk(starts, length, null, file, file.append(bytes)) : this;
  }

  boolean isInMemory() {
    return bytes != null;
  }

  int length() {
    return length;
  }

  int records() {
    return starts.length;
  }

  int start(int record) {
    return starts[record];
  }

  /** All the bytes. */
  byte[] bytes() {
    return isInMemory() ? bytes : file.read(at, length);
  }

  /** The bytes of one record. */
  byte[] bytes(int record) {
    int end = record + 1 < starts.length ? starts[record + 1] : length;
    return file.read(at + starts[record], end - starts[record]);
  }

  /** What is sent elsewhere has its bytes with it. */
  private Object writeReplace() {
    return isInMemory() ? this : of(bytes(), starts);
  }
}
