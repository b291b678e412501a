package pondtally.analysis;

import java.io.Serializable;
import pondtally.history.HistoryRules;

/**
 * The settings that analyses depend on.
 *
 * @param rules how histories are made
 * @param periodFrom first day of the reporting period, days since 1970-01-01
 * @param periodTo last day of the reporting period, days since 1970-01-01
 * @param watershedDigits digits of the hydrologic unit code at which watersheds are compared
 * @param baseYear price year of every dollar figure
 * @param discountRate real, a year
 * @param horizonYears years that benefit and cost are counted over
 * @param laborRateUsd dollars of the base year for a paid hour
 * @param volunteerRateUsd dollars of the base year for a volunteer hour; null: hours are shown, not
 *     valued
 * @param groupsBelow a group with fewer devices is shown, never ranked
 * @param seed for every resampling
 * @param resamples bootstrap resamples
 */
public record AnalysisSettings(
    HistoryRules rules,
    int periodFrom,
    int periodTo,
    int watershedDigits,
    int baseYear,
    double discountRate,
    int horizonYears,
    double laborRateUsd,
    Double volunteerRateUsd,
    int groupsBelow,
    long seed,
    int resamples)
    implements Serializable {

  /** Half day at which the reporting period, or the data cut if that comes first, ends. */
  public int endHalfDay() {
    return 2 * (Math.min(periodTo, rules.asOf()) + 1);
  }

  /** The fiscal years that the reporting period is one of. */
  public FiscalYears fiscalYears() {
    return FiscalYears.startingLike(periodFrom);
  }
}
