package pondtally.analysis;

import java.util.function.DoubleUnaryOperator;
import pondtally.stats.PresentValue;

/**
 * What is expected of one new device in each year ahead: the share of the year in which it works,
 * and visits, repairs and replacements. It is visited every so many days; once failed it is down
 * until that visit, which repairs it (its age goes on) or replaces it (age 0). Year t stands at
 * index t − 1. Expected values of a renewal process, by recursion over visits; common practice.
 */
final class BenefitYears {

  private static final double DAYS_PER_YEAR = 365.25;

  private final double[] workingShare;
  private final double[] visits;
  private final double[] repairs;
  private final double[] replacements;

  private BenefitYears(int years) {
    workingShare = new double[years];
    visits = new double[years];
    repairs = new double[years];
    replacements = new double[years];
  }

  /**
   * The years ahead.
   *
   * @param hazard cumulative hazard −log S by age in days
   * @param revisitDays days between visits, at least 1
   * @param years at least 1
   * @param replacedShare share of failures that end in replacement, 0 to 1
   */
  static BenefitYears of(
      DoubleUnaryOperator hazard, int revisitDays, int years, double replacedShare) {
    BenefitYears ahead = new BenefitYears(years);
    double horizon = years * DAYS_PER_YEAR;
    int intervals = (int) Math.ceil(horizon / revisitDays);
    double[][] working = working(hazard, revisitDays, intervals);
    double[] chances = chances(hazard, revisitDays, intervals);
    // Mass by the visit at which a device was new; its age at visit k is k less that.
    double[] mass = new double[intervals + 1];
    mass[0] = 1;
    for (int k = 0; k < intervals; k++) {
      double start = (double) k * revisitDays;
      double reborn = 0;
      for (int born = 0; born <= k; born++) {
        int age = k - born;
        ahead.work(start, Math.min(revisitDays, horizon - start), working[age], mass[born]);
        double failed = mass[born] * chances[age];
        if (start + revisitDays <= horizon) {
          ahead.visit(start + revisitDays, mass[born], failed, replacedShare);
        }
        mass[born] -= failed * replacedShare;
        reborn += failed * replacedShare;
      }
      mass[k + 1] = reborn;
    }
    return ahead;
  }

  /** Chance that a device working at one visit has failed by the next, by age in visits. */
  private static double[] chances(DoubleUnaryOperator hazard, int revisitDays, int ages) {
    double[] chances = new double[ages];
    for (int age = 0; age < ages; age++) {
      chances[age] =
          -Math.expm1(
              hazard.applyAsDouble((double) age * revisitDays)
                  - hazard.applyAsDouble((age + 1.0) * revisitDays));
    }
    return chances;
  }

  /**
   * Expected working days within so many days of a visit, by age in visits and days since; by
   * trapezoids a day wide.
   */
  private static double[][] working(DoubleUnaryOperator hazard, int revisitDays, int ages) {
    double[][] working = new double[ages][revisitDays + 1];
    for (int age = 0; age < ages; age++) {
      double from = (double) age * revisitDays;
      double base = hazard.applyAsDouble(from);
      double before = 1;
      for (int day = 1; day <= revisitDays; day++) {
        double survival = Math.exp(base - hazard.applyAsDouble(from + day));
        working[age][day] = working[age][day - 1] + (before + survival) / 2;
        before = survival;
      }
    }
    return working;
  }

  /** Shares the working days of one interval among the years it lies in. */
  private void work(double start, double length, double[] working, double mass) {
    double from = 0;
    while (from < length) {
      int year = Math.min((int) ((start + from) / DAYS_PER_YEAR), workingShare.length - 1);
      double to = Math.min(length, (year + 1) * DAYS_PER_YEAR - start);
      if (to <= from) {
        to = length;
      }
      workingShare[year] += mass * (at(working, to) - at(working, from)) / DAYS_PER_YEAR;
      from = to;
    }
  }

  private static double at(double[] working, double day) {
    int whole = Math.min((int) day, working.length - 1);
    double rest = day - whole;
    return rest > 0
        ? working[whole] + rest * (working[whole + 1] - working[whole])
        : working[whole];
  }

  private void visit(double day, double mass, double failed, double replacedShare) {
    int year = Math.min((int) Math.ceil(day / DAYS_PER_YEAR), visits.length) - 1;
    visits[year] += mass;
    repairs[year] += failed * (1 - replacedShare);
    replacements[year] += failed * replacedShare;
  }

  int years() {
    return visits.length;
  }

  /** Share of year t (from 1) in which the device works. */
  double workingShare(int year) {
    return workingShare[year - 1];
  }

  /** All visits in year t (from 1), those that repair or replace included. */
  double visits(int year) {
    return visits[year - 1];
  }

  double repairs(int year) {
    return repairs[year - 1];
  }

  double replacements(int year) {
    return replacements[year - 1];
  }

  /** Present value of benefit for each dollar of yearly damage. */
  double benefitFactor(double rate) {
    double sum = 0;
    for (int t = years(); t >= 1; t--) {
      sum += workingShare(t) * PresentValue.single(rate, t);
    }
    return sum;
  }

  /** Cost of year t: 0 is the year it is built. Visits that repair or replace cost what they do. */
  double costUsd(BenefitUnits units, int year) {
    if (year == 0) {
      return units.buildUsd();
    }
    double plain = visits(year) - repairs(year) - replacements(year);
    return plain * units.visitUsd()
        + repairs(year) * units.repairUsd()
        + replacements(year) * units.replacementUsd();
  }

  /** Present value of all cost. */
  double costUsd(BenefitUnits units, double rate) {
    double sum = 0;
    for (int t = years(); t >= 0; t--) {
      sum += costUsd(units, t) * PresentValue.single(rate, t);
    }
    return sum;
  }

  /** Benefit less cost of years 0, 1, 2, …, not discounted. */
  double[] netUsd(BenefitUnits units) {
    double[] net = new double[years() + 1];
    for (int t = 0; t < net.length; t++) {
      net[t] = (t == 0 ? 0 : units.damageUsd() * workingShare(t)) - costUsd(units, t);
    }
    return net;
  }
}
