package pondtally.stats;

/**
 * The log partial likelihood at β, its gradient U and the information −d²ℓ/dβ² (Cox 1972; ties as
 * {@link HazardTies}).
 */
final class HazardLikelihood {
  private final double value;
  private final double[] score;
  private final double[][] information;

  private HazardLikelihood(double value, double[] score, double[][] information) {
    this.value = value;
    this.score = score;
    this.information = information;
  }

  static HazardLikelihood at(HazardData data, double[] beta, HazardTies ties) {
    int p = beta.length;
    double[] value = new double[1];
    double[] score = new double[p];
    double[][] information = new double[p][p];
    HazardSweep.over(
        data,
        beta,
        ties,
        (stratum, day, moments) -> {
          value[0] += moments.failedPredictor - moments.logPhi;
          for (int i = 0; i < p; i++) {
            score[i] += moments.failedX[i] - moments.meanSum(i);
            for (int j = 0; j <= i; j++) {
              information[i][j] += moments.covarianceSum(i, j);
            }
          }
        });
    for (int i = 0; i < p; i++) {
      for (int j = i + 1; j < p; j++) {
        information[i][j] = information[j][i];
      }
    }
    return new HazardLikelihood(value[0], score, information);
  }

  /** Whether the likelihood and its derivatives are numbers. */
  boolean finite() {
    boolean finite = Double.isFinite(value);
    for (int i = 0; i < score.length; i++) {
      finite &= Double.isFinite(score[i]);
      for (double entry : information[i]) {
        finite &= Double.isFinite(entry);
      }
    }
    return finite;
  }

  /** Log partial likelihood. */
  double value() {
    return value;
  }

  /** Gradient; not to be changed. */
  double[] score() {
    return score;
  }

  /** Square, symmetric; not to be changed. */
  double[][] information() {
    return information;
  }
}
