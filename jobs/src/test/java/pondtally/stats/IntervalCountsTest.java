package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ages keep every digit, whether they fit a short number or not. */
class IntervalCountsTest {

  private static final double NEVER = Double.POSITIVE_INFINITY;

  private static List<IntervalCounts.Row> rows(int count) {
    List<IntervalCounts.Row> rows = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      rows.add(new IntervalCounts.Row(0, i / 2.0, i % 3 == 0 ? NEVER : i, i));
    }
    return rows;
  }

  private static IntervalCounts counts(List<IntervalCounts.Row> rows) {
    IntervalCounts counts = IntervalCounts.empty();
    rows.forEach(row -> counts.add(row.entryDays(), row.leftDays(), row.rightDays(), row.count()));
    return counts;
  }

  @Test
  void halfDaysComeBackInOrder() {
    List<IntervalCounts.Row> rows = rows(5_000);
    assertEquals(rows, counts(rows).rows());
    assertEquals(5_000, counts(rows).distinct());
  }

  /** A third of a day and 100,000,001 days lose digits as short numbers. */
  @Test
  void agesOfManyDigitsAreKeptToTheLast() {
    for (double age : new double[] {1 / 3.0, 100_000_001, 1e300}) {
      IntervalCounts.Row longer = new IntervalCounts.Row(age / 4, age / 2, age, 7);
      List<IntervalCounts.Row> rows = rows(100);
      IntervalCounts counts = counts(rows);
      counts.add(longer.entryDays(), longer.leftDays(), longer.rightDays(), 7);
      for (int i = 101; i <= 300; i++) {
        counts.add(0, i / 2.0, i, 1);
      }
      assertEquals(301, counts.distinct(), "age " + age);
      assertEquals(1, counts.rows().stream().filter(longer::equals).count(), "age " + age);
      IntervalCounts merged = counts(rows).merge(counts).merge(counts);
      assertEquals(
          14,
          merged.rows().stream()
              .filter(row -> row.rightDays() == age)
              .mapToLong(IntervalCounts.Row::count)
              .sum());
    }
  }

  @Test
  void moreLivesThanCanBeCountedAreRefused() {
    IntervalCounts counts = IntervalCounts.empty().add(0, 1, 2, Integer.MAX_VALUE);
    assertThrows(ArithmeticException.class, () -> counts.add(0, 1, 2, 1));
  }
}
