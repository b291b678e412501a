package pondtally.reports.fault;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Set;

/** Counts the write calls below one folder, and lets one of them fail. */
public final class WriteFaults {

  /** How writing fails. */
  public enum Kind {
    /** One call fails, of whatever kind, as on a bad cable; the next one works. */
    ONCE("Input/output error"),
    /** From one call on nothing more can be written; removing and renaming work. */
    DISK_FULL("No space left on device");

    private final String message;

    Kind(String message) {
      this.message = message;
    }
  }

  private static final Set<String> TAKES_ROOM = Set.of("open", "write", "folder");

  private static String root;
  private static Kind kind = Kind.ONCE;
  private static long failAt;
  private static long calls;
  private static String failed;

  private WriteFaults() {}

  /**
   * Starts to count anew.
   *
   * @param folder calls below it count
   * @param wanted how writing fails
   * @param call number of the first call that fails, from 1; 0: none does
   */
  public static synchronized void arm(Path folder, Kind wanted, long call) {
    root = folder.toString() + "/";
    kind = wanted;
    failAt = call;
    calls = 0;
    failed = null;
  }

  /** Ends counting and failing. */
  public static synchronized void disarm() {
    root = null;
  }

  /** Calls since the start. */
  public static synchronized long calls() {
    return calls;
  }

  /** What the first failing call was to do; null where none failed. */
  public static synchronized String failed() {
    return failed;
  }

  static synchronized boolean fails(String what, Path path) {
    if (root == null || !path.toString().startsWith(root)) {
      return false;
    }
    calls++;
    boolean isFirst = calls == failAt && (kind == Kind.ONCE || TAKES_ROOM.contains(what));
    boolean isLater =
        kind == Kind.DISK_FULL && failAt > 0 && calls > failAt && TAKES_ROOM.contains(what);
    if ((isFirst || isLater) && failed == null) {
      failed = what + " " + path.toString().substring(root.length());
    }
    return isFirst || isLater;
  }

  static void call(String what, Path path) throws IOException {
    if (fails(what, path)) {
      throw new FileSystemException(path.toString(), null, kind.message);
    }
  }

  /** What a failing write says: it does not know the file. */
  static IOException ofWrite() {
    return new IOException(kind.message);
  }
}
