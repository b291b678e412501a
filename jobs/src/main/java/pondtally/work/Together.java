package pondtally.work;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/** Runs what does not depend on each other at the same time; results in the order given. */
public final class Together {

  private Together() {}

  /**
   * All results.
   *
   * @param threads at once, at least 1
   * @throws RuntimeException what the first that failed has thrown
   */
  public static <T> List<T> run(int threads, List<Supplier<List<T>>> parts) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<List<T>>> running = new ArrayList<>();
      parts.forEach(part -> running.add(pool.submit(part::get)));
      List<T> results = new ArrayList<>();
      for (Future<List<T>> each : running) {
        results.addAll(each.get());
      }
      return results;
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new IllegalStateException("a piece of work failed", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the work was interrupted", e);
    } finally {
      end(pool);
    }
  }

  /** What goes on after a failure must not write into a folder that is being cleared. */
  private static void end(ExecutorService pool) {
    pool.shutdownNow();
    try {
      boolean hasEnded = false;
      while (!hasEnded) {
        hasEnded = pool.awaitTermination(1, TimeUnit.SECONDS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
