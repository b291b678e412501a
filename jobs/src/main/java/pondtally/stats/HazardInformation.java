package pondtally.stats;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;

/**
 * What the information at the maximum says about each coefficient, measured against the information
 * at β = 0. A direction in which next to nothing is left is one along which the likelihood keeps
 * rising, or that lost its meaning with one that does; a coefficient is estimable only if it has no
 * part in such a direction.
 */
final class HazardInformation {
  private static final double PART = 1e-3;

  private final int size;
  private final double[][] covariance;
  private final boolean[] lost;

  private HazardInformation(int size) {
    this.size = size;
    covariance = new double[size][size];
    lost = new boolean[size];
  }

  /**
   * Judges the directions.
   *
   * @param atZero information at β = 0, of full rank
   * @param atMaximum information at the maximum
   * @param least share of the former below which a direction counts as empty
   */
  static HazardInformation of(double[][] atZero, double[][] atMaximum, double least) {
    int n = atZero.length;
    HazardInformation result = new HazardInformation(n);
    if (n > 0) {
      double[] scale = new double[n];
      for (int i = 0; i < n; i++) {
        scale[i] = 1 / Math.sqrt(atZero[i][i]);
      }
      double[][] white = whitening(atZero, scale);
      EigenDecompositionSymmetric eigen = eigen(seenFrom(white, atMaximum));
      for (int k = 0; k < n; k++) {
        double[] direction = HazardInverse.times(white, eigen.getEigenvector(k).toArray());
        result.take(direction, eigen.getEigenvalue(k), scale, least);
      }
    }
    return result;
  }

  private static EigenDecompositionSymmetric eigen(double[][] matrix) {
    return new EigenDecompositionSymmetric(new Array2DRowRealMatrix(matrix, false));
  }

  /** W with Wᵀ (information at 0) W = 1. */
  private static double[][] whitening(double[][] information, double[] scale) {
    int n = scale.length;
    double[][] unit = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        unit[i][j] = information[i][j] * scale[i] * scale[j];
      }
    }
    EigenDecompositionSymmetric eigen = eigen(unit);
    double[][] white = new double[n][n];
    for (int k = 0; k < n; k++) {
      double[] v = eigen.getEigenvector(k).toArray();
      for (int i = 0; i < n; i++) {
        white[i][k] = scale[i] * v[i] / Math.sqrt(eigen.getEigenvalue(k));
      }
    }
    return white;
  }

  /** Wᵀ M W, made exactly symmetric. */
  private static double[][] seenFrom(double[][] white, double[][] matrix) {
    int n = white.length;
    List<double[]> columns = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      double[] column = new double[n];
      for (int i = 0; i < n; i++) {
        column[i] = white[i][k];
      }
      columns.add(column);
    }
    double[][] seen = new double[n][n];
    for (int k = 0; k < n; k++) {
      double[] product = HazardInverse.times(matrix, columns.get(k));
      for (int l = 0; l <= k; l++) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
          sum += columns.get(l)[i] * product[i];
        }
        seen[k][l] = sum;
        seen[l][k] = sum;
      }
    }
    return seen;
  }

  private void take(double[] direction, double left, double[] scale, double least) {
    if (left > least) {
      for (int i = 0; i < size; i++) {
        for (int j = 0; j < size; j++) {
          covariance[i][j] += direction[i] * direction[j] / left;
        }
      }
      return;
    }
    double longest = 0;
    for (int i = 0; i < size; i++) {
      longest = Math.max(longest, Math.abs(direction[i] / scale[i]));
    }
    for (int i = 0; i < size; i++) {
      lost[i] |= Math.abs(direction[i] / scale[i]) > PART * longest;
    }
  }

  /**
   * Inverse of the information over the directions that hold some; right for coefficients that are
   * not lost.
   */
  double[][] covariance() {
    return covariance;
  }

  /** Whether a coefficient has a part in an empty direction. */
  boolean lost(int i) {
    return lost[i];
  }
}
