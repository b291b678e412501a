package pondtally.stats;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;

/**
 * Inverts symmetric information matrices; directions without information are left out
 * (Moore-Penrose) instead of blowing up.
 */
final class HazardInverse {
  private static final double NOTHING = 1e-13;

  private HazardInverse() {}

  /** The inverse, worked out on the scale of unit diagonals. */
  static double[][] of(double[][] matrix) {
    int n = matrix.length;
    double[][] scaled = new double[n][n];
    double[] size = new double[n];
    for (int i = 0; i < n; i++) {
      size[i] = matrix[i][i] > 0 ? Math.sqrt(matrix[i][i]) : 1;
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        scaled[i][j] = matrix[i][j] / (size[i] * size[j]);
      }
    }
    double[][] inverse = new double[n][n];
    if (n > 0) {
      invert(
          new EigenDecompositionSymmetric(new Array2DRowRealMatrix(scaled, false)), size, inverse);
    }
    return inverse;
  }

  private static void invert(EigenDecompositionSymmetric eigen, double[] size, double[][] inverse) {
    double largest = eigen.getEigenvalue(0);
    for (int k = 0; k < size.length; k++) {
      double value = eigen.getEigenvalue(k);
      if (value > NOTHING * largest) {
        double[] v = eigen.getEigenvector(k).toArray();
        for (int i = 0; i < size.length; i++) {
          for (int j = 0; j < size.length; j++) {
            inverse[i][j] += v[i] / size[i] * (v[j] / size[j]) / value;
          }
        }
      }
    }
  }

  /** A matrix times a vector. */
  static double[] times(double[][] matrix, double[] vector) {
    double[] product = new double[matrix.length];
    for (int i = 0; i < product.length; i++) {
      for (int j = 0; j < vector.length; j++) {
        product[i] += matrix[i][j] * vector[j];
      }
    }
    return product;
  }

  /** vᵀ M v. */
  static double form(double[][] matrix, double[] vector) {
    double sum = 0;
    double[] product = times(matrix, vector);
    for (int i = 0; i < vector.length; i++) {
      sum += vector[i] * product[i];
    }
    return sum;
  }

  /** The rows and columns of the given numbers. */
  static double[][] part(double[][] matrix, int[] chosen) {
    double[][] part = new double[chosen.length][chosen.length];
    for (int i = 0; i < chosen.length; i++) {
      for (int j = 0; j < chosen.length; j++) {
        part[i][j] = matrix[chosen[i]][chosen[j]];
      }
    }
    return part;
  }

  static double[] part(double[] vector, int[] chosen) {
    double[] part = new double[chosen.length];
    for (int i = 0; i < chosen.length; i++) {
      part[i] = vector[chosen[i]];
    }
    return part;
  }
}
