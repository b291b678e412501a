package pondtally.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.stats.FunnelLimits;
import pondtally.stats.GammaPoisson;
import pondtally.stats.Limits;

/**
 * One watershed's failures against what its pipes and their ages lead one to expect (funnel limits,
 * Spiegelhalter 2005; rates drawn toward the mean, Clayton and Kaldor 1987). All but {@code
 * expected} are failures per 100 device-years.
 *
 * @param expected failures expected from the pooled hazard by pipe type and age
 * @param shrunken rate drawn toward the mean by its precision; null where nothing is expected
 * @param funnelLower lower 99.8 per cent limit for a watershed like the others; null where nothing
 *     is expected
 * @param funnelUpper upper 99.8 per cent limit
 * @param innerLower lower 95 per cent limit
 * @param innerUpper upper 95 per cent limit
 * @param outside whether the watershed lies outside these limits
 */
record WatershedComparison(
    double expected,
    Double shrunken,
    Double funnelLower,
    Double funnelUpper,
    Double innerLower,
    Double innerUpper,
    Boolean outside) {

  /** The comparison of each watershed. */
  static Map<String, WatershedComparison> of(RateTally tally) {
    SortedMap<String, Double> expected = RateAnalysis.expected(tally.agesByWatershedAndPipe());
    List<String> names = new ArrayList<>(expected.keySet());
    long[] observed = new long[names.size()];
    double[] expectations = new double[names.size()];
    for (int i = 0; i < observed.length; i++) {
      observed[i] = counts(tally, names.get(i)).failures();
      expectations[i] = expected.get(names.get(i));
    }
    GammaPoisson prior = GammaPoisson.fit(observed, expectations);
    Map<String, WatershedComparison> comparisons = new HashMap<>();
    for (int i = 0; i < observed.length; i++) {
      double years = counts(tally, names.get(i)).deviceYears();
      comparisons.put(names.get(i), of(observed[i], expectations[i], years, prior));
    }
    return comparisons;
  }

  private static RateTally.Counts counts(RateTally tally, String watershed) {
    return tally.whole(new GroupKey(Grouping.WATERSHED, watershed));
  }

  private static WatershedComparison of(
      long observed, double expected, double deviceYears, GammaPoisson prior) {
    if (!(expected > 0 && deviceYears > 0)) {
      return new WatershedComparison(expected, null, null, null, null, null, null);
    }
    double rateAsExpected = 100 * expected / deviceYears;
    Limits funnel = FunnelLimits.exact(expected, FunnelLimits.OUTER).times(rateAsExpected);
    Limits inner = FunnelLimits.exact(expected, FunnelLimits.INNER).times(rateAsExpected);
    OptionalDouble shrunken = prior.shrunken(observed, expected);
    return new WatershedComparison(
        expected,
        shrunken.isPresent() ? (Double) (shrunken.getAsDouble() * rateAsExpected) : null,
        Cells.of(funnel.lower()),
        Cells.of(funnel.upper()),
        Cells.of(inner.lower()),
        Cells.of(inner.upper()),
        FunnelLimits.outside(observed, expected, FunnelLimits.OUTER));
  }
}
