package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static pondtally.stats.Published.assertCell;
import static pondtally.stats.Published.count;
import static pondtally.stats.Published.number;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Limits of proportions against R's prop.test and binom.test and printed tables. */
class WilsonPublishedTest {
  @Test
  void wilsonAndClopperPearson() {
    List<CSVRecord> rows = Published.rows("rates/wilson.csv");
    assertEquals(8, rows.size());
    for (CSVRecord row : rows) {
      long x = count(row, "x");
      long n = count(row, "n");
      Limits wilson = Wilson.limits(x, n, number(row, "conf"));
      assertCell(row, "wilson_lower", wilson.lower());
      assertCell(row, "wilson_upper", wilson.upper());
      Limits exact = ClopperPearson.limits(x, n, number(row, "conf"));
      assertCell(row, "clopper_pearson_lower", exact.lower());
      assertCell(row, "clopper_pearson_upper", exact.upper());
    }
  }

  /** Newcombe 1998, table I, method 3; typed from memory. */
  @Test
  void printedByNewcombe1998() {
    assertPrinted(0.2553, 0.3662, Wilson.limits(81, 263, 0.95));
    assertPrinted(0.0624, 0.1605, Wilson.limits(15, 148, 0.95));
    assertPrinted(0.0000, 0.1611, Wilson.limits(0, 20, 0.95));
    assertPrinted(0.0061, 0.1718, Wilson.limits(1, 29, 0.95));
  }

  /** One of a million: 1 − (1 − p)^n is 0.025, so p has a closed form. */
  @Test
  void verySmallSharesKeepTheirDigits() {
    double exact = -Math.expm1(Math.log(0.975) / 1e6);
    double lower = ClopperPearson.limits(1, 1_000_000, 0.95).lower().getAsDouble();
    assertEquals(exact, lower, 1e-9 * exact);
    double upper = ClopperPearson.limits(999_999, 1_000_000, 0.95).upper().getAsDouble();
    assertEquals(1 - exact, upper, 1e-14);
  }

  @Test
  void nothingOfNothing() {
    assertEquals(Limits.none(), Wilson.limits(0, 0, 0.95));
    assertEquals(Limits.none(), ClopperPearson.limits(0, 0, 0.95));
    assertThrows(IllegalArgumentException.class, () -> Wilson.limits(2, 1, 0.95));
    assertThrows(IllegalArgumentException.class, () -> ClopperPearson.limits(-1, 1, 0.95));
  }

  private static void assertPrinted(double lower, double upper, Limits limits) {
    assertEquals(lower, limits.lower().getAsDouble(), 5e-5);
    assertEquals(upper, limits.upper().getAsDouble(), 5e-5);
  }
}
