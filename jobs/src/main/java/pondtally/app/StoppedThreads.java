package pondtally.app;

import java.lang.Thread.UncaughtExceptionHandler;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Threads of a session that is closed while they are at work: they end as they are told to, or for
 * want of what is gone already, and no page about it reaches the user. Whatever else ends a thread
 * is told as before. Only threads are silenced: what the program itself says meanwhile is printed.
 */
record StoppedThreads(UncaughtExceptionHandler others) implements UncaughtExceptionHandler {

  /** Sessions that are being closed. */
  private static final AtomicInteger CLOSING = new AtomicInteger();

  /** The time while a session is being closed. */
  static final class Quiet implements AutoCloseable {

    private Quiet() {
      CLOSING.incrementAndGet();
    }

    @Override
    public void close() {
      CLOSING.decrementAndGet();
    }
  }

  static Quiet quiet() {
    return new Quiet();
  }

  static void endQuietly() {
    UncaughtExceptionHandler others = Thread.getDefaultUncaughtExceptionHandler();
    if (!(others instanceof StoppedThreads)) {
      Thread.setDefaultUncaughtExceptionHandler(new StoppedThreads(others));
    }
  }

  @Override
  public void uncaughtException(Thread thread, Throwable error) {
    boolean isOfClosing = CLOSING.get() > 0 && !(error instanceof VirtualMachineError);
    if (error instanceof InterruptedException || isOfClosing) {
      return;
    }
    if (others != null) {
      others.uncaughtException(thread, error);
      return;
    }
    System.err.println("Exception in thread \"" + thread.getName() + "\"");
    error.printStackTrace();
  }
}
