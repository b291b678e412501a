package pondtally.app;

import java.lang.Thread.UncaughtExceptionHandler;

/**
 * Threads of a session that is closed while they fetch something: they end as they are told to, and
 * no page about it reaches the user. Whatever else ends a thread is told as before.
 */
record StoppedThreads(UncaughtExceptionHandler others) implements UncaughtExceptionHandler {

  static void endQuietly() {
    UncaughtExceptionHandler others = Thread.getDefaultUncaughtExceptionHandler();
    if (!(others instanceof StoppedThreads)) {
      Thread.setDefaultUncaughtExceptionHandler(new StoppedThreads(others));
    }
  }

  @Override
  public void uncaughtException(Thread thread, Throwable error) {
    if (error instanceof InterruptedException) {
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
