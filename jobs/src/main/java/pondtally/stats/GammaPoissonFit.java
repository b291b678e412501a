package pondtally.stats;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Maximum likelihood of the gamma-Poisson model with mean m = ν/α: for each shape ν the best m has
 * Σ (O − mE)/(ν + mE) = 0, which falls in m; over ν the derivative of that profile is followed on a
 * grid of ln ν and each change from rising to falling halved down. With no such change, or none
 * better than the Poisson model, there is no variance between groups.
 */
final class GammaPoissonFit {
  private static final double FIRST_LOG_SHAPE = Math.log(1e-4);
  private static final double LAST_LOG_SHAPE = Math.log(1e8);
  private static final int GRID = 112;
  private static final int HALVINGS = 200;

  private final long[] observed;
  private final double[] expected;
  private final double sumObserved;
  private final double sumExpected;

  private GammaPoissonFit(long[] observed, double[] expected) {
    this.observed = observed;
    this.expected = expected;
    double sumO = 0;
    double sumE = 0;
    for (int i = 0; i < observed.length; i++) {
      if (observed[i] < 0 || !(expected[i] >= 0) || (expected[i] == 0 && observed[i] > 0)) {
        throw new IllegalArgumentException(
            "observed " + observed[i] + " where " + expected[i] + " were expected");
      }
      sumO += observed[i];
      sumE += expected[i];
    }
    this.sumObserved = sumO;
    this.sumExpected = sumE;
  }

  static GammaPoissonFit of(long[] observed, double[] expected) {
    if (observed.length != expected.length) {
      throw new IllegalArgumentException(
          observed.length + " observed counts, " + expected.length + " expected");
    }
    return new GammaPoissonFit(observed, expected);
  }

  OptionalDouble pooled() {
    return sumExpected > 0 ? OptionalDouble.of(sumObserved / sumExpected) : OptionalDouble.empty();
  }

  /** ν at the highest maximum; empty if no variance between groups is as likely. */
  OptionalDouble shape() {
    OptionalDouble best = OptionalDouble.empty();
    if (!(sumObserved > 0)) {
      return best;
    }
    double highest = 1e-9;
    double step = (LAST_LOG_SHAPE - FIRST_LOG_SHAPE) / GRID;
    double before = slope(FIRST_LOG_SHAPE);
    for (int i = 1; i <= GRID; i++) {
      double at = FIRST_LOG_SHAPE + i * step;
      double slope = slope(at);
      if (before > 0 && slope <= 0) {
        double shape = Math.exp(root(this::slope, at - step, at));
        double gain = gainOverPoisson(shape);
        if (gain > highest) {
          highest = gain;
          best = OptionalDouble.of(shape);
        }
      }
      before = slope;
    }
    return best;
  }

  /** The best m for a shape. */
  double mean(double shape) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int i = 0; i < observed.length; i++) {
      if (expected[i] > 0) {
        least = Math.min(least, observed[i] / expected[i]);
        most = Math.max(most, observed[i] / expected[i]);
      }
    }
    return least == most ? least : root(m -> meanScore(shape, m), least, most);
  }

  private double meanScore(double shape, double mean) {
    double sum = 0;
    for (int i = 0; i < observed.length; i++) {
      sum += (observed[i] - mean * expected[i]) / (shape + mean * expected[i]);
    }
    return sum;
  }

  /** Derivative of the profile log-likelihood with respect to ν. */
  private double slope(double logShape) {
    double shape = Math.exp(logShape);
    double mean = mean(shape);
    double sum = 0;
    for (int i = 0; i < observed.length; i++) {
      double mu = mean * expected[i];
      // ψ(O + ν) − ψ(ν), term by term: exact for whole O.
      for (long k = 0; k < observed[i]; k++) {
        sum += 1 / (shape + k);
      }
      sum += (mu - observed[i]) / (shape + mu) - Math.log1p(mu / shape);
    }
    return sum;
  }

  /** Log-likelihood less that of the Poisson model with the pooled ratio. */
  private double gainOverPoisson(double shape) {
    double mean = mean(shape);
    double pooled = sumObserved / sumExpected;
    double sum = 0;
    for (int i = 0; i < observed.length; i++) {
      double mu = mean * expected[i];
      for (long k = 0; k < observed[i]; k++) {
        sum += Math.log((shape + k) / (shape + mu)) + Math.log(mean / pooled);
      }
      sum += pooled * expected[i] - shape * Math.log1p(mu / shape);
    }
    return sum;
  }

  /** Where a falling function passes 0, by halving to the last bit. */
  private static double root(DoubleUnaryOperator falling, double from, double to) {
    double low = from;
    double high = to;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (middle <= low || middle >= high) {
        break;
      }
      if (falling.applyAsDouble(middle) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
