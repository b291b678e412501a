package pondtally.analysis;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import pondtally.stats.Bootstrap;
import pondtally.stats.IntervalDraws;
import pondtally.stats.IntervalEstimate;
import pondtally.stats.Limits;
import pondtally.stats.RiskTable;

/**
 * The interval estimate of one group with percentile limits from resamples of its clusters. The
 * limits are approximate: no theorem says that a bootstrap of this estimate covers as it should.
 * Simulated (see DEVELOPERS.md), they cover 94 to 96 per cent for 150 devices, 92 to 95 for 50.
 * They are widened to include the estimate, and with fewer than ten clusters there are none.
 */
final class IntervalCurve {

  private static final double LEVEL = 0.95;
  private static final int FEWEST_CLUSTERS = 10;

  /** Less than this the solver's tolerance may leave where there is none. */
  private static final double LEAST_MASS = 1e-9;

  private final IntervalEstimate estimate;
  private final IntervalEstimate coarse;
  private final RiskTable dated;
  private final double horizonDays;
  private final boolean limited;
  private final double[] days;
  private final double[][] shares;
  private final double[] means;

  /**
   * A figure with its error and limits.
   *
   * @param value not a number where nothing is known
   * @param stdError standard deviation over resamples; empty where they give none
   */
  record Figure(double value, OptionalDouble stdError, Limits limits) {}

  /**
   * Draws the resamples.
   *
   * @param coarse the estimate that is resampled, itself or one of rounded ends; its deviations are
   *     taken for those of the estimate
   * @param dated the same lives with failures dated, for how many were at risk
   * @param ages days at which figures will be asked for, beside the steps of the curve
   * @param horizonDays to which mean life is counted
   */
  IntervalCurve(
      IntervalEstimate estimate,
      IntervalEstimate coarse,
      RiskTable dated,
      IntervalDraws draws,
      long clusters,
      double[] ages,
      double horizonDays) {
    this.estimate = estimate;
    this.coarse = coarse;
    this.dated = dated;
    this.horizonDays = horizonDays;
    limited = clusters >= FEWEST_CLUSTERS;
    days =
        DoubleStream.concat(
                Arrays.stream(ages), steps().stream().mapToDouble(IntervalEstimate.Mass::rightDays))
            .sorted()
            .distinct()
            .toArray();
    shares = new double[limited ? draws.resamples() : 0][days.length];
    means = new double[shares.length];
    double[] fine = IntervalShares.at(estimate, days);
    double[] rough = IntervalShares.at(coarse, days);
    IntStream.range(0, shares.length)
        .parallel()
        .forEach(r -> resample(r, draws.weights(r), fine, rough));
  }

  private void resample(int r, double[] weights, double[] fine, double[] rough) {
    if (Arrays.stream(weights).sum() > 0) {
      IntervalEstimate resampled = coarse.reweighted(weights);
      double[] drawn = IntervalShares.at(resampled, days);
      for (int i = 0; i < days.length; i++) {
        shares[r][i] = Math.min(1, Math.max(0, drawn[i] + (fine[i] - rough[i])));
      }
      means[r] =
          IntervalShares.meanLife(resampled, horizonDays)
              + IntervalShares.meanLife(estimate, horizonDays)
              - IntervalShares.meanLife(coarse, horizonDays);
    } else {
      Arrays.fill(shares[r], Double.NaN);
      means[r] = Double.NaN;
    }
  }

  /** Innermost intervals in which the curve falls, in order of age. */
  List<IntervalEstimate.Mass> steps() {
    return estimate.masses().stream()
        .filter(mass -> mass.mass() > LEAST_MASS && mass.rightDays() < Double.POSITIVE_INFINITY)
        .toList();
  }

  /** Survival at a step's right end or one of the ages asked for, in days. */
  Figure survivalAt(double age) {
    double value = IntervalShares.at(estimate, age);
    long atRisk = dated.atRiskAt(age);
    if (value == 1 && atRisk > 0) {
      double lower = Math.pow((1 - LEVEL) / 2, 1.0 / atRisk);
      return new Figure(1, OptionalDouble.empty(), Limits.of(lower, 1));
    }
    int at = Arrays.binarySearch(days, age);
    return figure(value, Arrays.stream(shares).mapToDouble(drawn -> drawn[at]).toArray());
  }

  /** Mean life up to the horizon, in days. */
  Figure meanLife() {
    return figure(IntervalShares.meanLife(estimate, horizonDays), means);
  }

  private static Figure figure(double value, double[] drawn) {
    Bootstrap bootstrap = drawn.length == 0 ? null : Bootstrap.of(drawn, LEVEL);
    if (Double.isNaN(value) || bootstrap == null || !bootstrap.usable()) {
      return new Figure(value, OptionalDouble.empty(), Limits.none());
    }
    Limits limits = bootstrap.percentile();
    return new Figure(
        value,
        OptionalDouble.of(deviation(drawn)),
        Limits.of(
            Math.min(value, limits.lower().orElse(value)),
            Math.max(value, limits.upper().orElse(value))));
  }

  private static double deviation(double[] drawn) {
    double[] known = Arrays.stream(drawn).filter(Double::isFinite).toArray();
    double mean = Arrays.stream(known).sum() / known.length;
    double squares = Arrays.stream(known).map(value -> (value - mean) * (value - mean)).sum();
    return Math.sqrt(squares / Math.max(1, known.length - 1));
  }
}
