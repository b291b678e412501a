package pondtally.analysis;

import java.util.Arrays;

/** Visits, repairs and replacements of one device of a cell, and what they cost in each draw. */
final class SeasonEvents {

  private final SeasonCell cell;
  private final SeasonCourse course;
  private final SeasonUnits units;
  private final int visits;

  SeasonEvents(SeasonCell cell, SeasonCourse course, SeasonUnits units) {
    this.cell = cell;
    this.course = course;
    this.units = units;
    this.visits = course.visits(cell, SeasonForecast.horizonDays());
  }

  void addTo(SeasonSums sums) {
    double[] logAges = course.logAges(cell, visits);
    int[] years = new int[visits];
    Arrays.setAll(years, k -> SeasonForecast.year(course.day(cell, k)));
    for (int draw = 0; draw < SeasonFits.DRAWS; draw++) {
      add(draw, course.found(cell, logAges, draw), years, sums);
    }
  }

  private void add(int draw, double[] found, int[] years, SeasonSums sums) {
    Usd usd = units.visit() == null ? null : usd(draw);
    for (int k = 0; k < visits; k++) {
      // A device that stands failed is mended for certain, but its failure is one of the past.
      double mended = cell.failed() && k == 0 ? 1 : found[k];
      sums.addFound(years[k], draw, found[k]);
      if (usd != null) {
        sums.addCost(years[k], draw, usd.mean(mended), usd.variance(mended));
      }
      if (draw == 0) {
        addWork(years[k], mended, sums);
      }
    }
  }

  private void addWork(int year, double mended, SeasonSums sums) {
    double replaced = mended * units.replacedShare();
    sums.addVisit(year);
    sums.addWork(year, mended * (1 - units.replacedShare()), replaced, hours(mended));
  }

  /**
   * Dollars of a visit in one draw, which mends with some chance.
   *
   * @param plain mean of a visit that mends nothing
   * @param extra what mending costs beyond it, on average
   * @param plainSquare mean square of a visit that mends nothing
   * @param mendedSquare mean square of one that mends
   */
  private record Usd(double plain, double extra, double plainSquare, double mendedSquare) {

    double mean(double mended) {
      return plain + mended * extra;
    }

    /** Which kind of visit it is, and how costs vary within the kind. */
    double variance(double mended) {
      double mean = mean(mended);
      return (1 - mended) * plainSquare + mended * mendedSquare - mean * mean;
    }
  }

  private Usd usd(int draw) {
    double share = units.replacedShare();
    double plain = units.visit().meanUsd()[draw];
    double repaired = units.repair().meanUsd()[draw];
    double replaced = units.replacement().meanUsd()[draw];
    return new Usd(
        plain,
        (1 - share) * repaired + share * replaced - plain,
        square(units.visit(), draw),
        (1 - share) * square(units.repair(), draw) + share * square(units.replacement(), draw));
  }

  private static double square(SeasonUnit unit, int draw) {
    return unit.meanUsd()[draw] * unit.meanUsd()[draw] + unit.sdUsd() * unit.sdUsd();
  }

  private double hours(double mended) {
    double share = units.replacedShare();
    return (1 - mended) * hours(units.visit())
        + mended * (1 - share) * hours(units.repair())
        + mended * share * hours(units.replacement());
  }

  private double hours(SeasonUnit unit) {
    if (unit == null || units.visit().hours() == null) {
      return 0;
    }
    return unit.hours() == null ? units.visit().hours() : unit.hours();
  }
}
