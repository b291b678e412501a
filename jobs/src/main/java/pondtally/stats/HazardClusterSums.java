package pondtally.stats;

import java.io.Serializable;
import java.util.Arrays;

/**
 * Sums over clusters of U and UUᵀ, U being a cluster's score (sum of {@link HazardScores} over its
 * lives): what errors that allow for likeness within clusters need (Lin &amp; Wei 1989). Sums are
 * {@link ExactSum}s, so parts merge in any order to the same bits.
 */
public final class HazardClusterSums implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] scale;
  private final ExactSum[] first;
  private final ExactSum[] second;
  private long clusters;

  private HazardClusterSums(double[] scale) {
    this.scale = scale;
    first = sums(scale.length);
    second = sums(scale.length * scale.length);
  }

  private static ExactSum[] sums(int size) {
    ExactSum[] sums = new ExactSum[size];
    Arrays.setAll(sums, i -> new ExactSum());
    return sums;
  }

  /** An accumulator without clusters for the scores of a fit. */
  public static HazardClusterSums of(HazardScores scores) {
    return new HazardClusterSums(scores.scale());
  }

  /**
   * Adds a whole cluster.
   *
   * @param score the sum of the scores of all its lives; a cluster must not be split over two calls
   */
  public HazardClusterSums add(double[] score) {
    for (int i = 0; i < scale.length; i++) {
      first[i].add(score[i] / scale[i]);
      for (int j = 0; j < scale.length; j++) {
        second[i * scale.length + j].add(score[i] / scale[i] * (score[j] / scale[j]));
      }
    }
    clusters++;
    return this;
  }

  /** Adds another accumulator's clusters. */
  public HazardClusterSums merge(HazardClusterSums other) {
    Arrays.setAll(first, i -> first[i].merge(other.first[i]));
    Arrays.setAll(second, i -> second[i].merge(other.second[i]));
    clusters += other.clusters;
    return this;
  }

  /** Number of clusters. */
  public long clusters() {
    return clusters;
  }

  /** Σ U over clusters; near 0 at the fitted β. */
  double[] sum() {
    double[] sum = new double[scale.length];
    for (int i = 0; i < sum.length; i++) {
      sum[i] = first[i].result() * scale[i];
    }
    return sum;
  }

  /** Σ UUᵀ over clusters. */
  double[][] products() {
    int p = scale.length;
    double[][] products = new double[p][p];
    for (int i = 0; i < p; i++) {
      for (int j = 0; j < p; j++) {
        products[i][j] = second[i * p + j].result() * scale[i] * scale[j];
      }
    }
    return products;
  }
}
