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
    Path beside = parent.resolve(prefix(target) + ProcessHandle.current().pid());
    try {
      restore(target, previous);
      refuse(folder, target, replace);
      refuseForeign(previous);
      Files.createDirectories(parent);
      clearLeftovers(parent, prefix(target));
      Files.createDirectory(beside);
      refuseAnother(folder, target, beside);
    } catch (IOException e) {
      throw Unwritable.error(folder, e);
    }
    return new OutputFolder(target, previous, beside);
  }

  /** A run that was killed between two renames leaves the old folder whole under another name. */
  private static void restore(Path target, Path previous) throws IOException {
    if (Files.notExists(target) && Files.exists(previous.resolve(MARK))) {
      Files.move(previous, target);
    }
  }

  /**
   * Removes what runs that were stopped left beside the folder; what a run at work writes is left
   * alone.
   */
  static void clearLeftovers(Path parent, String prefix) throws IOException {
    try (Stream<Path> files = Files.list(parent)) {
      for (Path file : files.toList()) {
        String name = file.getFileName().toString();
        if (name.startsWith(prefix) && isLeftover(name.substring(prefix.length()))) {
          Folders.delete(file);
        }
      }
    }
  }

  /** Whether the rest of a name is the number of a run that is over; anything else is not ours. */
  private static boolean isLeftover(String ending) {
    String pid = ending.replaceFirst("-(old|replaced)$", "");
    return isNumber(pid) && !isAtWork(pid);
  }

  private static boolean isNumber(String pid) {
    return pid.matches("\\d{1,18}");
  }

  private static boolean isAtWork(String pid) {
    return isNumber(pid)
        && Long.parseLong(pid) != ProcessHandle.current().pid()
        && ProcessHandle.of(Long.parseLong(pid)).isPresent();
  }

  /** Two runs at once would each replace what the other wrote: the later one is refused. */
  private static void refuseAnother(Path folder, Path target, Path beside) throws IOException {
    String prefix = prefix(target);
    try (Stream<Path> files = Files.list(target.getParent())) {
      for (Path file : files.toList()) {
        String name = file.getFileName().toString();
        if (name.startsWith(prefix) && isAtWork(name.substring(prefix.length()))) {
          Folders.delete(beside);
          throw UserError.output(
              "Another run (process %s) is writing %s. Wait for its end, or give another name. If no such run is at work, remove %s."
                  .formatted(name.substring(prefix.length()), folder, file));
        }
      }
    }
  }

  static String prefix(Path target) {
    return "." + target.getFileName() + ".writing-";
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
    discard(previous, "old");
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
  private void discard(Path report, String name) throws IOException {
    if (Files.exists(report)) {
      Path leftover = target.resolveSibling(beside.getFileName() + "-" + name);
      Files.move(report, leftover);
      Folders.delete(leftover);
    }
  }

  /** The new report is in its place: what is left of the old one is no reason to fail. */
  private void discardQuietly() {
    try {
      discard(previous, "replaced");
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
