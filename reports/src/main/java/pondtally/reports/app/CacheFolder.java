package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * The user's cache folder, where a later run finds what an earlier one prepared. {@code
 * PONDTALLY_CACHE} names another folder; {@code off} is for none.
 */
final class CacheFolder {

  private static final String OFF = "off";
  private static final String NAME = "pondtally";

  private CacheFolder() {}

  /** The folder, made if need be; empty where there is none that can be written. */
  static Optional<Path> open(Map<String, String> environment, String home) {
    Path folder = path(environment, home);
    if (folder == null) {
      return Optional.empty();
    }
    try {
      Files.createDirectories(folder);
      return Files.isWritable(folder) ? Optional.of(folder) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Path path(Map<String, String> environment, String home) {
    String own = environment.getOrDefault("PONDTALLY_CACHE", "");
    if (!own.isBlank()) {
      return own.equals(OFF) ? null : Path.of(own);
    }
    for (String name : new String[] {"XDG_CACHE_HOME", "LOCALAPPDATA"}) {
      String value = environment.getOrDefault(name, "");
      if (!value.isBlank() && Path.of(value).isAbsolute()) {
        return Path.of(value, NAME);
      }
    }
    return home == null ? null : Path.of(home, ".cache", NAME);
  }
}
