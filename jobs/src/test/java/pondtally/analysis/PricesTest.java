package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;
import pondtally.stats.PriceIndex;

class PricesTest {

  /** The built-in index: US consumer price index, series CUUR0000SA0, annual averages. */
  private static final Prices PRICES = new Prices(PriceIndex.builtIn(), 2025);

  @Test
  void dollarsMoveWithTheIndex() {
    // By the published index: 321.943 / 255.657, and 321.943 / 172.200.
    assertEquals(1259.28, PRICES.real(1000, 2019), 0.005);
    assertEquals(1869.59, PRICES.real(1000, 2000), 0.005);
    assertEquals(1000, PRICES.real(1000, 2025), 1e-12);
  }

  @Test
  void laterYearsTakeTheLastIndex() {
    assertEquals(1000, PRICES.real(1000, 2027), 1e-12);
  }

  @Test
  void dollarsBeforeTheIndexAreNotKnown() {
    assertNull(PRICES.real(1000, 1999));
  }

  @Test
  void anotherBaseYearIsAnExactRatio() {
    Prices other = new Prices(PriceIndex.builtIn(), 2024);
    assertEquals(321.943 / 313.689, PRICES.real(123.45, 2019) / other.real(123.45, 2019), 1e-14);
  }
}
