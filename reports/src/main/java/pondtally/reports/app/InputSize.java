package pondtally.reports.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;

/** How much there is to read, as text: a workbook holds many times its size. */
final class InputSize {

  private static final int UNPACKED = 8;

  private InputSize() {}

  /** Bytes of all files below a folder; 0 where it cannot be looked into. */
  static long bytesUnder(Path input) {
    try (Stream<Path> files = Files.walk(input)) {
      return files.filter(Files::isRegularFile).mapToLong(InputSize::bytes).sum();
    } catch (IOException | UncheckedIOException e) {
      return 0;
    }
  }

  private static long bytes(Path file) {
    boolean isPacked = file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
    return file.toFile().length() * (isPacked ? UNPACKED : 1);
  }
}
