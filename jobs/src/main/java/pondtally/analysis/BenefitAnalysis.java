package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** The result tables {@code benefit_cost} and {@code benefit_years}. */
public final class BenefitAnalysis {

  /**
   * Real rates always shown beside the program's own (OMB Circular A-94, current and former
   * editions; 0 for comparison).
   */
  private static final List<Double> RATES = List.of(0.0, 0.02, 0.03, 0.07);

  /** Years told of however short the horizon is, so that a longer one can be tried. */
  static final int FEWEST_YEARS = 30;

  private BenefitAnalysis() {}

  /** Rows to date, and looking ahead at the program's rate and at 0, 2, 3 and 7 per cent. */
  public static List<BenefitRow> rows(
      BenefitTally tally, BenefitFits fits, AnalysisSettings settings) {
    TreeSet<Double> rates = new TreeSet<>(RATES);
    rates.add(settings.discountRate());
    List<BenefitRow> rows = new ArrayList<>();
    tally
        .sums()
        .forEach(
            (key, sums) -> {
              rows.add(BenefitToDate.row(key, sums, settings));
              BenefitProjected projected = projected(tally, fits, key, settings);
              rates.forEach(rate -> rows.add(projected.row(rate)));
            });
    return rows;
  }

  static BenefitProjected projected(
      BenefitTally tally, BenefitFits fits, GroupKey key, AnalysisSettings settings) {
    return new BenefitProjected(
        key, tally.sums().get(key), tally.sums().get(GroupKey.ALL), fits.of(key), settings);
  }

  /** One row of the result table {@code benefit_years}. */
  public record YearRow(
      String grouping,
      String group,
      Integer year,
      String fit,
      Double workingShare,
      Double visits,
      Double repairs,
      Double replacements) {}

  /** What is expected of one new device of each group in each year ahead. */
  public static List<YearRow> years(
      BenefitTally tally, BenefitFits fits, AnalysisSettings settings) {
    List<YearRow> rows = new ArrayList<>();
    int years = Math.max(settings.horizonYears(), FEWEST_YEARS);
    for (GroupKey key : tally.sums().keySet()) {
      BenefitProjected projected = projected(tally, fits, key, settings);
      projected.years(years).ifPresent(ahead -> add(rows, key, projected.fitName(), ahead));
    }
    return rows;
  }

  private static void add(List<YearRow> rows, GroupKey key, String fit, BenefitYears ahead) {
    for (int year = 1; year <= ahead.years(); year++) {
      rows.add(
          new YearRow(
              key.grouping().code(),
              key.group(),
              year,
              fit,
              ahead.workingShare(year),
              ahead.visits(year),
              ahead.repairs(year),
              ahead.replacements(year)));
    }
  }
}
