package pondtally.analysis;

import java.io.Serializable;
import java.util.List;

/**
 * A published range of what an acre of wetland is worth in a year. Off unless the settings name it:
 * such values differ tenfold between studies and places, so that the range stands on a line of its
 * own, with its source, and in no ratio.
 *
 * @param lowUsd dollars of {@code year} for an acre-year
 * @param highUsd dollars of {@code year} for an acre-year
 * @param source where it was published
 * @param year price year of both
 */
public record WetlandWorth(double lowUsd, double highUsd, String source, int year)
    implements Serializable {

  /** One row of the result table {@code wetland_value}; null where acre-years are not known. */
  public record Row(
      String grouping,
      String group,
      String year,
      Double acreYears,
      Double lowUsdPerAcreYear,
      Double highUsdPerAcreYear,
      Double lowUsd,
      Double highUsd,
      Integer baseYear,
      String source,
      Integer sourceYear) {}

  /** The rows of the result table, in dollars of the base year. */
  public List<Row> rows(List<WetlandTally.Row> wetland, Prices prices) {
    double low = prices.real(lowUsd, year);
    double high = prices.real(highUsd, year);
    return wetland.stream()
        .map(
            row ->
                new Row(
                    row.grouping(),
                    row.group(),
                    row.year(),
                    row.acreYears(),
                    low,
                    high,
                    times(row.acreYears(), low),
                    times(row.acreYears(), high),
                    prices.baseYear(),
                    source,
                    year))
        .toList();
  }

  private static Double times(Double acreYears, double usd) {
    return acreYears == null ? null : (Double) (acreYears * usd);
  }
}
