package pondtally.reports.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class ScaleTest {

  private final Locale before = Locale.getDefault();

  @AfterEach
  void restore() {
    Locale.setDefault(before);
  }

  @Test
  void endsOnRoundNumbersFromZero() {
    Scale scale = Scale.upTo(0, 52.3, 5, "#,##0.###");
    assertEquals(0, scale.lower());
    assertEquals(60, scale.upper());
    assertEquals(20, scale.tick());
    assertEquals(0.2, Scale.upTo(0, 0.83, 5, "0%").tick(), 1e-12);
    assertTrue(Scale.upTo(0, 0, 5, "0").upper() > 0, "nothing at all still has an axis");
  }

  @Test
  void goesBelowZeroWhereItMust() {
    Scale scale = Scale.counts(-2.5, 28, 5);
    assertEquals(-10, scale.lower());
    assertEquals(30, scale.upper());
  }

  @Test
  void yearsAreNumberedAsCloselyAsTheyFit() {
    assertEquals(1, Scale.years(6.5, 0.1).tick());
    assertEquals(2, Scale.years(6.5, 0.2).tick());
    assertEquals(0.25, Scale.years(1, 0.1).tick());
  }

  @Test
  void countsHaveNoFractions() {
    assertEquals(1, Scale.counts(0, 2, 5).tick());
  }

  @Test
  void numbersAreTheSameInEveryLanguage() {
    Locale.setDefault(Locale.GERMANY);
    assertEquals("1,234.5", Scale.format("#,##0.###").format(1234.5));
    assertEquals("\u201310", Scale.format("0").format(-10));
  }
}
