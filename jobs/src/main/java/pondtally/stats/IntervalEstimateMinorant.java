package pondtally.stats;

/**
 * The convex-minorant step: the non-falling, non-negative z that maximizes Σ slope_j (z_j − x_j) −
 * ½ Σ bend_j (z_j − x_j)², by pooling adjacent violators (Ayer et al. 1955; Groeneboom &amp;
 * Wellner 1992).
 */
final class IntervalEstimateMinorant {
  private IntervalEstimateMinorant() {}

  static double[] target(double[] x, double[] slope, double[] bend) {
    int m = x.length - 1;
    double floor = floor(bend);
    double[] weight = new double[m];
    double[] pull = new double[m];
    int[] end = new int[m];
    int blocks = 0;
    for (int j = 1; j <= m; j++) {
      weight[blocks] = Math.max(bend[j], floor);
      pull[blocks] = weight[blocks] * x[j] + slope[j];
      end[blocks++] = j;
      while (blocks > 1
          && pull[blocks - 2] * weight[blocks - 1] >= pull[blocks - 1] * weight[blocks - 2]) {
        blocks--;
        weight[blocks - 1] += weight[blocks];
        pull[blocks - 1] += pull[blocks];
        end[blocks - 1] = end[blocks];
      }
    }
    double[] z = new double[m + 1];
    int j = 1;
    for (int b = 0; b < blocks; b++) {
      double level = Math.max(0, pull[b] / weight[b]);
      for (; j <= end[b]; j++) {
        z[j] = level;
      }
    }
    return z;
  }

  /** Boundaries met by no failure have no curvature; a small one keeps the step finite. */
  private static double floor(double[] bend) {
    double sum = 0;
    for (double b : bend) {
      sum += b;
    }
    return Math.max(1e-9 * sum / bend.length, Double.MIN_NORMAL);
  }
}
