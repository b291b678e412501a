package pondtally.app;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Which machine this is. Process numbers say nothing on another one, and folders on a network, or
 * shared with a container, are written to by several.
 */
public final class ThisMachine {

  private static final int MOST_CHARACTERS = 20;
  private static final int MARK_BYTES = 3;
  private static final String HOST = found();
  private static final String MARK = mark(HOST, text("/etc/machine-id"));

  private ThisMachine() {}

  /** Six hexadecimal digits that tell it from others, those of the same name included. */
  public static String mark() {
    return MARK;
  }

  /** The name with the mark: {@code office-pc.3fa21c}. */
  public static String name() {
    return HOST + "." + MARK;
  }

  static String readable(String host) {
    String plain = host.strip().replaceAll("[^A-Za-z0-9.-]", "_");
    return plain.substring(0, Math.min(MOST_CHARACTERS, plain.length()));
  }

  static String mark(String host, String id) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256")
              .digest((host + "\n" + id).getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash, 0, MARK_BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private static String found() {
    String host = text("/proc/sys/kernel/hostname");
    String stated = host.isEmpty() ? System.getenv("COMPUTERNAME") : host;
    return readable(stated == null || stated.isBlank() ? asked() : stated);
  }

  private static String asked() {
    try {
      return InetAddress.getLocalHost().getHostName();
    } catch (UnknownHostException e) {
      return "unknown";
    }
  }

  /** What a file of the system says; empty where there is none. */
  private static String text(String file) {
    try {
      return Files.readString(Path.of(file)).strip();
    } catch (IOException e) {
      return "";
    }
  }
}
