package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import pondtally.check.UserError;

/**
 * A folder that appears whole or not at all: everything is written beside it, and renamed at the
 * end. A folder that holds an earlier run is replaced only when asked for.
 */
final class OutputFolder implements AutoCloseable {

  private static final String MARK = "run.json";

  private final Path target;
  private final Path previous;
  private final Path beside;
  private final StoppedOutput stopped;

  /** Writes into a folder. */
  interface Filling<T> {
    T into(Path folder) throws IOException;
  }

  private OutputFolder(Path target, Path previous, Path beside) {
    this.target = target;
    this.previous = previous;
    this.beside = beside;
    this.stopped = StoppedOutput.watch(target, beside);
  }

  /**
   * Prepares to write {@code folder}.
   *
   * @throws UserError with exit code 4 when the folder is there and may not be replaced, or cannot
   *     be written
   */
  static OutputFolder prepare(Path folder, boolean replace) {
    Path target = RealPlace.ofOutput(folder);
    Path parent = target.getParent();
    if (parent == null || target.getFileName() == null) {
      throw UserError.output("--out " + folder + " is not a folder that can be written.");
    }
    if (Files.exists(parent) && !Files.isDirectory(parent)) {
      throw UserError.output(
          "Cannot write %s: %s is a file. Give the name of a folder elsewhere."
              .formatted(folder, parent));
    }
    Path previous = parent.resolve(target.getFileName() + ".previous");
    try {
      refuse(folder, target, replace);
      Files.createDirectories(parent);
      Path beside = OtherRuns.begin(target, folder);
      try {
        restore(target, previous);
        refuse(folder, target, replace);
        refuseForeign(previous);
      } catch (IOException | RuntimeException e) {
        Folders.delete(beside);
        throw e;
      }
      return new OutputFolder(target, previous, beside);
    } catch (IOException e) {
      throw Unwritable.error(folder, e);
    }
  }

  /** A run that was killed between two renames leaves the old folder whole under another name. */
  private static void restore(Path target, Path previous) throws IOException {
    if (Files.notExists(target) && Files.exists(previous.resolve(MARK))) {
      Files.move(previous, target);
    }
  }

  private static void refuse(Path folder, Path target, boolean replace) throws IOException {
    if (Files.notExists(target)) {
      return;
    }
    if (!Files.isDirectory(target)) {
      throw UserError.output("--out " + folder + " is a file; give the name of a new folder.");
    }
    boolean ours = Files.isRegularFile(target.resolve(MARK));
    if (!ours && !isEmpty(target)) {
      throw UserError.output(
          "The folder "
              + folder
              + " is not empty and was not written by pondtally. Give the name of a new folder.");
    }
    if (ours && !replace) {
      throw UserError.output(
          "The folder "
              + folder
              + " holds an earlier report. Add --replace to overwrite it, or give a new name.");
    }
  }

  /**
   * The name under which an earlier report waits for its successor may be somebody's own folder.
   */
  private static void refuseForeign(Path previous) throws IOException {
    if (Files.exists(previous) && !Files.isRegularFile(previous.resolve(MARK))) {
      throw UserError.output(
          "%s is in the way: it was not written by pondtally, which needs that name for a moment. Move it, or give another name with --out."
              .formatted(previous));
    }
  }

  private static boolean isEmpty(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.findAny().isEmpty();
    }
  }

  /**
   * Has the folder filled and puts it in its place.
   *
   * @return what {@code filling} returns
   * @throws UserError with exit code 4 when it cannot be written; what was there is as it was
   */
  <T> T fill(Filling<T> filling) {
    try {
      T made = filling.into(beside);
      stopped.unlessStopped(this::commit);
      return made;
    } catch (IOException | RuntimeException e) {
      throw explained(e);
    }
  }

  private RuntimeException explained(Exception e) {
    if (e instanceof UserError user) {
      return user;
    }
    if (DiskFull.isCauseOf(e)) {
      return Unwritable.full(target, Unwritable.bytes(beside));
    }
    Optional<IOException> cause = Unwritable.causeOf(e, beside);
    if (cause.isPresent()) {
      return Unwritable.error(target, cause.get());
    }
    return e instanceof IOException fault ? Unwritable.error(target, fault) : (RuntimeException) e;
  }

  private void commit() throws IOException {
    discard(previous, "-old");
    boolean isThere = Files.exists(target);
    if (isThere) {
      Files.move(target, previous);
    }
    try {
      Files.move(beside, target);
    } catch (IOException e) {
      if (isThere) {
        putBack(e);
      }
      throw e;
    }
    discardQuietly();
  }

  private void putBack(IOException why) {
    try {
      Files.move(previous, target);
    } catch (IOException e) {
      // It stays whole under the other name, where the next run finds it.
      why.addSuppressed(e);
    }
  }

  /**
   * Removes an earlier report. It is renamed first: under its own name it is whole or absent, and
   * what is left of it the next run clears.
   */
  private void discard(Path report, String part) throws IOException {
    if (Files.exists(report)) {
      Path leftover = Beside.own(target, part);
      Files.move(report, leftover);
      Folders.delete(leftover);
    }
  }

  /** The new report is in its place: what is left of the old one is no reason to fail. */
  private void discardQuietly() {
    try {
      discard(previous, "-replaced");
    } catch (IOException e) {
      System.err.println(
          "pondtally: the report is written; what it replaced could not be removed: "
              + e.getMessage());
    }
  }

  /** Removes what was written and not put in its place. */
  @Override
  public void close() {
    stopped.end();
    try {
      Folders.delete(beside);
    } catch (IOException e) {
      throw Unwritable.error(beside, e);
    }
  }
}
