package pondtally.analysis;

import java.util.Arrays;
import java.util.List;
import pondtally.stats.IntervalEstimate;

/**
 * Survival read off an interval estimate, falling evenly across each innermost interval, since the
 * records do not say where in it the share fell. Not a number where nothing is known.
 */
final class IntervalShares {

  private IntervalShares() {}

  /**
   * Survival at ages in days.
   *
   * @param days in increasing order
   */
  static double[] at(IntervalEstimate estimate, double[] days) {
    List<IntervalEstimate.Mass> masses = estimate.masses();
    double[] shares = new double[days.length];
    double passed = 1;
    int next = 0;
    for (int i = 0; i < days.length; i++) {
      while (next < masses.size() && masses.get(next).rightDays() <= days[i]) {
        passed = masses.get(next++).survivalAfter();
      }
      shares[i] =
          next == masses.size()
              ? beyond(masses, passed)
              : within(masses.get(next), passed, days[i]);
    }
    return shares;
  }

  private static double beyond(List<IntervalEstimate.Mass> masses, double passed) {
    return masses.isEmpty() ? Double.NaN : passed;
  }

  private static double within(IntervalEstimate.Mass mass, double before, double days) {
    if (days <= mass.leftDays()) {
      return before;
    }
    return Double.isInfinite(mass.rightDays())
        ? Double.NaN
        : before - mass.mass() * (days - mass.leftDays()) / (mass.rightDays() - mass.leftDays());
  }

  /** The survival at one age in days. */
  static double at(IntervalEstimate estimate, double days) {
    return at(estimate, new double[] {days})[0];
  }

  /** Mean life up to a horizon in days under the same curve; not a number past what is known. */
  static double meanLife(IntervalEstimate estimate, double horizonDays) {
    double[] ends =
        estimate.masses().stream()
            .flatMapToDouble(m -> Arrays.stream(new double[] {m.leftDays(), m.rightDays()}))
            .filter(day -> day > 0 && day < horizonDays)
            .sorted()
            .distinct()
            .toArray();
    double[] days = Arrays.copyOf(ends, ends.length + 1);
    days[ends.length] = horizonDays;
    double[] shares = at(estimate, days);
    double area = 0;
    double day = 0;
    double share = 1;
    for (int i = 0; i < days.length; i++) {
      area += (days[i] - day) * (share + shares[i]) / 2;
      day = days[i];
      share = shares[i];
    }
    return area;
  }
}
