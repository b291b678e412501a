package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pondtally.stats.Published.assertCell;
import static pondtally.stats.Published.number;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Funnel limits, shrinkage and sample sizes against base R, with the script beside the files. */
class WatershedPublishedTest {
  private static final double FIT = 1e-6;

  @Test
  void scottishLipCancerOfClaytonAndKaldor1987() {
    List<CSVRecord> counties = Published.rows("rates/scotland_lip_cancer.csv");
    assertEquals(56, counties.size());
    GammaPoisson fit = GammaPoisson.fit(observed(counties), expected(counties));
    assertFit(Published.rows("rates/gamma_poisson.csv").get(0), fit);
    // ν = 1.88 and α = 1.32 are the figures of the paper, typed from memory.
    assertEquals(1.88, fit.shape().getAsDouble(), 0.005);
    assertEquals(1.32, fit.rate().getAsDouble(), 0.005);
    List<CSVRecord> shrunken = Published.rows("rates/gamma_poisson_counties.csv");
    for (int i = 0; i < 56; i++) {
      long o = observed(counties)[i];
      double e = expected(counties)[i];
      assertNear(number(shrunken.get(i), "posterior_mean"), fit.shrunken(o, e).getAsDouble());
      Limits limits = fit.limits(o, e, 0.95);
      assertNear(number(shrunken.get(i), "lower95"), limits.lower().getAsDouble());
      assertNear(number(shrunken.get(i), "upper95"), limits.upper().getAsDouble());
    }
  }

  @Test
  void eightSmallGroups() {
    long[] observed = {0, 1, 0, 0, 2, 0, 0, 9};
    double[] expected = {1, 2, .5, 3, 2.5, 1, .25, 3};
    assertFit(
        Published.rows("rates/gamma_poisson.csv").get(1), GammaPoisson.fit(observed, expected));
  }

  @Test
  void funnelLimits() {
    List<CSVRecord> rows = Published.rows("rates/funnel_limits.csv");
    assertEquals(16, rows.size());
    for (CSVRecord row : rows) {
      Limits exact = FunnelLimits.exact(number(row, "expected"), number(row, "level"));
      assertCell(row, "lower", exact.lower());
      assertCell(row, "upper", exact.upper());
      Limits drawn = FunnelLimits.interpolated(number(row, "expected"), number(row, "level"));
      assertCell(row, "lower_interpolated", drawn.lower());
      assertCell(row, "upper_interpolated", drawn.upper());
    }
  }

  @Test
  void dispersion() {
    List<CSVRecord> counties = Published.rows("rates/scotland_lip_cancer.csv");
    CSVRecord row = Published.rows("rates/dispersion.csv").get(0);
    FunnelLimits.Dispersion found = FunnelLimits.dispersion(observed(counties), expected(counties));
    assertEquals(56, found.groups());
    assertCell(row, "phi", found.ratio());
    assertCell(row, "p", found.pValue());
  }

  @Test
  void sampleSizesOfSchoenfeld1983() {
    List<CSVRecord> rows = Published.rows("rates/sample_size.csv");
    assertEquals(20, rows.size());
    for (CSVRecord row : rows) {
      double share = number(row, "share");
      double power = number(row, "power");
      double failures = SampleSize.failures(number(row, "hazard_ratio"), share, 0.95, power);
      assertCell(row, "failures", failures);
      double ratio = number(row, "hazard_ratio");
      assertNear(
          Math.max(ratio, 1 / ratio), SampleSize.smallestRatio(failures, share, 0.95, power));
    }
    // Figures often printed for equal groups, 80 per cent power: 66, 380 and 191; from memory.
    assertEquals(66, Math.ceil(SampleSize.failures(0.5, 0.5, 0.95, 0.8)));
    assertEquals(380, Math.ceil(SampleSize.failures(0.75, 0.5, 0.95, 0.8)));
    assertEquals(191, Math.ceil(SampleSize.failures(1.5, 0.5, 0.95, 0.8)));
  }

  private static void assertFit(CSVRecord row, GammaPoisson fit) {
    assertNear(number(row, "nu"), fit.shape().getAsDouble());
    assertNear(number(row, "alpha"), fit.rate().getAsDouble());
  }

  private static void assertNear(double expected, double actual) {
    assertEquals(expected, actual, FIT * Math.abs(expected));
  }

  private static long[] observed(List<CSVRecord> rows) {
    return rows.stream().mapToLong(r -> Long.parseLong(r.get("observed"))).toArray();
  }

  private static double[] expected(List<CSVRecord> rows) {
    return rows.stream().mapToDouble(r -> number(r, "expected")).toArray();
  }
}
