package pondtally.reports.app;

import java.io.IOException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;

/** How long each part of a run took, and all of it; parts may run beside each other. */
final class RunClock {

  private static final long NOT_YET = Long.MIN_VALUE;

  private final Map<String, Long> millis = Collections.synchronizedMap(new LinkedHashMap<>());
  private final AtomicLong first = new AtomicLong(NOT_YET);
  private final AtomicLong last = new AtomicLong(NOT_YET);

  /** A part of a run that writes files. */
  @FunctionalInterface
  interface Part {
    void run() throws IOException;
  }

  <T> T time(String name, Supplier<T> part) {
    long start = begun();
    T result = part.get();
    ended(name, start);
    return result;
  }

  void timed(String name, Part part) throws IOException {
    long start = begun();
    part.run();
    ended(name, start);
  }

  private long begun() {
    long now = now();
    first.compareAndSet(NOT_YET, now);
    return now;
  }

  private void ended(String name, long start) {
    long now = now();
    millis.put(name, now - start);
    last.accumulateAndGet(now, Math::max);
  }

  private static long now() {
    return System.nanoTime() / 1_000_000;
  }

  /** Milliseconds by part, in the order in which they ended. */
  Map<String, Long> millis() {
    return millis;
  }

  /** From the beginning of the first part to the end of the last, seconds. */
  double seconds() {
    return millis.isEmpty() ? 0 : (last.get() - first.get()) / 1000.0;
  }
}
