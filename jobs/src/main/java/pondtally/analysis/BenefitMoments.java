package pondtally.analysis;

import java.io.Serializable;
import java.util.OptionalDouble;
import pondtally.stats.ExactSum;

/**
 * Acceleration of BCa limits of a ratio of sums, in one pass: with influence L = (b − R·c) of each
 * cluster, a = ΣL³ / (6 (ΣL²)^1.5), and the sums of powers of L follow from those of b and c.
 * Source: Efron 1987 (empirical influence); Davison &amp; Hinkley 1997, section 5.3.
 */
final class BenefitMoments implements Serializable {

  private static final long serialVersionUID = 1;

  /** Keeps third powers of billions of dollars within the range of exact sums. */
  private static final double SCALE = 1e-4;

  /** Sums of b^i·c^j at [i][j], i + j being 2 or 3. */
  private final ExactSum[][] sums = new ExactSum[4][4];

  BenefitMoments() {
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        sums[i][j] = new ExactSum();
      }
    }
  }

  void add(double numeratorUsd, double denominatorUsd) {
    double b = numeratorUsd * SCALE;
    double c = denominatorUsd * SCALE;
    for (int degree = 2; degree <= 3; degree++) {
      for (int i = 0; i <= degree; i++) {
        sums[i][degree - i].add(Math.pow(b, i) * Math.pow(c, degree - i));
      }
    }
  }

  void merge(BenefitMoments other) {
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        sums[i][j].merge(other.sums[i][j]);
      }
    }
  }

  /** Acceleration for the ratio in all the data; empty where every cluster has that ratio. */
  OptionalDouble acceleration(double ratio) {
    double squares = sum(2, 0) - 2 * ratio * sum(1, 1) + ratio * ratio * sum(0, 2);
    double cubes =
        sum(3, 0)
            - 3 * ratio * sum(2, 1)
            + 3 * ratio * ratio * sum(1, 2)
            - Math.pow(ratio, 3) * sum(0, 3);
    boolean varies = squares > 1e-12 * (sum(2, 0) + ratio * ratio * sum(0, 2));
    return varies
        ? OptionalDouble.of(cubes / (6 * Math.pow(squares, 1.5)))
        : OptionalDouble.empty();
  }

  private double sum(int b, int c) {
    return sums[b][c].result();
  }
}
