package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * The built-in consumer price index (Bureau of Labor Statistics, CUUR0000SA0, annual averages; read
 * in second-hand copies that agree).
 */
class PriceIndexPublishedTest {
  private final PriceIndex index = PriceIndex.builtIn();

  @Test
  void publishedAnnualAverages() {
    assertEquals(172.200, index.index(2000));
    assertEquals(215.303, index.index(2008));
    assertEquals(214.537, index.index(2009));
    assertEquals(258.811, index.index(2020));
    assertEquals(313.689, index.index(2024));
    assertEquals(321.943, index.index(2025));
    assertEquals(2000, index.firstYear());
    assertEquals(2025, index.lastYear());
  }

  @Test
  void dollarsOfOneYearInAnother() {
    assertEquals(1495.30, 1000 * index.factor(2008, 2025), 0.005);
    assertEquals(1606.26, 1000 * index.factor(2005, 2024), 0.005);
    assertEquals(1259.28, 1000 * index.factor(2019, 2025), 0.005);
    assertEquals(1869.59, 1000 * index.factor(2000, 2025), 0.005);
    assertEquals(1, index.factor(2017, 2017));
  }

  @Test
  void elevenMonthsAreProvisional() {
    assertTrue(index.isProvisional(2025));
    assertFalse(index.isProvisional(2024));
    assertEquals(OptionalInt.of(2024), index.lastFullYear(2030));
    assertEquals(OptionalInt.of(2011), index.lastFullYear(2011));
    assertEquals(OptionalInt.empty(), index.lastFullYear(1999));
  }

  @Test
  void yearOutsideTheTableIsNamed() {
    PriceIndex.YearOutsideTable error =
        assertThrows(PriceIndex.YearOutsideTable.class, () -> index.factor(1999, 2024));
    assertEquals(
        "the price index has no value for 1999; it covers 2000 to 2025", error.getMessage());
    assertEquals(1999, error.year());
    assertThrows(PriceIndex.YearOutsideTable.class, () -> index.factor(2024, 2026));
    assertThrows(PriceIndex.YearOutsideTable.class, () -> index.isProvisional(2026));
    assertThrows(PriceIndex.YearOutsideTable.class, () -> index.nearestYear(1999));
    assertEquals(2025, index.nearestYear(2027));
    assertEquals(2003, index.nearestYear(2003));
  }

  @Test
  void tableOfOnesOwn() {
    TreeMap<Integer, Double> table = new TreeMap<>();
    table.put(2020, 100.0);
    table.put(2021, 125.0);
    assertEquals(1.25, PriceIndex.of(table).factor(2020, 2021));
    assertEquals(OptionalInt.of(2021), PriceIndex.of(table).lastFullYear(2025));
    table.put(2023, 130.0);
    assertThrows(IllegalArgumentException.class, () -> PriceIndex.of(table));
    table.put(2022, -1.0);
    assertThrows(IllegalArgumentException.class, () -> PriceIndex.of(table));
    TreeMap<Integer, Double> none = new TreeMap<>();
    assertThrows(IllegalArgumentException.class, () -> PriceIndex.of(none));
  }
}
