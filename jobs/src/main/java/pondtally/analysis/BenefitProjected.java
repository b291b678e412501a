package pondtally.analysis;

import java.util.Optional;
import java.util.OptionalInt;
import pondtally.stats.Bootstrap;
import pondtally.stats.Limits;
import pondtally.stats.PresentValue;

/**
 * Rows of {@code benefit_cost} looking ahead: one new device of a group, built today, against the
 * damage that it stands against, over the horizon. No residual value. End-of-year factors: NIST
 * Handbook 135.
 */
final class BenefitProjected {

  private static final double LEVEL = 0.95;

  private final GroupKey key;
  private final BenefitSums sums;
  private final AnalysisSettings settings;
  private final BenefitMeans means;
  private final Optional<BenefitFit> fit;
  private final Optional<BenefitYears> years;

  BenefitProjected(
      GroupKey key,
      BenefitSums own,
      BenefitSums all,
      Optional<BenefitFit> fit,
      AnalysisSettings settings) {
    this.key = key;
    this.sums = own;
    this.settings = settings;
    this.means = new BenefitMeans(own, all);
    this.fit = fit;
    this.years = years(settings.horizonYears());
  }

  /** What is expected in each of so many years; empty where no survival could be fitted. */
  Optional<BenefitYears> years(int number) {
    return fit.map(
        f ->
            BenefitYears.of(
                f::cumulativeHazard,
                settings.rules().revisitEveryDays(),
                number,
                means.replacedShare()));
  }

  /** The group whose survival was used; null where none could be fitted. */
  String fitName() {
    return fit.map(BenefitFit::group).orElse(null);
  }

  BenefitRow row(double rate) {
    Optional<BenefitUnits> units = years.isEmpty() ? Optional.empty() : means.units();
    return units.isEmpty() ? unknown(rate) : known(rate, years.get(), units.get());
  }

  private BenefitRow known(double rate, BenefitYears ahead, BenefitUnits units) {
    double cost = ahead.costUsd(units, rate);
    double factor = ahead.benefitFactor(rate);
    double benefit = units.damageUsd() * factor;
    int horizon = settings.horizonYears();
    Bootstrap draws = Bootstrap.of(ratios(ahead, rate), LEVEL);
    boolean several = cost > 0 && sums.clustersAtDamage() >= 2;
    Limits limits = several ? draws.percentile() : Limits.none();
    OptionalInt payback = PresentValue.paybackYear(rate, ahead.netUsd(units));
    return new BenefitRow(
        key.grouping().code(),
        key.group(),
        "projected",
        rate,
        (double) horizon,
        cost,
        benefit,
        benefit - cost,
        cost > 0 ? (Double) (benefit / cost) : null,
        Cells.of(limits.lower()),
        Cells.of(limits.upper()),
        several ? BenefitToDate.chance(sums.clustersAtDamage(), draws) : null,
        payback.isPresent() ? (Double) (double) payback.getAsInt() : null,
        PresentValue.equivalentAnnual(cost, rate, horizon),
        factor > 0 ? (Double) (cost / factor) : null,
        sums.sites() - sums.withoutDamage(),
        sums.withoutDamage(),
        fitName(),
        PresentValue.equivalentAnnual(benefit - cost, rate, horizon),
        sums.clustersAtDamage(),
        sums.withoutDamage(),
        sums.withoutCost(),
        draws.resamples(),
        draws.undefined(),
        units.damageUsd(),
        units.buildUsd(),
        units.visitUsd(),
        units.repairUsd(),
        units.replacementUsd(),
        means.replacedShare(),
        means.borrowed().isEmpty() ? null : means.borrowed());
  }

  private BenefitRow unknown(double rate) {
    return new BenefitRow(
        key.grouping().code(),
        key.group(),
        "projected",
        rate,
        (double) settings.horizonYears(),
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        sums.sites() - sums.withoutDamage(),
        sums.withoutDamage(),
        fitName(),
        null,
        sums.clustersAtDamage(),
        sums.withoutDamage(),
        sums.withoutCost(),
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }

  /** The ratio in each resample, the fit and the shares of repair and replacement held fixed. */
  private double[] ratios(BenefitYears ahead, double rate) {
    double factor = ahead.benefitFactor(rate);
    double building = ahead.costUsd(new BenefitUnits(0, 1, 0, 0, 0), rate);
    double visiting = ahead.costUsd(new BenefitUnits(0, 0, 1, 0, 0), rate);
    double repairing = ahead.costUsd(new BenefitUnits(0, 0, 0, 1, 0), rate);
    double replacing = ahead.costUsd(new BenefitUnits(0, 0, 0, 0, 1), rate);
    double[] ratios = new double[settings.resamples()];
    for (int i = 0; i < ratios.length; i++) {
      Optional<BenefitUnits> units = means.units(i);
      ratios[i] =
          units
              .map(
                  u ->
                      u.damageUsd()
                          * factor
                          / (building * u.buildUsd()
                              + visiting * u.visitUsd()
                              + repairing * u.repairUsd()
                              + replacing * u.replacementUsd()))
              .orElse(Double.NaN);
    }
    return ratios;
  }
}
