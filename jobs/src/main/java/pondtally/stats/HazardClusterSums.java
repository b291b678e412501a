package pondtally.stats;

import java.io.Serializable;

/**
 * Sums over clusters of U and UUᵀ, U being a cluster's score (sum of {@link HazardScores} over its
 * lives): what errors that allow for likeness within clusters need (Lin &amp; Wei 1989). Sums are
 * exact to 2^-62 of a unit covariate, so parts merge in any order to the same bits.
 */
public final class HazardClusterSums implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] scale;
  private final HazardExactSum first;
  private final HazardExactSum second;
  private long clusters;

  private HazardClusterSums(double[] scale) {
    this.scale = scale;
    first = new HazardExactSum(scale.length);
    second = new HazardExactSum(scale.length * scale.length);
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
      first.add(i, score[i] / scale[i]);
      for (int j = 0; j < scale.length; j++) {
        second.add(i * scale.length + j, score[i] / scale[i] * (score[j] / scale[j]));
      }
    }
    clusters++;
    return this;
  }

  /** Adds another accumulator's clusters. */
  public HazardClusterSums merge(HazardClusterSums other) {
    first.add(other.first);
    second.add(other.second);
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
      sum[i] = first.get(i) * scale[i];
    }
    return sum;
  }

  /** Σ UUᵀ over clusters. */
  double[][] products() {
    int p = scale.length;
    double[][] products = new double[p][p];
    for (int i = 0; i < p; i++) {
      for (int j = 0; j < p; j++) {
        products[i][j] = second.get(i * p + j) * scale[i] * scale[j];
      }
    }
    return products;
  }
}
