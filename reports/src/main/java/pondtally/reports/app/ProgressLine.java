package pondtally.reports.app;

import java.io.PrintStream;
import java.util.Locale;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import pondtally.stage.Progress;
import pondtally.stage.Progress.Step;

/**
 * One line on a terminal that says what a run is doing and how many rows it has read; it is wiped
 * when the run ends. Where the output goes elsewhere nothing is printed.
 */
final class ProgressLine implements AutoCloseable {

  private static final long FIRST_AFTER_MILLIS = 1500;
  private static final long EVERY_MILLIS = 500;
  private static final String WIPE = "\r\u001b[K";

  private final Thread printer;

  private ProgressLine(Thread printer) {
    this.printer = printer;
  }

  /** Starts the line if a person watches. */
  static ProgressLine start() {
    if (System.console() == null) {
      return new ProgressLine(null);
    }
    return start(System.err, Progress::step, Progress::rowsRead, FIRST_AFTER_MILLIS, EVERY_MILLIS);
  }

  static ProgressLine start(
      PrintStream terminal,
      Supplier<Step> step,
      LongSupplier rows,
      long firstAfterMillis,
      long everyMillis) {
    long start = System.nanoTime();
    Thread printer =
        new Thread(
            () -> {
              try {
                Thread.sleep(firstAfterMillis);
                while (true) {
                  double seconds = (System.nanoTime() - start) / 1e9;
                  terminal.print(WIPE + text(step.get(), rows.getAsLong(), seconds));
                  terminal.flush();
                  Thread.sleep(everyMillis);
                }
              } catch (InterruptedException e) {
                terminal.print(WIPE);
                terminal.flush();
              }
            },
            "progress");
    printer.setDaemon(true);
    printer.start();
    return new ProgressLine(printer);
  }

  /** What stands on the line. */
  static String text(Step step, long rows, double seconds) {
    String what =
        switch (step) {
          case STARTING -> "Starting";
          case READING -> "Reading files";
          case COUNTING -> "Checking rows and counting";
          case ANALYSING -> "Computing tables";
          case WRITING -> "Writing";
        };
    String read =
        rows == 0
            ? ""
            : step == Step.READING
                ? String.format(
                    Locale.ROOT, ": %,d rows, %,d a second", rows, Math.round(rows / seconds))
                : String.format(Locale.ROOT, ": %,d rows", rows);
    return what + read + String.format(Locale.ROOT, " (%d s)", Math.round(seconds));
  }

  /** Wipes the line. */
  @Override
  public void close() {
    if (printer == null) {
      return;
    }
    printer.interrupt();
    try {
      printer.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
