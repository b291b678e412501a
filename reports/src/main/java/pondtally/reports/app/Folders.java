package pondtally.reports.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Removes folders with everything in them. */
final class Folders {

  private Folders() {}

  /** Removes a folder; nothing happens where there is none. Links are removed, not followed. */
  static void delete(Path folder) throws IOException {
    if (Files.notExists(folder)) {
      return;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }

  /** Removes a temporary folder; what cannot be removed is named on standard error. */
  static void deleteQuietly(Path folder) {
    try {
      delete(folder);
    } catch (IOException | UncheckedIOException e) {
      System.err.println("pondtally: " + folder + " could not be removed: " + e.getMessage());
    }
  }
}
