package pondtally.stats;

import java.util.Arrays;

/**
 * A {@link HazardTransform} on the failure days of all strata together, less its mean over
 * failures.
 */
final class HazardClock {
  private final double[] days;
  private final long[] failures;
  private final long[] leave;
  private final long[] enter;
  private final long[] leaveThatDay;
  private final double[] value;

  private HazardClock(HazardData data) {
    days =
        data.strata.stream()
            .flatMapToDouble(s -> Arrays.stream(s.days))
            .sorted()
            .distinct()
            .toArray();
    failures = new long[days.length + 1];
    leave = new long[days.length + 1];
    enter = new long[days.length + 1];
    leaveThatDay = new long[days.length + 1];
    value = new double[days.length + 1];
    for (HazardData.Stratum s : data.strata) {
      for (int i = 0; i < s.count.length; i++) {
        int out = number(s.exit[i]);
        leave[out] += s.count[i];
        enter[number(s.entry[i])] += s.count[i];
        if (out > 0 && days[out - 1] == s.exit[i]) {
          leaveThatDay[out] += s.count[i];
          failures[out] += s.failed[i] ? s.count[i] : 0;
        }
      }
    }
  }

  static HazardClock of(HazardData data, HazardTransform transform) {
    HazardClock clock = new HazardClock(data);
    switch (transform) {
      case KM -> clock.productLimit();
      case RANK -> clock.ranks();
      case IDENTITY -> System.arraycopy(clock.days, 0, clock.value, 1, clock.days.length);
      case LOG -> clock.logarithms();
    }
    clock.center();
    return clock;
  }

  private int number(double age) {
    int at = Arrays.binarySearch(days, age);
    return at >= 0 ? at + 1 : -at - 1;
  }

  private void productLimit() {
    long atRisk = 0;
    double survival = 1;
    for (int k = 1; k <= days.length; k++) {
      atRisk += enter[k - 1] - leave[k - 1];
      value[k] = 1 - survival;
      survival *= 1 - (double) failures[k] / atRisk;
    }
  }

  private void ranks() {
    double before = 0;
    for (int k = 1; k <= days.length; k++) {
      before += leave[k - 1];
      value[k] = before + (leaveThatDay[k] + 1) / 2.0;
    }
  }

  private void logarithms() {
    for (int k = 1; k <= days.length; k++) {
      value[k] = Math.log(days[k - 1]);
    }
  }

  private void center() {
    double sum = 0;
    double total = 0;
    for (int k = 1; k <= days.length; k++) {
      sum += failures[k] * value[k];
      total += failures[k];
    }
    for (int k = 1; k <= days.length; k++) {
      value[k] -= sum / total;
    }
  }

  /** Value on a failure day. */
  double at(double day) {
    return value[number(day)];
  }
}
