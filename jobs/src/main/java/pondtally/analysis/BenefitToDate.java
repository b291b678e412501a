package pondtally.analysis;

import java.util.OptionalDouble;
import pondtally.stats.Bootstrap;
import pondtally.stats.Limits;

/**
 * Rows of {@code benefit_cost} to date: what verified functional time avoided, against everything
 * spent, in dollars of the base year and not discounted.
 */
final class BenefitToDate {

  private static final double DAYS_PER_YEAR = 365.25;
  private static final double LEVEL = 0.95;

  /** With fewer clusters the share of resamples above 1 is not shown. */
  static final long FEWEST_CLUSTERS = 10;

  private BenefitToDate() {}

  static BenefitRow row(GroupKey key, BenefitSums s, AnalysisSettings settings) {
    boolean any = s.counted() > 0;
    double cost = s.total(BenefitMeasure.COST_USD);
    double benefit = s.total(BenefitMeasure.BENEFIT_USD);
    double siteYears = s.total(BenefitMeasure.SITE_YEARS);
    boolean defined = any && cost > 0;
    Bootstrap draws =
        Bootstrap.expanded(ratios(s, settings.resamples()), LEVEL, s.clustersToDate());
    double years = any ? (settings.rules().asOf() + 1 - s.firstInstall()) / DAYS_PER_YEAR : 0;
    Limits limits = defined ? limits(s, benefit / cost, draws) : Limits.none();
    return new BenefitRow(
        key.grouping().code(),
        key.group(),
        "to-date",
        0.0,
        any ? (Double) years : null,
        any ? (Double) cost : null,
        any ? (Double) benefit : null,
        any ? (Double) (benefit - cost) : null,
        defined ? (Double) (benefit / cost) : null,
        Cells.of(limits.lower()),
        Cells.of(limits.upper()),
        defined ? chance(s.clustersToDate(), draws) : null,
        null,
        any ? (Double) (cost / years) : null,
        any && siteYears > 0 ? (Double) (cost / siteYears) : null,
        s.counted(),
        s.sites() - s.counted(),
        null,
        any ? (Double) ((benefit - cost) / years) : null,
        s.clustersToDate(),
        s.withoutDamage(),
        s.withoutCost(),
        draws.resamples(),
        draws.undefined(),
        siteYears > 0 ? (Double) (benefit / siteYears) : null,
        null,
        null,
        null,
        null,
        null,
        null);
  }

  private static Limits limits(BenefitSums s, double ratio, Bootstrap draws) {
    OptionalDouble acceleration = s.moments().acceleration(ratio);
    return s.clustersToDate() >= 2 && acceleration.isPresent()
        ? draws.bca(ratio, acceleration.getAsDouble())
        : Limits.none();
  }

  /** Share of resamples above 1, assumptions fixed; null below ten clusters. */
  static Double chance(long clusters, Bootstrap draws) {
    return clusters >= FEWEST_CLUSTERS ? Cells.of(draws.shareAbove(1)) : null;
  }

  private static double[] ratios(BenefitSums s, int resamples) {
    double[] ratios = new double[resamples];
    for (int i = 0; i < resamples; i++) {
      double cost = s.total(BenefitMeasure.COST_USD, i);
      ratios[i] = cost > 0 ? s.total(BenefitMeasure.BENEFIT_USD, i) / cost : Double.NaN;
    }
    return ratios;
  }
}
