package pondtally.stats;

import java.util.Arrays;

/**
 * Sums over the lives at risk on one failure day, and over those that fail on it: Σθ, Σθx, Σθxxᵀ
 * with θ = exp(xβ), and what the treatment of ties makes of them. Matrices hold the lower triangle,
 * row by row.
 *
 * <p>With d failures on the day, risk sets φ_k = Σθ − a_k Σ_failed θ, a_k = k/d for k = 0..d−1
 * (Efron 1977) or a_k = 0 (Breslow 1974).
 */
final class HazardMoments {
  final int p;
  final boolean efron;
  double risk0;
  final double[] risk1;
  final double[] risk2;
  double failed0;
  final double[] failed1;
  final double[] failed2;

  /** Σ x and Σ xβ over the failures, and their number d. */
  final double[] failedX;

  double failedPredictor;
  long failures;

  /** Σ log φ_k, then Σ a^r/φ and Σ a^r/φ² for r = 0, 1, 2. */
  double logPhi;

  final double[] inverse = new double[2];
  final double[] square = new double[3];

  private final int[] used;
  private final double[] usedX;

  HazardMoments(int p, HazardTies ties) {
    this.p = p;
    efron = ties == HazardTies.EFRON;
    risk1 = new double[p];
    failed1 = new double[p];
    failedX = new double[p];
    risk2 = new double[p * (p + 1) / 2];
    failed2 = new double[p * (p + 1) / 2];
    used = new int[p];
    usedX = new double[p];
  }

  void clearRisk() {
    risk0 = 0;
    Arrays.fill(risk1, 0);
    Arrays.fill(risk2, 0);
  }

  void clearFailed() {
    failed0 = 0;
    failures = 0;
    failedPredictor = 0;
    Arrays.fill(failed1, 0);
    Arrays.fill(failed2, 0);
    Arrays.fill(failedX, 0);
  }

  /** Adds lives to the risk set; a negative weight takes them out. */
  void addRisk(double weight, double[] x) {
    risk0 += weight;
    addTo(risk1, risk2, weight, x);
  }

  void addFailed(long count, double predictor, double theta, double[] x) {
    failures += count;
    failedPredictor += count * predictor;
    failed0 += count * theta;
    addTo(failed1, failed2, count * theta, x);
    for (int j = 0; j < p; j++) {
      failedX[j] += count * x[j];
    }
  }

  private void addTo(double[] first, double[] second, double weight, double[] x) {
    int n = 0;
    for (int j = 0; j < p; j++) {
      if (x[j] != 0) {
        used[n] = j;
        usedX[n++] = x[j];
      }
    }
    for (int a = 0; a < n; a++) {
      double wx = weight * usedX[a];
      int row = used[a] * (used[a] + 1) / 2;
      first[used[a]] += wx;
      for (int b = 0; b <= a; b++) {
        second[row + used[b]] += wx * usedX[b];
      }
    }
  }

  /** Works out the sums over tied failures. */
  void settle() {
    logPhi = 0;
    Arrays.fill(inverse, 0);
    Arrays.fill(square, 0);
    if (!efron || failures == 1) {
      logPhi = failures * Math.log(risk0);
      inverse[0] = failures / risk0;
      square[0] = failures / (risk0 * risk0);
      return;
    }
    for (long k = 0; k < failures; k++) {
      double a = (double) k / failures;
      double phi = risk0 - a * failed0;
      double f = 1 / phi;
      logPhi += Math.log(phi);
      inverse[0] += f;
      inverse[1] += a * f;
      square[0] += f * f;
      square[1] += a * f * f;
      square[2] += a * a * f * f;
    }
  }

  /** Σ_k of the mean covariate in risk set k. */
  double meanSum(int j) {
    return risk1[j] * inverse[0] - failed1[j] * inverse[1];
  }

  /** Σ_k of the covariance of covariates i and j ≤ i in risk set k. */
  double covarianceSum(int i, int j) {
    int at = i * (i + 1) / 2 + j;
    return risk2[at] * inverse[0]
        - failed2[at] * inverse[1]
        - risk1[i] * risk1[j] * square[0]
        + (risk1[i] * failed1[j] + failed1[i] * risk1[j]) * square[1]
        - failed1[i] * failed1[j] * square[2];
  }
}
