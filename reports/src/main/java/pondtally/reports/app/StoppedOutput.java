package pondtally.reports.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * What is done when somebody stops a run (Ctrl-C, or the system) while it writes: what is half-made
 * is removed, and one line says what became of the report. A folder that is being renamed is waited
 * for.
 */
final class StoppedOutput extends Thread {

  private static final int TRIES = 80;
  private static final int LOOKS = 4;
  private static final long PAUSE_MS = 25;

  private final Path target;
  private final Path beside;
  private boolean isOver;

  /** Something that may fail as writing does. */
  interface Step {
    void run() throws IOException;
  }

  private StoppedOutput(Path target, Path beside) {
    super("pondtally-stopped");
    this.target = target;
    this.beside = beside;
  }

  static StoppedOutput watch(Path target, Path beside) {
    StoppedOutput stopped = new StoppedOutput(target, beside);
    Runtime.getRuntime().addShutdownHook(stopped);
    return stopped;
  }

  /** Puts the output in its place, unless the run is being stopped already. */
  synchronized void unlessStopped(Step step) throws IOException {
    if (isOver) {
      throw new IOException("The run was stopped");
    }
    step.run();
    isOver = true;
  }

  /** The output is whole, or given up. */
  void end() {
    try {
      Runtime.getRuntime().removeShutdownHook(this);
    } catch (IllegalStateException e) {
      // The run is being stopped: the hook is at work already and cannot be taken back.
      return;
    }
  }

  @Override
  public synchronized void run() {
    if (isOver) {
      return;
    }
    isOver = true;
    System.err.println(
        Files.exists(target)
            ? "pondtally: stopped. %s is as it was.".formatted(target)
            : "pondtally: stopped. Nothing was written.");
    remove();
  }

  /**
   * The run goes on writing for the moment that it has left: it does not find the folder under
   * another name, and what it begins anew is seen at the next look.
   */
  private void remove() {
    Path leftover = Beside.own(target, "-old");
    int absent = 0;
    for (int i = 0; i < TRIES && absent < LOOKS; i++) {
      absent = Files.exists(beside) || Files.exists(leftover) ? 0 : absent + 1;
      removeOnce(leftover);
      pause();
    }
  }

  private void removeOnce(Path leftover) {
    try {
      if (Files.exists(beside) && Files.notExists(leftover)) {
        Files.move(beside, leftover);
      }
      Folders.delete(leftover);
      Folders.delete(beside);
    } catch (IOException | UncheckedIOException e) {
      // What is open, or was written meanwhile, is tried again; the next run removes the rest.
      return;
    }
  }

  private static void pause() {
    try {
      Thread.sleep(PAUSE_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
