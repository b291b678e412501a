package pondtally.stats;

/**
 * A symmetric positive matrix whose rows are kept from their first non-zero entry to the diagonal
 * (an envelope), and its Cholesky solution. Intervals join only boundaries that lie within one
 * visit gap, so rows are short.
 */
final class IntervalEstimateBand {
  /**
   * Added to each diagonal entry, as a share of it, so that directions without information stay
   * solvable.
   */
  private static final double RIDGE = 1e-11;

  /**
   * Least diagonal entry, as a share of the mean one: a level without curvature moves far but not
   * without end.
   */
  private static final double LEAST = 1e-10;

  private final int[] first;
  private final double[][] row;

  /** Row k runs from column first[k] to column k. */
  IntervalEstimateBand(int[] first) {
    this.first = first;
    row = new double[first.length][];
    for (int k = 0; k < first.length; k++) {
      row[k] = new double[k - first[k] + 1];
    }
  }

  /** Multiplications that factoring an envelope costs, roughly. */
  static double cost(int[] first) {
    double cost = 0;
    for (int k = 0; k < first.length; k++) {
      double width = k - first[k] + 1.0;
      cost += width * width / 2;
    }
    return cost;
  }

  /** Adds c(e_b − e_a)(e_b − e_a)ᵀ; levels count from 1, and level 0 is the fixed ground. */
  void link(int a, int b, double c) {
    add(b - 1, b - 1, c);
    if (a > 0) {
      add(a - 1, a - 1, c);
      add(b - 1, a - 1, -c);
    }
  }

  private void add(int i, int j, double c) {
    row[i][j - first[i]] += c;
  }

  /** Solves this · d = slope in place; the matrix is replaced by its factor. */
  void solve(double[] slope) {
    int n = row.length;
    double least = LEAST * meanDiagonal();
    for (int i = 0; i < n; i++) {
      factorRow(i, least);
      slope[i] = (slope[i] - dot(i, first[i], slope)) / row[i][i - first[i]];
    }
    for (int i = n - 1; i >= 0; i--) {
      slope[i] /= row[i][i - first[i]];
      for (int j = first[i]; j < i; j++) {
        slope[j] -= row[i][j - first[i]] * slope[i];
      }
    }
  }

  private double meanDiagonal() {
    double sum = Double.MIN_NORMAL;
    for (double[] r : row) {
      sum += r[r.length - 1] / row.length;
    }
    return sum;
  }

  private void factorRow(int i, double least) {
    double[] r = row[i];
    double diagonal = Math.max(r[i - first[i]], least);
    double pivot = diagonal * (1 + RIDGE);
    for (int j = first[i]; j < i; j++) {
      double[] q = row[j];
      int start = Math.max(first[i], first[j]);
      double sum = r[j - first[i]];
      for (int k = start; k < j; k++) {
        sum -= r[k - first[i]] * q[k - first[j]];
      }
      double l = sum / q[j - first[j]];
      r[j - first[i]] = l;
      pivot -= l * l;
    }
    r[i - first[i]] = Math.sqrt(Math.max(pivot, diagonal * RIDGE));
  }

  private double dot(int i, int from, double[] v) {
    double sum = 0;
    for (int j = from; j < i; j++) {
      sum += row[i][j - first[i]] * v[j];
    }
    return sum;
  }
}
