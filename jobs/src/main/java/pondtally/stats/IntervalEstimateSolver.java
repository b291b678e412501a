package pondtally.stats;

/**
 * Maximizes an {@link IntervalEstimateLikelihood} over cumulative hazards that do not fall.
 *
 * <p>Two kinds of step take turns. The convex-minorant step (Groeneboom &amp; Wellner 1992, with
 * Jongbloed's 1998 line search) replaces the curvature by its diagonal and solves by pooling
 * adjacent violators: cheap, and it finds where the curve is flat. The Newton step uses the whole
 * curvature on the increments that are above zero or want to be, and sets to zero those that would
 * turn negative (projected Newton, Bertsekas 1982): it converges fast once the flat parts are
 * known. Either step only ever raises the likelihood, which is concave.
 *
 * <p>The stopping rule is the Kuhn-Tucker condition in the masses p (Gentleman &amp; Geyer 1994):
 * with d_j = dℓ/dp_j less its mean, d_j = 0 where p_j &gt; 0 and d_j ≤ 0 elsewhere. The residual is
 * the largest breach per life.
 */
final class IntervalEstimateSolver {
  private static final double TOLERANCE = 1e-11;
  private static final int MOST_ITERATIONS = 1000;
  private static final int FIRST_MINORANTS = 8;
  private static final int IDLE_ITERATIONS = 6;

  private final IntervalEstimateLikelihood likelihood;
  private final int m;
  private double[] x;
  private double[] trial;
  private double value;
  private final double[] slope;
  private final double[] bend;
  private final double[] gain;

  /**
   * The cumulative hazard at each boundary, the log-likelihood, the residual per life, iterations.
   */
  static final class Solution {
    final double[] cumulativeHazard;
    final double logLikelihood;
    final double residual;
    final int iterations;

    private Solution(
        double[] cumulativeHazard, double logLikelihood, double residual, int iterations) {
      this.cumulativeHazard = cumulativeHazard;
      this.logLikelihood = logLikelihood;
      this.residual = residual;
      this.iterations = iterations;
    }
  }

  private IntervalEstimateSolver(IntervalEstimateLikelihood likelihood, double[] start) {
    this.likelihood = likelihood;
    m = likelihood.size();
    x = start;
    trial = new double[m + 1];
    slope = new double[m + 1];
    bend = new double[m + 1];
    gain = new double[m + 1];
    value = likelihood.at(x);
  }

  /**
   * Solves from a start.
   *
   * @param start cumulative hazard at the boundaries 0 to m, rising wherever a failure needs it to
   */
  static Solution solve(IntervalEstimateLikelihood likelihood, double[] start) {
    return new IntervalEstimateSolver(likelihood, start).run();
  }

  private Solution run() {
    double best = differentiate();
    Solution solution = new Solution(x.clone(), value, best, 0);
    int idle = 0;
    int iteration = 0;
    while (best > TOLERANCE && idle < IDLE_ITERATIONS && iteration < MOST_ITERATIONS) {
      iteration++;
      double before = value;
      if (iteration <= FIRST_MINORANTS || iteration % 4 == 0 || !newtonStep()) {
        minorantStep();
      }
      double residual = differentiate();
      boolean better = residual < 0.9 * best || value > before + rounding(1e3);
      idle = better ? 0 : idle + 1;
      if (residual < best) {
        best = residual;
        solution = new Solution(x.clone(), value, best, iteration);
      }
    }
    return solution;
  }

  /** What may be lost in adding up the likelihood, times a factor. */
  private double rounding(double factor) {
    return factor * 1e-15 * Math.max(1, Math.abs(value));
  }

  /**
   * Brings the derivatives up to date with x; gain_k is dℓ/du_k for the increment u_k = x_k −
   * x_{k−1}.
   */
  private double differentiate() {
    likelihood.derivatives(x, slope, bend);
    double sum = 0;
    for (int k = m; k >= 1; k--) {
      sum += slope[k];
      gain[k] = sum;
    }
    return residual();
  }

  /**
   * The largest breach of the Kuhn-Tucker condition, per life; d_k follows from dℓ/du_k = S_{k−1}
   * d_k − Σ_{l&lt;k} terms of p_l d_l.
   */
  private double residual() {
    double worst = 0;
    double rest = 0;
    for (int k = 1; k <= m; k++) {
      double d = (gain[k] + rest) / Math.exp(-x[k - 1]);
      double mass = Math.exp(-x[k - 1]) * -Math.expm1(x[k - 1] - x[k]);
      worst = Math.max(worst, mass > 0 ? Math.abs(d) : d);
      rest -= mass * d;
    }
    double last = rest / Math.exp(-x[m]);
    return Math.max(worst, Math.abs(last)) / Math.max(1, likelihood.totalWeight());
  }

  private boolean minorantStep() {
    return searchTowards(IntervalEstimateMinorant.target(x, slope, bend));
  }

  private boolean newtonStep() {
    double[] target = IntervalEstimateNewton.target(likelihood, x, slope, gain);
    return target != null && searchTowards(target);
  }

  /**
   * Goes to the target, or the part of the way that raises the likelihood enough (Armijo's rule).
   * Close to the maximum the rise drowns in rounding; the target is then taken as it is.
   */
  private boolean searchTowards(double[] target) {
    double ascent = 0;
    for (int j = 1; j <= m; j++) {
      ascent += slope[j] * (target[j] - x[j]);
    }
    double slack = rounding(ascent < rounding(1e5) ? 100 : 1);
    for (double step = 1; step > 1e-9; step /= 2) {
      for (int j = 0; j <= m; j++) {
        trial[j] = step == 1 ? target[j] : x[j] + step * (target[j] - x[j]);
      }
      double reached = likelihood.at(trial);
      if (reached >= value + 1e-4 * step * ascent - slack) {
        double[] old = x;
        x = trial;
        trial = old;
        value = reached;
        return true;
      }
    }
    return false;
  }
}
