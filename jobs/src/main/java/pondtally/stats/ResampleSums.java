package pondtally.stats;

import java.io.Serializable;
import java.util.Arrays;

/**
 * Totals of some measures over all clusters, and the same totals in every bootstrap resample, in
 * one pass and without a copy of the data: each cluster's values are added as often as its {@link
 * PoissonWeights} say. Mergeable, and the same to the last bit in any order; rounding and range of
 * a total are those of {@link ExactSum}.
 *
 * <p>Assumes that clusters are independent of each other. Takes 16 bytes for each measure and
 * resample. With W the sum of weights of a resample, totals vary with W as they would if the number
 * of clusters were random; ratios and means do not.
 */
public final class ResampleSums implements Serializable {
  private static final long serialVersionUID = 1;
  private static final int MOST_WEIGHT = 20;

  private final long seed;
  private final int resamples;
  private final int measures;
  private final ExactCells cells;
  private long clusters;

  private ResampleSums(long seed, int measures, int resamples) {
    this.seed = seed;
    this.measures = measures;
    this.resamples = resamples;
    this.cells = new ExactCells(Math.multiplyExact(measures, resamples + 1));
  }

  /**
   * Empty sums.
   *
   * @param seed of the weights
   * @param measures how many values each cluster has, at least 1
   * @param resamples how many, 0 or more
   */
  public static ResampleSums of(long seed, int measures, int resamples) {
    if (measures < 1 || resamples < 0) {
      throw new IllegalArgumentException(measures + " measures, " + resamples + " resamples");
    }
    return new ResampleSums(seed, measures, resamples);
  }

  /**
   * Adds a cluster's values, one for each measure; each cluster once. Returns this. Throws
   * ArithmeticException for NaN, infinite or huge values, as {@link ExactSum#add(double)}.
   */
  public ResampleSums add(String cluster, double... values) {
    if (values.length != measures) {
      throw new IllegalArgumentException(values.length + " values for " + measures + " measures");
    }
    byte[] weights = new byte[resamples];
    PoissonWeights.of(seed, cluster).fill(weights);
    Multiples[] multiples = new Multiples[measures];
    Arrays.setAll(multiples, m -> new Multiples(values[m]));
    for (int m = 0; m < measures; m++) {
      if (values[m] != 0) {
        addMeasure(m * (resamples + 1), multiples[m], weights);
      }
    }
    clusters++;
    return this;
  }

  private void addMeasure(int from, Multiples value, byte[] weights) {
    cells.add(from, value.high[1], value.low[1]);
    for (int r = 0; r < resamples; r++) {
      cells.add(from + 1 + r, value.high[weights[r]], value.low[weights[r]]);
    }
  }

  /** Adds all clusters of another with the same seed and sizes. Returns this. */
  public ResampleSums merge(ResampleSums other) {
    if (other.seed != seed || other.measures != measures || other.resamples != resamples) {
      throw new IllegalArgumentException(
          "sums with another seed, measures or resamples cannot be merged");
    }
    cells.merge(other.cells);
    clusters += other.clusters;
    return this;
  }

  /** Clusters added. */
  public long clusters() {
    return clusters;
  }

  /** Resamples kept. */
  public int resamples() {
    return resamples;
  }

  /** Total of a measure in the data themselves. */
  public double total(int measure) {
    return result(measure, 0);
  }

  /** Total of a measure in resample r, counted from 0. */
  public double total(int measure, int resample) {
    return result(measure, resample + 1);
  }

  private double result(int measure, int column) {
    return cells.result(measure * (resamples + 1) + column);
  }

  /** The ratio of two measures in every resample; undefined where the denominator is 0. */
  public Bootstrap ratio(int numerator, int denominator, double level) {
    double[] ratios = new double[resamples];
    for (int r = 0; r < resamples; r++) {
      double below = total(denominator, r);
      ratios[r] = below == 0 ? Double.NaN : total(numerator, r) / below;
    }
    return Bootstrap.of(ratios, level);
  }

  /** 0, 1, … 20 times a value, in units of 2⁻⁴⁰. */
  private static final class Multiples {
    private final long[] high = new long[MOST_WEIGHT + 1];
    private final long[] low = new long[MOST_WEIGHT + 1];

    Multiples(double value) {
      for (int times = 1; times <= MOST_WEIGHT && value != 0; times++) {
        ExactSum sum = new ExactSum().add(value, times);
        high[times] = sum.high();
        low[times] = sum.low();
      }
    }
  }
}
