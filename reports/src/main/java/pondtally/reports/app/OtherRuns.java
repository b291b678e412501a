package pondtally.reports.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.List;
import pondtally.check.UserError;

/**
 * Other runs that write, or wrote, the same output. What runs of this machine left is removed. Of a
 * run on another machine nobody here can tell whether it is at work: what it writes is left alone
 * for a week.
 */
final class OtherRuns {

  private static final Duration LONG_AGO = Duration.ofDays(7);

  private OtherRuns() {}

  /** Removes what runs of this machine that were stopped left beside an output. */
  static void clear(Path target) throws IOException {
    for (Beside left : Beside.of(target)) {
      if (left.isLeftHere()) {
        Folders.delete(left.path());
      }
    }
  }

  /**
   * Makes the folder beside {@code target} that this run writes into.
   *
   * @param shown what messages call the output
   * @throws UserError with exit code 4 where another run is writing the same output
   */
  static Path begin(Path target, Path shown) throws IOException {
    clear(target);
    Path own = Files.createDirectory(Beside.own(target));
    try {
      for (Beside other : Beside.of(target)) {
        if (!other.path().equals(own)) {
          judge(other, shown, Files.getLastModifiedTime(own));
        }
      }
      return own;
    } catch (IOException | RuntimeException e) {
      Folders.delete(own);
      throw e;
    }
  }

  private static void judge(Beside other, Path shown, FileTime now) throws IOException {
    if (other.isOfThisMachine()) {
      if (other.isOutput() && !other.isLeftHere()) {
        throw atWorkHere(other, shown);
      }
      return;
    }
    Duration age = age(other, now);
    if (age.compareTo(LONG_AGO) > 0) {
      System.err.printf(
          "pondtally: %s was left by a run on the machine %s, which wrote last %s; it is removed.%n",
          other.path(), other.host(), ago(age));
      Folders.deleteQuietly(other.path());
    } else if (other.isOutput()) {
      throw onAnotherMachine(other, shown, age);
    }
  }

  /** None while it changes under our eyes, or goes. */
  private static Duration age(Beside other, FileTime now) {
    try {
      return Duration.between(other.lastChange().toInstant(), now.toInstant());
    } catch (IOException | UncheckedIOException e) {
      return Duration.ZERO;
    }
  }

  private static UserError atWorkHere(Beside other, Path shown) {
    return UserError.output(
        "Another run (process %s) is writing %s. Wait for its end, or give another name. If no such run is at work, remove %s."
            .formatted(other.process(), shown, other.path()));
  }

  private static UserError onAnotherMachine(Beside other, Path shown, Duration age) {
    return UserError.output(
        "A run on the machine %s is writing %s, or was stopped there; it wrote last %s. Wait for its end, or give another name. If no run is at work on %s, remove %s."
            .formatted(other.host(), shown, ago(age), other.host(), other.path()));
  }

  /** An age in the largest unit of which it has two or more. */
  static String ago(Duration age) {
    List<String> units = List.of("days", "hours", "minutes");
    List<Long> counts = List.of(age.toDays(), age.toHours(), age.toMinutes());
    for (int i = 0; i < units.size(); i++) {
      if (counts.get(i) >= 2) {
        return counts.get(i) + " " + units.get(i) + " ago";
      }
    }
    return "within the last two minutes";
  }
}
