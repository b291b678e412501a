package pondtally.analysis;

import java.util.List;

/** Visits, repairs and replacements of a cell's devices, and what they cost in each draw. */
final class SeasonEvents {

  private final SeasonCell cell;
  private final long count;
  private final SeasonCourse course;
  private final SeasonUnits units;
  private final int visits;

  SeasonEvents(SeasonCell cell, long count, SeasonCourse course, SeasonUnits units) {
    this.cell = cell;
    this.count = count;
    this.course = course;
    this.units = units;
    this.visits = course.visits(cell, SeasonForecast.horizonDays());
  }

  void addTo(List<SeasonSums> sums) {
    double[] logAges = course.logAges(cell, visits);
    for (int draw = 0; draw < SeasonFits.DRAWS; draw++) {
      double[] found = course.found(cell, logAges, draw);
      for (int k = 0; k < visits; k++) {
        add(k, draw, found[k], sums);
      }
    }
  }

  private void add(int visit, int draw, double found, List<SeasonSums> sums) {
    int year = SeasonForecast.year(course.day(cell, visit));
    // A device that stands failed is mended for certain, but its failure is one of the past.
    double mended = cell.failed() && visit == 0 ? 1 : found;
    double mean = units.visit() == null ? 0 : meanUsd(draw, mended);
    double variance = units.visit() == null ? 0 : varianceUsd(draw, mended);
    for (SeasonSums sum : sums) {
      sum.addFound(year, draw, count, found);
      sum.addCost(year, draw, count * mean, count * variance);
      if (draw == 0) {
        sum.addVisit(year, count);
        sum.addWork(
            year,
            count * mended * (1 - units.replacedShare()),
            count * mended * units.replacedShare(),
            count * hours(mended));
      }
    }
  }

  private double meanUsd(int draw, double mended) {
    return units.visit().meanUsd()[draw] + mended * extraUsd(draw);
  }

  /** What a failure costs beyond a plain visit, on average. */
  private double extraUsd(int draw) {
    double share = units.replacedShare();
    return (1 - share) * units.repair().meanUsd()[draw]
        + share * units.replacement().meanUsd()[draw]
        - units.visit().meanUsd()[draw];
  }

  /** Variance of one visit's cost: which kind it is, and how costs vary within the kind. */
  private double varianceUsd(int draw, double mended) {
    double share = units.replacedShare();
    double mean = meanUsd(draw, mended);
    return (1 - mended) * square(units.visit(), draw)
        + mended * (1 - share) * square(units.repair(), draw)
        + mended * share * square(units.replacement(), draw)
        - mean * mean;
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
