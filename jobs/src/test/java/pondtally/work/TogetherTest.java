package pondtally.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

class TogetherTest {

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void resultsStandInTheOrderGivenWhicheverComesFirst() {
    CountDownLatch second = new CountDownLatch(1);
    List<Supplier<List<String>>> work =
        List.of(
            () -> {
              await(second);
              return List.of("first", "and more");
            },
            () -> {
              second.countDown();
              return List.of("second");
            });
    assertEquals(List.of("first", "and more", "second"), Together.run(2, work));
  }

  @Test
  void aFailureIsThrownOnceEverythingHasEnded() {
    CountDownLatch begun = new CountDownLatch(1);
    AtomicBoolean hasEnded = new AtomicBoolean();
    List<Supplier<List<String>>> work =
        List.of(
            () -> {
              await(begun);
              throw new IllegalArgumentException("no room");
            },
            () -> {
              begun.countDown();
              long end = System.nanoTime() + 200_000_000;
              while (System.nanoTime() < end) {
                Thread.onSpinWait();
              }
              hasEnded.set(true);
              return List.of("late");
            });
    assertEquals(
        "no room",
        assertThrows(IllegalArgumentException.class, () -> Together.run(2, work)).getMessage());
    assertTrue(hasEnded.get());
  }
}
