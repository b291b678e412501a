package pondtally.analysis;

/**
 * How long a device lies failed before a visit notices: it is new, visited every so many days, down
 * from its failure to the next visit, which mends it (its age goes on) or replaces it (age 0).
 * Expected values of a renewal process over whole visit intervals; common practice. A horizon that
 * ends between two visits takes its share of both, so that the curve over intervals is smooth.
 */
final class VisitDowntime {

  private final SeasonFit fit;
  private final int days;
  private final double replacedShare;
  private final int intervals;

  /** Days down and chance of failing within an interval, by the age in visits at its start. */
  private final double[] down;

  private final double[] chance;

  private VisitDowntime(SeasonFit fit, int days, double replacedShare, int intervals) {
    this.fit = fit;
    this.days = days;
    this.replacedShare = replacedShare;
    this.intervals = intervals;
    this.down = new double[intervals];
    this.chance = new double[intervals];
    for (int age = 0; age < intervals; age++) {
      interval(age);
    }
  }

  /** Share of the time up to a horizon in days. */
  static double share(SeasonFit fit, int days, double horizonDays, double replacedShare) {
    int whole = Math.max(1, (int) (horizonDays / days));
    double rest = Math.max(0, horizonDays / days - whole);
    double[] downDays = new VisitDowntime(fit, days, replacedShare, whole + 1).cumulative();
    double first = downDays[whole - 1] / ((double) whole * days);
    double second = downDays[whole] / ((whole + 1.0) * days);
    return (1 - rest) * first + rest * second;
  }

  /** By trapezoids a day wide. */
  private void interval(int age) {
    double from = (double) age * days;
    double base = fit.cumulativeHazard(from);
    double before = 0;
    for (int day = 1; day <= days; day++) {
      double failed = -Math.expm1(base - fit.cumulativeHazard(from + day));
      down[age] += (before + failed) / 2;
      before = failed;
    }
    chance[age] = before;
  }

  /** Expected days down by the end of each interval. */
  private double[] cumulative() {
    double[] sums = new double[intervals];
    double[] mass = new double[intervals + 1];
    mass[0] = 1;
    double sum = 0;
    for (int k = 0; k < intervals; k++) {
      double reborn = 0;
      for (int born = 0; born <= k; born++) {
        int age = k - born;
        sum += mass[born] * down[age];
        double replaced = mass[born] * chance[age] * replacedShare;
        mass[born] -= replaced;
        reborn += replaced;
      }
      mass[k + 1] = reborn;
      sums[k] = sum;
    }
    return sums;
  }
}
