package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static pondtally.stats.Published.assertCell;
import static pondtally.stats.Published.number;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Holm's adjustment against R's p.adjust. */
class HolmPublishedTest {
  @Test
  void benjaminiAndHochberg1995() {
    assertAdjusted(Published.rows("rates/holm_bh1995.csv"), 15);
  }

  @Test
  void unsortedWithTies() {
    assertAdjusted(Published.rows("rates/holm_small_with_ties.csv"), 5);
  }

  @Test
  void missingTestsAreNotCounted() {
    OptionalDouble none = OptionalDouble.empty();
    assertEquals(
        List.of(OptionalDouble.of(0.04), none, OptionalDouble.of(0.5)),
        Holm.adjust(List.of(OptionalDouble.of(0.02), none, OptionalDouble.of(0.5))));
    assertEquals(List.of(), Holm.adjust(List.of()));
    assertThrows(IllegalArgumentException.class, () -> Holm.adjust(Double.NaN));
  }

  private static void assertAdjusted(List<CSVRecord> rows, int tests) {
    assertEquals(tests, rows.size());
    double[] adjusted = Holm.adjust(rows.stream().mapToDouble(r -> number(r, "p")).toArray());
    for (int i = 0; i < tests; i++) {
      assertCell(rows.get(i), "holm", adjusted[i]);
    }
  }
}
