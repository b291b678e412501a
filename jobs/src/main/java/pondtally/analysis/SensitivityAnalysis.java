package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * The result table {@code sensitivity}: the projected ratio of all devices at the program's rate
 * when one assumption is moved and the others stay. Ranges, common practice, no source: discount
 * rate 3 points either way (not below 0), horizon half to one and a half times, yearly damage,
 * labor rate and device life 25 per cent either way, days between visits half to twice.
 */
public final class SensitivityAnalysis {

  private static final double RATE_POINTS = 0.03;

  private final BenefitFit fit;
  private final BenefitUnits units;
  private final BenefitSums sums;
  private final double replacedShare;
  private final AnalysisSettings settings;

  private SensitivityAnalysis(
      BenefitFit fit, BenefitSums sums, BenefitMeans means, AnalysisSettings settings) {
    this.fit = fit;
    this.sums = sums;
    this.units = means.units().orElseThrow();
    this.replacedShare = means.replacedShare();
    this.settings = settings;
  }

  /**
   * One row of the result table.
   *
   * @param low value of the assumption, in the unit that its name says
   * @param ratioLow benefit over cost there
   */
  public record Row(
      String assumption,
      Double low,
      Double base,
      Double high,
      Double ratioLow,
      Double ratioBase,
      Double ratioHigh) {}

  /** The rows of the result table; none where nothing can be projected. */
  public static List<Row> rows(BenefitTally tally, BenefitFits fits, AnalysisSettings settings) {
    BenefitSums all = tally.sums().get(GroupKey.ALL);
    Optional<BenefitFit> fit = fits.of(GroupKey.ALL);
    if (all == null || fit.isEmpty()) {
      return List.of();
    }
    BenefitMeans means = new BenefitMeans(all, all);
    return means.units().isEmpty()
        ? List.of()
        : new SensitivityAnalysis(fit.get(), all, means, settings).rows();
  }

  private List<Row> rows() {
    double rate = settings.discountRate();
    int horizon = settings.horizonYears();
    int visits = settings.rules().revisitEveryDays();
    List<Row> rows = new ArrayList<>();
    rows.add(
        row(
            "discount rate",
            Math.max(0, points(rate - RATE_POINTS)),
            rate,
            points(rate + RATE_POINTS),
            value -> ratio(fit, units, visits, horizon, value)));
    rows.add(
        row(
            "horizon, years",
            Math.max(1, Math.rint(horizon * 0.5)),
            horizon,
            Math.rint(horizon * 1.5),
            value -> ratio(fit, units, visits, (int) value, rate)));
    rows.add(
        row(
            "days between visits",
            Math.max(1, Math.rint(visits * 0.5)),
            visits,
            visits * 2.0,
            value -> ratio(fit, units, (int) value, horizon, rate)));
    rows.add(
        quarter(
            "yearly damage, dollars",
            units.damageUsd(),
            factor -> ratio(fit, damaged(factor), visits, horizon, rate)));
    rows.add(
        quarter(
            "labor rate, dollars an hour",
            settings.laborRateUsd(),
            factor -> ratio(fit, worked(factor), visits, horizon, rate)));
    rows.add(
        quarter(
            "device life (median), years",
            fit.medianYears(),
            factor -> ratio(fit.stretched(factor), units, visits, horizon, rate)));
    return rows;
  }

  /** To a hundredth of a basis point, so that 0.07 less 0.03 is 0.04. */
  private static double points(double rate) {
    return Math.rint(rate * 1e6) / 1e6;
  }

  private static Row row(
      String name, double low, double base, double high, DoubleFunction<Double> ratio) {
    return new Row(name, low, base, high, ratio.apply(low), ratio.apply(base), ratio.apply(high));
  }

  /** A quarter less and a quarter more; {@code ratio} takes the factor. */
  private static Row quarter(String name, double base, DoubleFunction<Double> ratio) {
    return new Row(
        name, base * 0.75, base, base * 1.25, ratio.apply(0.75), ratio.apply(1), ratio.apply(1.25));
  }

  /** Benefit over cost; null where nothing is spent. */
  private Double ratio(
      BenefitFit life, BenefitUnits prices, int revisitDays, int years, double rate) {
    BenefitYears ahead = BenefitYears.of(life::cumulativeHazard, revisitDays, years, replacedShare);
    double cost = ahead.costUsd(prices, rate);
    return cost > 0 ? (Double) (prices.damageUsd() * ahead.benefitFactor(rate) / cost) : null;
  }

  private BenefitUnits damaged(double factor) {
    return new BenefitUnits(
        units.damageUsd() * factor,
        units.buildUsd(),
        units.visitUsd(),
        units.repairUsd(),
        units.replacementUsd());
  }

  /** Costs with paid hours at another rate. */
  private BenefitUnits worked(double factor) {
    double more = factor - 1;
    return new BenefitUnits(
        units.damageUsd(),
        units.buildUsd() + more * labor(BenefitMeasure.BUILD_LABOR_USD, BenefitMeasure.BUILDS),
        units.visitUsd() + more * labor(BenefitMeasure.VISIT_LABOR_USD, BenefitMeasure.VISITS),
        units.repairUsd() + more * labor(BenefitMeasure.REPAIR_LABOR_USD, BenefitMeasure.REPAIRS),
        units.replacementUsd()
            + more * labor(BenefitMeasure.REPLACEMENT_LABOR_USD, BenefitMeasure.REPLACEMENTS));
  }

  private double labor(BenefitMeasure usd, BenefitMeasure count) {
    double n = sums.total(count);
    return n > 0 ? sums.total(usd) / n : 0;
  }
}
