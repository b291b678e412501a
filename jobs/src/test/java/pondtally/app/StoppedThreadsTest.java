package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class StoppedThreadsTest {

  private final List<Throwable> told = new ArrayList<>();
  private final StoppedThreads threads = new StoppedThreads((thread, error) -> told.add(error));

  private void end(Throwable error) {
    threads.uncaughtException(Thread.currentThread(), error);
  }

  @Test
  void onlyWhatEndsThreadsOfAClosingSessionIsNotTold() {
    RuntimeException before = new IllegalStateException("before");
    RuntimeException after = new IllegalStateException("after");
    OutOfMemoryError memory = new OutOfMemoryError("while closing");
    end(before);
    end(new InterruptedException());
    try (StoppedThreads.Quiet quiet = StoppedThreads.quiet()) {
      end(new IllegalStateException("services are gone"));
      end(memory);
    }
    end(after);
    assertEquals(List.of(before, memory, after), told);
  }
}
