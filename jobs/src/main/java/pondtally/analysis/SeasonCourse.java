package pondtally.analysis;

/**
 * What is expected of the devices of a cell, visit by visit, in each draw of the parameters. A
 * visit finds a device failed with the chance that it failed since the visit before; then it is
 * mended and its age goes on, or it is replaced and begins at age 0. The failures of one device at
 * its visits are independent, as they are where nothing is replaced; a replacement makes them
 * nearly so.
 */
final class SeasonCourse {

  private final SeasonFit fit;
  private final double replacedShare;
  private final int revisitDays;
  private final int visits;

  /** Chance that a device replaced at a visit is found failed at the n-th after it, by draw. */
  private final double[][] afterReplacement;

  SeasonCourse(SeasonFit fit, double replacedShare, int revisitDays, double horizonDays) {
    this.fit = fit;
    this.replacedShare = replacedShare;
    this.revisitDays = revisitDays;
    this.visits = (int) (horizonDays / revisitDays) + 1;
    this.afterReplacement = new double[fit.shape().length][];
    for (int draw = 0; replacedShare > 0 && draw < afterReplacement.length; draw++) {
      afterReplacement[draw] = afterReplacement(draw);
    }
  }

  private double[] afterReplacement(int draw) {
    double[] found = new double[visits];
    double[] first = new double[visits];
    double before = 0;
    for (int n = 0; n < visits; n++) {
      double hazard = fit.cumulativeHazard(Math.log((n + 1.0) * revisitDays), draw);
      first[n] = -Math.expm1(before - hazard);
      before = hazard;
    }
    renew(first, found, found);
    return found;
  }

  /** Adds to each visit's chance what replacements at earlier visits bring. */
  private void renew(double[] own, double[] afterReplaced, double[] found) {
    double[] replaced = new double[own.length];
    double left = 1;
    for (int k = 0; k < own.length; k++) {
      double chance = left * own[k];
      replaced[k] = replacedShare * chance;
      left -= replaced[k];
      for (int j = 0; j < k; j++) {
        chance += replaced[j] * afterReplaced[k - j - 1];
      }
      found[k] = chance;
    }
  }

  /** Visits within the horizon that a cell is due. */
  int visits(SeasonCell cell, double horizonDays) {
    return cell.firstVisit() > horizonDays
        ? 0
        : Math.min(visits, (int) ((horizonDays - cell.firstVisit()) / revisitDays) + 1);
  }

  /** Day of a visit, from the data cut. */
  int day(SeasonCell cell, int visit) {
    return cell.firstVisit() + visit * revisitDays;
  }

  /** Logarithms of the ages from which and at which each visit looks. */
  double[] logAges(SeasonCell cell, int count) {
    double[] logs = new double[count + 1];
    logs[0] = Math.log(cell.failed() ? cell.age() + cell.firstVisit() : cell.goodAge());
    for (int k = 0; k < count; k++) {
      logs[k + 1] = Math.log(cell.age() + (double) day(cell, k));
    }
    return logs;
  }

  /**
   * Chance that each visit of a cell finds a device newly failed, in one draw.
   *
   * @param logAges of {@link #logAges}
   */
  double[] found(SeasonCell cell, double[] logAges, int draw) {
    double[] own = new double[logAges.length - 1];
    double before = fit.cumulativeHazard(logAges[0], draw);
    for (int k = 0; k < own.length; k++) {
      double hazard = fit.cumulativeHazard(logAges[k + 1], draw);
      own[k] = cell.failed() && k == 0 ? 0 : -Math.expm1(Math.min(0, before - hazard));
      before = hazard;
    }
    if (replacedShare <= 0) {
      return own;
    }
    return cell.failed() ? afterMending(own, draw) : renewed(own, draw);
  }

  private double[] renewed(double[] own, int draw) {
    double[] found = new double[own.length];
    renew(own, afterReplacement[draw], found);
    return found;
  }

  /** Devices that stand failed: the first visit mends them, or replaces them. */
  private double[] afterMending(double[] own, int draw) {
    double[] found = renewed(own, draw);
    for (int k = 1; k < own.length; k++) {
      found[k] = (1 - replacedShare) * found[k] + replacedShare * afterReplacement[draw][k - 1];
    }
    return found;
  }
}
