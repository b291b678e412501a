package pondtally.reports.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;

/**
 * What the second Java machine knows of the one that started it. When that one is killed, nobody
 * waits for the second any more and nobody clears up after it: it stops as if it had been asked to,
 * and takes its temporary files with it.
 */
final class FirstMachine {

  private static final String PROCESS = "pondtally.first";
  private static final String SCRATCH = "pondtally.scratch";
  private static final int TRIES = 40;
  private static final int LOOKS = 4;
  private static final long PAUSE_MS = 50;

  private FirstMachine() {}

  /** Java options that tell the second machine. */
  static List<String> flags(Path scratch) {
    return List.of(
        "-D%s=%s".formatted(PROCESS, ProcessHandle.current().pid()),
        "-D%s=%s".formatted(SCRATCH, scratch));
  }

  /** Ends this machine when the first one is gone; nothing where there is none. */
  static void watch() {
    Long process = Long.getLong(PROCESS);
    if (process != null) {
      CompletableFuture<?> end =
          ProcessHandle.of(process)
              .map(ProcessHandle::onExit)
              .orElseGet(() -> CompletableFuture.completedFuture(null));
      end.thenRun(FirstMachine::stop);
    }
  }

  private static void stop() {
    Path scratch = Path.of(System.getProperty(SCRATCH));
    Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(scratch)));
    System.exit(Main.STOPPED);
  }

  /** What is at work still writes there for a moment. */
  private static void remove(Path scratch) {
    int absent = 0;
    for (int i = 0; i < TRIES && absent < LOOKS; i++) {
      absent = Files.exists(scratch) ? 0 : absent + 1;
      try {
        Folders.delete(scratch);
        Thread.sleep(PAUSE_MS);
      } catch (IOException | UncheckedIOException e) {
        // Tried again; what is left in the end the next run removes.
        continue;
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return;
      }
    }
  }
}
