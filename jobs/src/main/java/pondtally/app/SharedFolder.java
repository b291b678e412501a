package pondtally.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import pondtally.check.UserError;

/**
 * A folder of this run's own in one that every machine of a cluster reaches. It goes at the end,
 * however the run ends.
 *
 * @param path null: no such place was named
 */
record SharedFolder(Path path) implements AutoCloseable {

  /**
   * @param place folder that every machine reaches; null: there is none
   * @throws UserError with exit code 4 if nothing can be made there
   */
  static SharedFolder in(Path place) {
    if (place == null) {
      return new SharedFolder(null);
    }
    try {
      return new SharedFolder(Files.createTempDirectory(place, "pondtally-"));
    } catch (IOException e) {
      throw UserError.output(
          "--shared %s: nothing can be written there. Expected a folder that every machine reaches under this path."
              .formatted(place));
    }
  }

  /** Moves what tasks and driver left there into {@code tables}. */
  void moveTo(Path tables) throws IOException {
    if (path == null) {
      return;
    }
    try (Stream<Path> files = Files.list(path)) {
      for (Path file : files.toList()) {
        Files.copy(file, tables.resolve(file.getFileName()));
        Files.delete(file);
      }
    }
  }

  @Override
  public void close() {
    if (path == null) {
      return;
    }
    try (Stream<Path> files = Files.walk(path)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      System.err.println("pondtally: " + path + " could not be removed: " + e.getMessage());
    }
  }
}
