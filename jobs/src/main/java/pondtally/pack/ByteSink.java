package pondtally.pack;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Bytes that grow as values are appended: small numbers take one byte, text is UTF-8. */
public final class ByteSink {

  private byte[] bytes = new byte[256];
  private int size;

  public boolean isEmpty() {
    return size == 0;
  }

  public int size() {
    return size;
  }

  public byte[] toBytes() {
    return Arrays.copyOf(bytes, size);
  }

  /** A number from 0, seven bits a byte. */
  public void writeNumber(long number) {
    room(10);
    long rest = number;
    while ((rest & ~0x7FL) != 0) {
      bytes[size++] = (byte) (rest | 0x80);
      rest >>>= 7;
    }
    bytes[size++] = (byte) rest;
  }

  /** A number of either sign. */
  public void writeSigned(int number) {
    writeNumber(((long) number << 1 ^ (long) number >> 63) & 0x1FFFFFFFFL);
  }

  public void writeSignedLong(long number) {
    writeNumber(number << 1 ^ number >> 63);
  }

  public void writeDouble(double number) {
    room(8);
    long bits = Double.doubleToRawLongBits(number);
    for (int shift = 56; shift >= 0; shift -= 8) {
      bytes[size++] = (byte) (bits >>> shift);
    }
  }

  public void writeText(String text) {
    byte[] encoded = text.getBytes(StandardCharsets.UTF_8);
    writeNumber(encoded.length);
    room(encoded.length);
    System.arraycopy(encoded, 0, bytes, size, encoded.length);
    size += encoded.length;
  }

  private void room(int more) {
    if (bytes.length - size < more) {
      bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, size + more));
    }
  }
}
