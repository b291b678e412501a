package pondtally.stats;

/**
 * u′V⁻u for a covariance matrix that may be singular, with its rank: by Cholesky's factors, taking
 * at each step the variable of which most is left unexplained by those taken before, until nothing
 * is. The value does not depend on the choice because u lies in the range of V.
 */
final class QuadraticForm {
  private static final double UNEXPLAINED = 1e-10;

  private final double value;
  private final int rank;

  private QuadraticForm(double value, int rank) {
    this.value = value;
    this.rank = rank;
  }

  static QuadraticForm of(double[] u, double[][] covariance) {
    int n = u.length;
    double[] rest = u.clone();
    double[][] v = new double[n][];
    for (int i = 0; i < n; i++) {
      v[i] = covariance[i].clone();
    }
    boolean[] taken = new boolean[n];
    double value = 0;
    int rank = 0;
    for (int p = next(v, covariance, taken); p >= 0; p = next(v, covariance, taken)) {
      value += rest[p] * rest[p] / v[p][p];
      rank++;
      taken[p] = true;
      sweep(v, rest, taken, p);
    }
    return new QuadraticForm(value, rank);
  }

  private static int next(double[][] v, double[][] original, boolean[] taken) {
    int best = -1;
    double most = UNEXPLAINED;
    for (int i = 0; i < v.length; i++) {
      double left = taken[i] || !(original[i][i] > 0) ? 0 : v[i][i] / original[i][i];
      if (left > most) {
        most = left;
        best = i;
      }
    }
    return best;
  }

  private static void sweep(double[][] v, double[] rest, boolean[] taken, int p) {
    for (int i = 0; i < rest.length; i++) {
      if (!taken[i]) {
        double factor = v[i][p] / v[p][p];
        rest[i] -= factor * rest[p];
        for (int j = 0; j < rest.length; j++) {
          v[i][j] -= factor * v[p][j];
        }
      }
    }
  }

  double value() {
    return value;
  }

  int rank() {
    return rank;
  }
}
