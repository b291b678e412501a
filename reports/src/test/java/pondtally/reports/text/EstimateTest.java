package pondtally.reports.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class EstimateTest {

  private static Estimate estimate(double value, double lower, double upper) {
    return new Estimate(value, OptionalDouble.of(lower), OptionalDouble.of(upper));
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  @Test
  void sharesReadAsPeopleCount() {
    Estimate share = estimate(0.8421, 0.7163, 0.9204);
    assertEquals("about 84 of 100 (likely 72 to 92)", plain(share.ofHundred()));
    assertEquals("72 to 92 of 100", plain(share.limitsOfHundred()));
    assertEquals(
        "more than 99 of 100 (likely 97 to 100)", plain(estimate(0.997, 0.97, 0.9996).ofHundred()));
  }

  @Test
  void digitsFollowTheLimits() {
    assertEquals("$4,300 (likely $3,100 to $6,200)", plain(estimate(4312, 3105, 6240).dollars()));
    assertEquals("$4,312 (likely $4,305 to $4,320)", plain(estimate(4312, 4305, 4320).dollars()));
    assertEquals("2.7 (likely 1.4 to 4.9)", plain(estimate(2.737, 1.366, 4.897).rate()));
    assertEquals("60 (likely 0 to 740)", plain(estimate(61.2, 0.4, 738).rate()));
    assertEquals("0 (likely 0 to 4)", plain(estimate(0, 0, 4.2).rate()));
    assertEquals("6.2 years (likely 4.8 to 8.1)", plain(estimate(6.21, 4.8, 8.11).years()));
    assertEquals(
        "12 failures (likely 7 to 18)", plain(estimate(12.2, 6.8, 18.1).measured("failures")));
  }

  @Test
  void expectedCountsHaveNoDecimals() {
    assertEquals("1 (likely 0 to 12)", plain(estimate(1.4, 0, 12).whole()));
    assertEquals("1 failure (likely 0 to 12)", plain(estimate(1.4, 0, 12).whole("failures")));
    assertEquals("49 failures (likely 36 to 69)", plain(estimate(48.9, 36, 69).whole("failures")));
  }

  @Test
  void dollarsToldAloneAreRoundedByTheirLimits() {
    assertEquals("$48,000", plain(estimate(47_623, 38_126, 59_125).dollarsAlone()));
    assertEquals("$3,315", plain(estimate(3_315.4, 3_290, 3_345).dollarsAlone()));
  }

  @Test
  void anEstimateWithoutLimitsSaysSo() {
    Estimate bare = new Estimate(4312.4, OptionalDouble.empty(), OptionalDouble.of(5000));
    assertFalse(bare.hasLimits());
    assertEquals("$4,312 (limits not known)", plain(bare.dollars()));
    assertEquals("not known", bare.limitsOfHundred());
  }

  @Test
  void aMissingValueIsNoEstimate() {
    OptionalDouble one = OptionalDouble.of(1);
    assertTrue(Estimate.of(OptionalDouble.empty(), one, one).isEmpty());
    assertEquals(1, Estimate.of(one, one, one).orElseThrow().value());
  }
}
