package pondtally.stats;

/**
 * Newton's iteration with step halving for the partial likelihood, which is concave. A coefficient
 * without a finite maximum shows by moving on in equal steps while the likelihood no longer
 * changes; at a finite maximum steps shrink quadratically.
 */
final class HazardNewton {
  private static final int MOST_ITERATIONS = 80;
  private static final double CONVERGED = 1e-25;
  private static final double CONVERGED_AT_INFINITY = 1e-16;
  private static final int RUNAWAY_STEPS = 5;
  private static final double LONGEST_STEP = 5;

  /** A finite maximum is reached in fewer steps. */
  private static final int SLOW = 20;

  /**
   * Information left in a direction, as a share of that at 0, below which it counts as none: with a
   * runaway coefficient, and without.
   */
  private static final double LITTLE = 1e-6;

  private static final double NOTHING = 1e-11;

  /**
   * Standard error over a covariate's range above which a coefficient is not told by the data:
   * limits would span a factor of e^80.
   */
  private static final double WIDEST = 20;

  private final HazardData data;
  private final HazardTies ties;
  private final int[] kept;
  private final double[] range;
  private final int[] steady;
  private double[] beta;
  private HazardLikelihood likelihood;
  private int iterations;

  /** Where the likelihood is highest, and what that says about each kept column. */
  static final class Maximum {
    /** Coefficients of all columns, 0 for those left out. */
    final double[] beta;

    final HazardLikelihood likelihood;

    /** For each kept column, whether its coefficient has no finite estimate. */
    final boolean[] infinite;

    /** Of the kept columns, right for those that have an estimate. */
    final double[][] covariance;

    final int iterations;

    private Maximum(HazardNewton newton, boolean[] infinite, double[][] covariance) {
      beta = newton.beta;
      likelihood = newton.likelihood;
      iterations = newton.iterations;
      this.infinite = infinite;
      this.covariance = covariance;
    }
  }

  private HazardNewton(HazardData data, HazardTies ties, int[] kept, HazardLikelihood atZero) {
    this.data = data;
    this.ties = ties;
    this.kept = kept;
    likelihood = atZero;
    beta = new double[atZero.score().length];
    steady = new int[kept.length];
    range = new double[kept.length];
    for (double[] row : data.x) {
      for (int i = 0; i < kept.length; i++) {
        range[i] = Math.max(range[i], Math.abs(row[kept[i]]));
      }
    }
  }

  static Maximum maximize(HazardData data, HazardTies ties, int[] kept, HazardLikelihood atZero) {
    return new HazardNewton(data, ties, kept, atZero).run();
  }

  private Maximum run() {
    double[][] atZero = likelihood.information();
    boolean any = false;
    while (kept.length > 0 && iterations < MOST_ITERATIONS) {
      double[][] inverse = HazardInverse.of(HazardInverse.part(likelihood.information(), kept));
      double[] score = HazardInverse.part(likelihood.score(), kept);
      double[] step = HazardInverse.times(inverse, score);
      double decrement = HazardInverse.form(inverse, score);
      if (decrement
          < (any ? CONVERGED_AT_INFINITY : CONVERGED) * Math.max(1, Math.abs(likelihood.value()))) {
        break;
      }
      any |= watch(step, decrement);
      if (!advance(step)) {
        break;
      }
      iterations++;
    }
    return judged(any || iterations >= SLOW, atZero);
  }

  private Maximum judged(boolean runaway, double[][] informationAtZero) {
    double[][] atMaximum = HazardInverse.part(likelihood.information(), kept);
    HazardInformation information =
        HazardInformation.of(
            HazardInverse.part(informationAtZero, kept), atMaximum, runaway ? LITTLE : NOTHING);
    boolean[] infinite = new boolean[kept.length];
    for (int i = 0; i < kept.length; i++) {
      double error = Math.sqrt(information.covariance()[i][i]) * range[i];
      infinite[i] = information.lost(i) || error > WIDEST;
    }
    return new Maximum(this, infinite, information.covariance());
  }

  /** Whether some coefficient has moved on in large steps while the likelihood hardly changed. */
  private boolean watch(double[] step, double decrement) {
    boolean runaway = false;
    for (int i = 0; i < kept.length; i++) {
      boolean moves = decrement < 0.1 && Math.abs(step[i]) * range[i] > 0.5;
      steady[i] = moves ? steady[i] + 1 : 0;
      runaway |= steady[i] >= RUNAWAY_STEPS;
    }
    return runaway;
  }

  /**
   * Takes the step, or as much of it as does not lower the likelihood; false where rounding leaves
   * no gain.
   */
  private boolean advance(double[] step) {
    double slack = 1e-13 * Math.max(1, Math.abs(likelihood.value()));
    double longest = LONGEST_STEP;
    for (int i = 0; i < kept.length; i++) {
      longest = Math.max(longest, Math.abs(step[i]) * range[i]);
    }
    for (double share = LONGEST_STEP / longest; share > 1e-6; share /= 2) {
      double[] trial = beta.clone();
      for (int i = 0; i < kept.length; i++) {
        trial[kept[i]] += share * step[i];
      }
      HazardLikelihood reached = HazardLikelihood.at(data, trial, ties);
      if (reached.finite() && reached.value() >= likelihood.value() - slack) {
        beta = trial;
        likelihood = reached;
        return true;
      }
    }
    return false;
  }
}
