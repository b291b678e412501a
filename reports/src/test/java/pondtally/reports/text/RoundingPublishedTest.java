package pondtally.reports.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The two worked examples that the Particle Data Group gives for its rounding rule (Review of
 * Particle Physics, Introduction, "Rounding"; from memory): 0.827 ± 0.119 is printed 0.83 ± 0.12,
 * 0.827 ± 0.367 is printed 0.8 ± 0.4. The other rows are the rule's own stated borders.
 */
class RoundingPublishedTest {

  @ParameterizedTest
  @CsvSource({
    "0.827, 0.119, 0.83",
    "0.827, 0.367, 0.8",
    "0.827, 0.354, 0.83",
    "0.827, 0.355, 0.8",
    "0.827, 0.949, 0.8",
    "0.827, 0.951, 0.8",
    "8270, 1190, 8300",
    "8270, 3670, 8000"
  })
  void roundsAsTheRuleSays(double value, double error, String printed) {
    int decimals = Rounding.decimals(value, value - error, value + error, 9);
    assertEquals(printed, Rounding.to(value, decimals).toPlainString());
  }
}
