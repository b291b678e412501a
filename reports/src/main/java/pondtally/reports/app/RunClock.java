package pondtally.reports.app;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** How long each part of a run took. */
final class RunClock {

  private final Map<String, Long> millis = new LinkedHashMap<>();

  /** A part of a run that writes files. */
  @FunctionalInterface
  interface Part {
    void run() throws IOException;
  }

  <T> T time(String name, Supplier<T> part) {
    long start = System.nanoTime();
    T result = part.get();
    millis.put(name, (System.nanoTime() - start) / 1_000_000);
    return result;
  }

  void timed(String name, Part part) throws IOException {
    long start = System.nanoTime();
    part.run();
    millis.put(name, (System.nanoTime() - start) / 1_000_000);
  }

  /** Milliseconds by part, in the order in which they ran. */
  Map<String, Long> millis() {
    return millis;
  }

  /** All parts together, seconds. */
  double seconds() {
    return millis.values().stream().mapToLong(Long::longValue).sum() / 1000.0;
  }
}
