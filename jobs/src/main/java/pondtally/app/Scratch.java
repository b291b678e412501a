package pondtally.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Private folders for temporary files (mode 700), named after the machine and the process that made
 * them, so that a later run there can remove what one that was killed left behind.
 */
public final class Scratch {

  private static final String PREFIX = "pondtally-" + ThisMachine.mark() + "-";

  /**
   * A process that is just starting has not yet made a folder of its own within that of another.
   */
  private static final Duration STARTING = Duration.ofSeconds(10);

  private Scratch() {}

  /** A new folder in the system's place for temporary files, after those of dead runs are gone. */
  public static Path make() throws IOException {
    Path place = Path.of(System.getProperty("java.io.tmpdir"));
    Path made = in(place);
    sweep(place, made);
    return made;
  }

  /** A new folder in {@code place}; nothing else there is touched. */
  public static Path in(Path place) throws IOException {
    return Files.createTempDirectory(place, PREFIX + ProcessHandle.current().pid() + "-");
  }

  /** Removes a folder with everything in it; links are removed, not followed. */
  public static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }

  private static void sweep(Path place, Path made) throws IOException {
    for (Path folder : folders(place)) {
      try {
        if (isAbandoned(folder, made)) {
          delete(folder);
        }
      } catch (IOException e) {
        // Another run sweeps the same folder, or it may not be removed: no reason to stop.
        continue;
      }
    }
  }

  private static boolean isAbandoned(Path folder, Path made) throws IOException {
    boolean isOurs =
        Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)
            && Files.getOwner(folder).equals(Files.getOwner(made));
    Instant late = Instant.now().minus(STARTING);
    return isOurs
        && !isAtWork(folder)
        && Files.getLastModifiedTime(folder).toInstant().isBefore(late)
        && folders(folder).stream().noneMatch(Scratch::isAtWork);
  }

  private static boolean isAtWork(Path folder) {
    String pid = folder.getFileName().toString().split("-")[2];
    return ProcessHandle.of(Long.parseLong(pid)).isPresent();
  }

  private static List<Path> folders(Path place) throws IOException {
    try (Stream<Path> files = Files.list(place)) {
      return files
          .filter(file -> file.getFileName().toString().matches(PREFIX + "\\d{1,18}-\\d+"))
          .toList();
    }
  }
}
