package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Path;

/** A full disk, whatever library was writing when it filled: no fault of the program. */
final class DiskFull {

  static final String SENTENCE =
      "The disk is full. Make room where the output goes and in the folder for temporary files (%s), then run again; nothing half-made was left in place of a report."
          .formatted(Path.of(System.getProperty("java.io.tmpdir")));

  private DiskFull() {}

  /** Whether an input or output error in the chain of causes says that no space is left. */
  static boolean isCauseOf(Throwable error) {
    Throwable cause = error;
    for (int depth = 0; cause != null && depth < 50; depth++) {
      String message = String.valueOf(cause.getMessage());
      if (cause instanceof IOException
          && (message.contains("No space left on device") || message.contains("Disk quota"))) {
        return true;
      }
      cause = cause.getCause();
    }
    return false;
  }
}
