package pondtally.analysis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import pondtally.stats.HazardDesign;
import pondtally.stats.HazardPatterns;
import pondtally.stats.HazardTies;
import pondtally.stats.ProportionalHazards;

/**
 * What the figures of a very large program tend to when failures are dated by the visit that found
 * them. Counted here without the tallies; the hazard ratio alone is fitted, by the fit that is
 * checked against published values.
 */
final class SimulatedTruth {

  private static final List<String> PIPES = List.of("dual 10 in", "dual 12 in", "dual 15 in");
  private static final int MOST_DAYS = 4000;

  private final int[] found = new int[MOST_DAYS];
  private final int[] foundAgain = new int[MOST_DAYS];
  private final int[] left = new int[MOST_DAYS];
  private final int[] last = new int[MOST_DAYS];
  private final HazardDesign design =
      HazardDesign.empty().withFactor("pipe", PIPES.get(0), PIPES.subList(1, 3));
  private final HazardPatterns patterns = HazardPatterns.ofColumns(2);
  private final Map<String, Double> logRatios = new HashMap<>();
  private final Map<String, double[]> failuresAndDays = new HashMap<>();

  static SimulatedTruth of(SimulatedSites kind, int sites, long seed) {
    SimulatedTruth truth = new SimulatedTruth();
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < sites; i++) {
      kind.draw(random).devices().forEach(truth::count);
    }
    truth.logRatios.put(PIPES.get(0), 0.0);
    ProportionalHazards.fit(truth.patterns, truth.design, HazardTies.EFRON)
        .terms()
        .forEach(
            term ->
                truth.logRatios.put(
                    term.column().level(), term.estimate().orElseThrow().coefficient()));
    return truth;
  }

  private void count(SimulatedProgram.Standing device) {
    SimulatedProgram.Drawn drawn = device.drawn();
    if (drawn.lastAge() == 0) {
      return;
    }
    int age = drawn.foundAge();
    int exit = age > 0 ? age : drawn.lastAge();
    left[exit]++;
    last[drawn.lastAge()]++;
    if (age > 0) {
      found[age]++;
    }
    for (int i = 0; i < drawn.failed().length; i++) {
      if (drawn.failed()[i]) {
        foundAgain[drawn.visitAges()[i]]++;
      }
    }
    String pipe = "dual " + Math.round(device.diameterIn()) + " in";
    for (String group : List.of("all", pipe)) {
      double[] sums = failuresAndDays.computeIfAbsent(group, k -> new double[2]);
      sums[0] += drawn.failures();
      sums[1] += drawn.upDays();
    }
    patterns.add("", design.encode(pipe), 0, exit, age > 0, 1);
  }

  /** Share not yet found failed at an age in days. */
  double notFound(double days) {
    double share = 1;
    long watched = sum(left);
    for (int day = 1; day <= days; day++) {
      share *= 1 - (double) found[day] / watched;
      watched -= left[day];
    }
    return share;
  }

  /** Age in days by which half have been found failed. */
  double medianDays() {
    int day = 1;
    while (notFound(day) > 0.5) {
      day++;
    }
    return day;
  }

  /** Failures found by an age in days, a device. */
  double meanFailures(double days) {
    double mean = 0;
    long watched = sum(last);
    for (int day = 1; day <= days; day++) {
      mean += (double) foundAgain[day] / watched;
      watched -= last[day];
    }
    return mean;
  }

  /** Failures per 100 device-years of all devices or of a pipe type. */
  double per100DeviceYears(String group) {
    double[] sums = failuresAndDays.get(group);
    return 100 * sums[0] / (sums[1] / Years.DAYS);
  }

  /** Ratio of the failure rates of two pipe types. */
  double hazardRatio(String level, String reference) {
    return Math.exp(logRatios.get(level) - logRatios.get(reference));
  }

  private static long sum(int[] counts) {
    long sum = 0;
    for (int count : counts) {
      sum += count;
    }
    return sum;
  }
}
