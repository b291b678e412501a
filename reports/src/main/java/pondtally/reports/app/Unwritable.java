package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import pondtally.check.FileFault;
import pondtally.check.UserError;

/** Says why an output cannot be written, and what to do. */
final class Unwritable {

  private static final int MOST_CAUSES = 50;

  /** What systems say of a write that fails; such an exception names no file. */
  private static final Set<String> DISK_FAULTS =
      Set.of("Input/output error", "Read-only file system", "Stale file handle", "File too large");

  private static final long KILO = 1000;
  private static final long MEGA = 1_000_000;

  private Unwritable() {}

  /** An output that fails for a reason that the file system gives. */
  static UserError error(Path path, IOException e) {
    if (DiskFull.isCauseOf(e)) {
      return full(path, 0);
    }
    return UserError.output(
        "Cannot write %s: %s. %s".formatted(path, reason(path, e), advice(path)));
  }

  /**
   * The fault of the disk that other exceptions, such as those of a task, are wrapped around; empty
   * where a partner's file was being read, or something else went wrong.
   *
   * @param folder what is written
   */
  static Optional<IOException> causeOf(Throwable error, Path folder) {
    Throwable cause = error;
    IOException found = null;
    for (int depth = 0; cause != null && depth < MOST_CAUSES; depth++) {
      if (cause instanceof FileFault) {
        return Optional.empty();
      }
      if (cause instanceof IOException fault && isOfDisk(fault, folder)) {
        found = fault;
      }
      cause = cause.getCause();
    }
    return Optional.ofNullable(found);
  }

  private static boolean isOfDisk(IOException fault, Path folder) {
    return fault instanceof FileSystemException named
        ? String.valueOf(named.getFile()).startsWith(folder.toString())
        : DISK_FAULTS.contains(String.valueOf(fault.getMessage()));
  }

  /**
   * A disk that filled.
   *
   * @param written bytes that were written before
   */
  static UserError full(Path path, long written) {
    long earlier = bytes(path);
    String need =
        earlier > written
            ? "the report that is there takes %s".formatted(size(earlier))
            : "more than %s are needed".formatted(size(Math.max(written, 1)));
    Path temporary = Path.of(System.getProperty("java.io.tmpdir"));
    return UserError.output(
        "Cannot write %s: the disk is full. Free there: %s (%s); free in the folder for temporary files, %s: %s. %s"
            .formatted(path, free(path), need, temporary, free(temporary), advice(path)));
  }

  private static String reason(Path path, IOException e) {
    if (e instanceof FileAlreadyExistsException) {
      return "it already exists";
    }
    if (e instanceof AccessDeniedException) {
      return "you have no permission to write there, or a file in it is open in another program";
    }
    if (e instanceof NoSuchFileException) {
      return "a folder was removed meanwhile";
    }
    if (e instanceof FileSystemException refused && refused.getReason() != null) {
      return sentence(refused.getReason());
    }
    return sentence(String.valueOf(e.getMessage()).replace(path + ": ", ""));
  }

  /** The file system's own words within a sentence of ours. */
  private static String sentence(String words) {
    return words.equals("Read-only file system")
        ? "the disk is read-only"
        : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }

  private static String advice(Path path) {
    String old = Files.exists(path) ? "What is there is as it was. " : "Nothing was written. ";
    return old + "Make the place writable, or give another one, and run again.";
  }

  private static String free(Path path) {
    Path there = path.toAbsolutePath();
    while (there != null && Files.notExists(there)) {
      there = there.getParent();
    }
    try {
      return there == null ? "unknown" : size(Files.getFileStore(there).getUsableSpace());
    } catch (IOException e) {
      return "unknown";
    }
  }

  /** Bytes of all files in a folder; what cannot be looked at counts as none. */
  static long bytes(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.mapToLong(file -> file.toFile().isFile() ? file.toFile().length() : 0).sum();
    } catch (IOException | RuntimeException e) {
      return 0;
    }
  }

  private static String size(long bytes) {
    if (bytes < KILO) {
      return bytes + " bytes";
    }
    return bytes < MEGA
        ? String.format(Locale.ROOT, "%.0f kB", (double) bytes / KILO)
        : String.format(Locale.ROOT, "%.1f MB", (double) bytes / MEGA);
  }
}
