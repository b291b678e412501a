package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pondtally.stats.PresentValue;

/**
 * Build $2,000, upkeep $200 a year, 10 years, against $900 a year, by end-of-year factors of NIST
 * Handbook 135 (uniform present value 8.9826, 8.5302 and 7.0236 for 10 years at 2, 3 and 7 per
 * cent): present values, net benefit, ratio with all device cost below the line, and equivalent
 * annual cost.
 */
class BenefitYearsPublishedTest {

  private static final double CENT = 0.005;

  @ParameterizedTest
  @CsvSource({
    "0.02, 3796.52, 8084.33, 4287.81, 2.13, 422.65",
    "0.03, 3706.04, 7677.18, 3971.14, 2.07, 434.46",
    "0.07, 3404.72, 6321.22, 2916.51, 1.86, 484.76"
  })
  void aDeviceThatNeverFailsIsTheHandbooksExample(
      double rate, double cost, double benefit, double net, double ratio, double annual) {
    BenefitUnits units = new BenefitUnits(900, 2000, 200, 0, 0);
    // One visit every 365 days falls once into each of the ten years.
    BenefitYears ahead = BenefitYears.of(days -> 0, 365, 10, 0);
    double costUsd = ahead.costUsd(units, rate);
    double benefitUsd = units.damageUsd() * ahead.benefitFactor(rate);
    assertEquals(cost, costUsd, CENT);
    assertEquals(benefit, benefitUsd, CENT);
    assertEquals(net, benefitUsd - costUsd, CENT);
    assertEquals(ratio, benefitUsd / costUsd, CENT);
    assertEquals(annual, PresentValue.equivalentAnnual(costUsd, rate, 10), CENT);
  }
}
