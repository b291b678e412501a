package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static pondtally.stats.Published.assertCell;
import static pondtally.stats.Published.number;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Bootstrap limits against R's boot: exactly on its resamples, and roughly on our own. */
class BootstrapPublishedTest {
  @Test
  void cityOfCochran1977OnGivenResamples() {
    List<CSVRecord> city = Published.rows("bootstrap/city.csv");
    List<CSVRecord> draws = Published.rows("bootstrap/city_resample_indices.csv");
    assertEquals(999, draws.size());
    double[] ratios = new double[999];
    for (int r = 0; r < 999; r++) {
      double x = 0;
      double u = 0;
      for (String index : draws.get(r).values()) {
        CSVRecord drawn = city.get(Integer.parseInt(index) - 1);
        x += number(drawn, "x");
        u += number(drawn, "u");
      }
      ratios[r] = x / u;
    }
    CSVRecord expected = Published.rows("bootstrap/bootstrap_ratio_city_exact.csv").get(0);
    Bootstrap bootstrap = Bootstrap.of(ratios, 0.95);
    assertCell(expected, "percentile_lower", bootstrap.percentile().lower());
    assertCell(expected, "percentile_upper", bootstrap.percentile().upper());
    double a = acceleration(city);
    assertCell(expected, "t0", ratio(city));
    assertCell(expected, "bca_z0", bootstrap.biasCorrection(ratio(city)));
    assertCell(expected, "bca_a_jackknife", a);
    Limits bca = bootstrap.bca(ratio(city), a);
    assertCell(expected, "bca_jack_lower", bca.lower());
    assertCell(expected, "bca_jack_upper", bca.upper());
    assertCell(
        expected,
        "bca_reg_lower",
        bootstrap.bca(ratio(city), number(expected, "bca_a_regression")).lower());
    assertCell(
        expected,
        "bca_reg_upper",
        bootstrap.bca(ratio(city), number(expected, "bca_a_regression")).upper());
    assertFalse(bootstrap.extreme(0.025));
  }

  @Test
  void bigCityByPoissonWeights() {
    CSVRecord expected = Published.rows("bootstrap/bootstrap_ratio_large_R.csv").get(1);
    assertEquals("bigcity R=99999", expected.get("example"));
    List<CSVRecord> rows = Published.rows("bootstrap/bigcity.csv");
    ResampleSums sums = ResampleSums.of(20240503, 2, 99_999);
    for (CSVRecord row : rows) {
      sums.add("row " + row.getRecordNumber(), number(row, "x"), number(row, "u"));
    }
    assertCell(expected, "t0", sums.total(0) / sums.total(1));
    Bootstrap bootstrap = sums.ratio(0, 1, 0.95);
    assertEquals(0, bootstrap.undefined());
    // Weights are drawn singly, not as n of n, which matters little to a ratio of 49 rows.
    assertNear(expected, "percentile", 0.002, bootstrap.percentile());
    assertCell(expected, "bca_a_jackknife", acceleration(rows));
    assertNear(expected, "bca_jack", 0.002, bootstrap.bca(ratio(rows), acceleration(rows)));
  }

  @Test
  void plantGrowthOfDobson1983InTwoSamples() {
    CSVRecord expected = Published.rows("bootstrap/bootstrap_ratio_two_samples.csv").get(0);
    ResampleSums sums = ResampleSums.of(20240504, 4, 20_000);
    for (CSVRecord row : Published.rows("bootstrap/plant_growth_two_groups.csv")) {
      int from = row.get("group").equals("trt2") ? 0 : 2;
      double[] values = new double[4];
      values[from] = number(row, "weight");
      values[from + 1] = 1;
      sums.add("plant " + row.getRecordNumber(), values);
    }
    double[] ratios = new double[sums.resamples()];
    for (int r = 0; r < ratios.length; r++) {
      ratios[r] = sums.total(0, r) / sums.total(1, r) / (sums.total(2, r) / sums.total(3, r));
    }
    assertNear(expected, "percentile", 0.01, Bootstrap.of(ratios, 0.95).percentile());
  }

  /** Davison & Hinkley 1997, section 2.1; typed from memory. */
  @Test
  void printedRatios() {
    assertEquals(1.520, ratio(Published.rows("bootstrap/city.csv")), 5e-4);
    assertEquals(1.239, ratio(Published.rows("bootstrap/bigcity.csv")), 5e-4);
  }

  private static void assertNear(CSVRecord expected, String name, double allowed, Limits limits) {
    assertEquals(number(expected, name + "_lower"), limits.lower().getAsDouble(), allowed);
    assertEquals(number(expected, name + "_upper"), limits.upper().getAsDouble(), allowed);
  }

  private static double ratio(List<CSVRecord> rows) {
    return sum(rows, "x") / sum(rows, "u");
  }

  private static double acceleration(List<CSVRecord> rows) {
    JackknifeInfluence influence = JackknifeInfluence.of(ratio(rows), rows.size());
    for (CSVRecord row : rows) {
      influence.add((sum(rows, "x") - number(row, "x")) / (sum(rows, "u") - number(row, "u")));
    }
    return influence.acceleration().getAsDouble();
  }

  private static double sum(List<CSVRecord> rows, String column) {
    return rows.stream().mapToDouble(r -> number(r, column)).sum();
  }
}
