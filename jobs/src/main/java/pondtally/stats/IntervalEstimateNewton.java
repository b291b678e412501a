package pondtally.stats;

/**
 * A Newton step that keeps the cumulative hazard from falling: the second-order model of the
 * likelihood at x is raised over the increments that are above zero and, in each flat stretch
 * between them, the one whose likelihood gains most. Whenever an increment would turn negative the
 * move stops there and goes on without it (active set; inner loop of Lawson &amp; Hanson 1974).
 */
final class IntervalEstimateNewton {
  /** Multiplications to spend on one step, roughly. */
  private static final double AFFORDABLE = 6e8;

  private final IntervalEstimateLikelihood likelihood;
  private final double[] x;
  private final double[] slope;
  private final double[] bends;
  private final boolean[] free;
  private final double[] increment;
  private final int m;

  private IntervalEstimateNewton(
      IntervalEstimateLikelihood likelihood, double[] x, double[] slope, double[] gain) {
    this.likelihood = likelihood;
    this.x = x;
    this.slope = slope;
    m = x.length - 1;
    bends = likelihood.bends(x);
    increment = new double[m + 1];
    for (int k = 1; k <= m; k++) {
      increment[k] = x[k] - x[k - 1];
    }
    free = free(increment, gain);
  }

  /**
   * The point the step leads to, or null where the step would cost too much.
   *
   * @param gain dℓ/du_k for the increments u_k = x_k − x_{k−1}
   */
  static double[] target(
      IntervalEstimateLikelihood likelihood, double[] x, double[] slope, double[] gain) {
    return new IntervalEstimateNewton(likelihood, x, slope, gain).run();
  }

  private static boolean[] free(double[] increment, double[] gain) {
    boolean[] free = new boolean[increment.length];
    int best = 0;
    for (int k = 1; k < increment.length; k++) {
      if (increment[k] > 0) {
        free[k] = true;
        free[best] = best > 0;
        best = 0;
      } else if (gain[k] > 0 && (best == 0 || gain[k] > gain[best])) {
        best = k;
      }
    }
    free[best] = best > 0;
    return free;
  }

  private double[] run() {
    double spent = 0;
    boolean blocked = true;
    while (blocked) {
      int[] level = levels();
      spent +=
          level[m] == 0
              ? Double.POSITIVE_INFINITY
              : IntervalEstimateBand.cost(likelihood.reach(level));
      if (spent > AFFORDABLE) {
        break;
      }
      blocked = advance(level, move(level));
    }
    return spent > AFFORDABLE && blocked && unchanged() ? null : point();
  }

  private boolean unchanged() {
    for (int k = 1; k <= m; k++) {
      if (increment[k] != x[k] - x[k - 1]) {
        return false;
      }
    }
    return true;
  }

  private int[] levels() {
    int[] level = new int[m + 1];
    for (int k = 1; k <= m; k++) {
      level[k] = level[k - 1] + (free[k] ? 1 : 0);
    }
    return level;
  }

  /** How far each level should move from the present point for the model to be at its highest. */
  private double[] move(int[] level) {
    double[] shift = point();
    for (int j = 0; j <= m; j++) {
      shift[j] -= x[j];
    }
    double[] rest = slope.clone();
    likelihood.bend(rest, bends, shift);
    double[] move = new double[level[m]];
    for (int j = 1; j <= m; j++) {
      if (level[j] > 0) {
        move[level[j] - 1] += rest[j];
      }
    }
    likelihood.curvature(bends, level).solve(move);
    return move;
  }

  /**
   * Moves as far as no increment turns negative; tells whether one stopped the move, and takes it
   * out.
   */
  private boolean advance(int[] level, double[] move) {
    double[] change = new double[m + 1];
    double step = 1;
    for (int k = 1; k <= m; k++) {
      if (free[k]) {
        change[k] = move[level[k] - 1] - (level[k] > 1 ? move[level[k] - 2] : 0);
        if (increment[k] + change[k] < 0) {
          step = Math.min(step, increment[k] / -change[k]);
        }
      }
    }
    boolean blocked = false;
    for (int k = 1; k <= m; k++) {
      if (free[k]) {
        boolean stops = change[k] < 0 && increment[k] <= step * -change[k];
        increment[k] = stops ? 0 : increment[k] + step * change[k];
        free[k] = !stops;
        blocked |= stops;
      }
    }
    return blocked;
  }

  private double[] point() {
    double[] z = new double[m + 1];
    for (int k = 1; k <= m; k++) {
      z[k] = z[k - 1] + increment[k];
    }
    return z;
  }
}
