package pondtally.stats;

/**
 * Newton's iteration with step halving for the partial likelihood, which is concave. A coefficient
 * without a finite maximum shows by moving on in equal steps while the likelihood no longer
 * changes; at a finite maximum steps shrink quadratically.
 */
final class HazardNewton {
  private static final int MOST_ITERATIONS = 80;
  private static final double CONVERGED = 1e-25;
  private static final double CONVERGED_AT_INFINITY = 1e-12;
  private static final int RUNAWAY_STEPS = 5;

  private final HazardData data;
  private final HazardTies ties;
  private final int[] kept;
  private final double[] range;
  private final int[] steady;
  private double[] beta;
  private HazardLikelihood likelihood;
  private int iterations;

  /**
   * The maximum: β, the likelihood there, and for each kept column whether its coefficient runs to
   * infinity.
   */
  record Maximum(double[] beta, HazardLikelihood likelihood, boolean[] infinite, int iterations) {}

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
    boolean[] infinite = new boolean[kept.length];
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
      any |= watch(step, decrement, infinite);
      if (!advance(step)) {
        break;
      }
      iterations++;
    }
    return new Maximum(beta, likelihood, infinite, iterations);
  }

  private boolean watch(double[] step, double decrement, boolean[] infinite) {
    boolean any = false;
    for (int i = 0; i < kept.length; i++) {
      boolean moves = decrement < 0.1 && Math.abs(step[i]) * range[i] > 0.5;
      steady[i] = moves ? steady[i] + 1 : 0;
      infinite[i] |= steady[i] >= RUNAWAY_STEPS;
      any |= infinite[i];
    }
    return any;
  }

  /**
   * Takes the step, or as much of it as does not lower the likelihood; false where rounding leaves
   * no gain.
   */
  private boolean advance(double[] step) {
    double slack = 1e-13 * Math.max(1, Math.abs(likelihood.value()));
    for (double share = 1; share > 1e-6; share /= 2) {
      double[] trial = beta.clone();
      for (int i = 0; i < kept.length; i++) {
        trial[kept[i]] += share * step[i];
      }
      HazardLikelihood reached = HazardLikelihood.at(data, trial, ties);
      if (reached.value() >= likelihood.value() - slack) {
        beta = trial;
        likelihood = reached;
        return true;
      }
    }
    return false;
  }
}
