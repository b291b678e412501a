package pondtally.pack;

import java.nio.charset.StandardCharsets;

/** Reads back what a {@link ByteSink} holds, in the same order. */
public final class ByteSource {

  private final byte[] bytes;
  private int at;

  public ByteSource(byte[] bytes) {
    this(bytes, 0);
  }

  /** Begins somewhere in the middle. */
  public ByteSource(byte[] bytes, int at) {
    this.bytes = bytes;
    this.at = at;
  }

  public boolean hasMore() {
    return at < bytes.length;
  }

  public long readNumber() {
    long number = 0;
    for (int shift = 0; ; shift += 7) {
      byte next = bytes[at++];
      number |= (next & 0x7FL) << shift;
      if (next >= 0) {
        return number;
      }
    }
  }

  public int readSigned() {
    long number = readNumber();
    return (int) (number >>> 1 ^ -(number & 1));
  }

  public long readSignedLong() {
    long number = readNumber();
    return number >>> 1 ^ -(number & 1);
  }

  public double readDouble() {
    long bits = 0;
    for (int i = 0; i < 8; i++) {
      bits = bits << 8 | bytes[at++] & 0xFF;
    }
    return Double.longBitsToDouble(bits);
  }

  public String readText() {
    int length = (int) readNumber();
    String text = new String(bytes, at, length, StandardCharsets.UTF_8);
    at += length;
    return text;
  }
}
