package pondtally.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;

/**
 * Maximum-likelihood fit of log T = xβ + σW (accelerated failure time) to lives known exactly or
 * within intervals, with counts and late entry. A coefficient of 0.7 means that times are exp(0.7)
 * = 2 times as long. Newton's method with a safeguarded curvature; errors from the observed
 * information. Assumes the named distribution, independent lives, and visits timed without regard
 * to the device's condition.
 */
public final class ParametricRegression {
  private static final int MOST_ITERATIONS = 200;
  private static final double ENDLESS = 9;

  private final ParametricDistribution distribution;
  private final List<ParametricLikelihood.Lives> lives;
  private final Optional<String> reason;
  private double[] parameters;
  private double[][] covariance;
  private double logLikelihood;
  private int iterations;

  private ParametricRegression(
      ParametricDistribution distribution, List<ParametricLikelihood.Lives> lives) {
    this.distribution = distribution;
    this.lives = lives;
    Optional<String> hopeless = hopeless();
    reason = hopeless.isPresent() ? hopeless : maximize();
  }

  /** Collects lives with covariates for a fit. */
  public static final class Data {
    private final List<ParametricLikelihood.Lives> lives = new ArrayList<>();

    /**
     * Adds lives that share a follow-up and covariates; each needs 0 ≤ E ≤ L ≤ R as {@link
     * IntervalCounts} does.
     *
     * @param x covariates without the intercept; empty for none
     */
    public Data add(double[] x, double entryDays, double leftDays, double rightDays, long count) {
      IntervalCounts.empty().add(entryDays, leftDays, rightDays, count);
      double[] withIntercept = new double[x.length + 1];
      withIntercept[0] = 1;
      System.arraycopy(x, 0, withIntercept, 1, x.length);
      lives.add(
          new ParametricLikelihood.Lives(
              new IntervalCounts.Row(entryDays, leftDays, rightDays, count), withIntercept));
      return this;
    }
  }

  /** Fits the distribution to lives with covariates. */
  public static ParametricRegression fit(ParametricDistribution distribution, Data data) {
    return new ParametricRegression(distribution, List.copyOf(data.lives));
  }

  /** Fits the distribution to lives without covariates. */
  public static ParametricRegression fit(
      ParametricDistribution distribution, IntervalCounts counts) {
    double[] intercept = {1};
    return new ParametricRegression(
        distribution,
        counts.rows().stream().map(row -> new ParametricLikelihood.Lives(row, intercept)).toList());
  }

  private Optional<String> hopeless() {
    long failures = failures();
    if (failures == 0) {
      return Optional.of("no device failed");
    }
    if (distribution.scaled() && failures == 1) {
      return Optional.of("one failure gives a rate but no shape");
    }
    if (lives.stream().allMatch(l -> l.row.failed() && l.row.leftDays() == 0)) {
      return Optional.of("every device had failed by its first visit");
    }
    if (distribution.scaled() && allAtOnce()) {
      return Optional.of("all failures can have happened at one age, which gives no finite shape");
    }
    return Optional.empty();
  }

  /**
   * Whether some age lies between the last known working age and the earliest known failed age of
   * all lives. A distribution drawn ever closer to it is then never worse, so no finite σ is best.
   */
  private boolean allAtOnce() {
    double earliest = Double.POSITIVE_INFINITY;
    double latest = 0;
    for (ParametricLikelihood.Lives l : lives) {
      latest = Math.max(latest, l.row.leftDays());
      earliest = Math.min(earliest, l.row.rightDays());
    }
    return lives.get(0).x.length == 1 && latest <= earliest;
  }

  private Optional<String> maximize() {
    double[] at = start();
    ParametricLikelihood current = ParametricLikelihood.at(distribution, lives, at);
    int idle = 0;
    while (iterations < MOST_ITERATIONS && idle < 2) {
      double[] step = step(current);
      double share = 1;
      double[] trial = moved(at, step, share);
      ParametricLikelihood reached = ParametricLikelihood.at(distribution, lives, trial);
      while (!(reached.value >= current.value - 1e-14 * Math.abs(current.value)) && share > 1e-10) {
        share /= 2;
        trial = moved(at, step, share);
        reached = ParametricLikelihood.at(distribution, lives, trial);
      }
      if (share <= 1e-10) {
        break;
      }
      idle = largest(step) * share < 1e-12 ? idle + 1 : 0;
      at = trial;
      current = reached;
      iterations++;
    }
    return conclude(at, current);
  }

  private Optional<String> conclude(double[] at, ParametricLikelihood current) {
    parameters = at;
    logLikelihood = current.value;
    covariance = HazardInverse.of(current.information);
    double decrement = HazardInverse.form(covariance, current.score);
    boolean curved = positive(current.information);
    boolean endless = distribution.scaled() && Math.abs(at[at.length - 1]) > ENDLESS;
    boolean settled = Math.abs(decrement) < 1e-10 * Math.max(1, Math.abs(logLikelihood));
    return curved && settled && !endless
        ? Optional.empty()
        : Optional.of("the likelihood has no finite maximum for these lives");
  }

  /** Whether the likelihood curves downward in every direction, beyond rounding. */
  private static boolean positive(double[][] information) {
    int n = information.length;
    double[][] scaled = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        if (!(information[i][i] > 0 && information[j][j] > 0)) {
          return false;
        }
        scaled[i][j] = information[i][j] / Math.sqrt(information[i][i] * information[j][j]);
      }
    }
    double[] values =
        new EigenDecompositionSymmetric(new Array2DRowRealMatrix(scaled)).getEigenvalues();
    return Arrays.stream(values).allMatch(v -> v > 1e-9);
  }

  /** The exponential rate as if failures fell in the middle of their intervals, and σ = 1. */
  private double[] start() {
    double[] at = new double[lives.get(0).x.length + (distribution.scaled() ? 1 : 0)];
    double time = 0;
    for (ParametricLikelihood.Lives l : lives) {
      IntervalCounts.Row row = l.row;
      double end = row.failed() ? (row.leftDays() + row.rightDays()) / 2 : row.leftDays();
      time += row.count() * (end - row.entryDays());
    }
    at[0] = Math.log(time / failures());
    return at;
  }

  /**
   * Newton's step; where the likelihood is not curved downward, a step of bounded length uphill.
   */
  private static double[] step(ParametricLikelihood likelihood) {
    double[][] information = likelihood.information;
    double lift = 0;
    while (!positive(information)) {
      lift = lift == 0 ? 1e-3 * size(likelihood.information) : 4 * lift;
      information = new double[information.length][];
      for (int i = 0; i < information.length; i++) {
        information[i] = likelihood.information[i].clone();
        information[i][i] += lift;
      }
    }
    double[] step = HazardInverse.times(HazardInverse.of(information), likelihood.score);
    double longest = largest(step);
    if (longest > 2) {
      for (int i = 0; i < step.length; i++) {
        step[i] *= 2 / longest;
      }
    }
    return step;
  }

  private static double size(double[][] information) {
    double size = 1e-6;
    for (int i = 0; i < information.length; i++) {
      size = Math.max(size, Math.abs(information[i][i]));
    }
    return size;
  }

  private static double largest(double[] step) {
    return Arrays.stream(step).map(Math::abs).max().orElse(0);
  }

  private static double[] moved(double[] from, double[] step, double share) {
    double[] to = from.clone();
    for (int i = 0; i < to.length; i++) {
      to[i] += share * step[i];
    }
    return to;
  }

  /** The distribution fitted. */
  public ParametricDistribution distribution() {
    return distribution;
  }

  /** Why nothing could be estimated; empty if it could. */
  public Optional<String> reason() {
    return reason;
  }

  /** Lives in the fit. */
  public long lives() {
    return lives.stream().mapToLong(l -> l.row.count()).sum();
  }

  /** Of them, seen to fail. */
  public long failures() {
    return lives.stream().filter(l -> l.row.failed()).mapToLong(l -> l.row.count()).sum();
  }

  /** Σ over lives of log f(t) or log P(L &lt; T ≤ R), less log P(T &gt; E); densities per day. */
  public OptionalDouble logLikelihood() {
    return reason.isPresent() ? OptionalDouble.empty() : OptionalDouble.of(logLikelihood);
  }

  /** Newton iterations. */
  public int iterations() {
    return iterations;
  }

  /**
   * Coefficients β on the scale of log days, the intercept first; empty if nothing could be
   * estimated.
   */
  public List<ParametricEstimate> coefficients() {
    List<ParametricEstimate> estimates = new ArrayList<>();
    int p = reason.isPresent() ? 0 : parameters.length - (distribution.scaled() ? 1 : 0);
    for (int j = 0; j < p; j++) {
      estimates.add(ParametricEstimate.plain(parameters[j], Math.sqrt(covariance[j][j])));
    }
    return estimates;
  }

  /** log σ; empty where σ is not estimated. */
  public Optional<ParametricEstimate> logSigma() {
    int last = parameters == null ? 0 : parameters.length - 1;
    return reason.isPresent() || !distribution.scaled()
        ? Optional.empty()
        : Optional.of(
            ParametricEstimate.plain(parameters[last], Math.sqrt(covariance[last][last])));
  }

  /** μ and log σ (0 for the exponential) of a fit without covariates. */
  double[] location() {
    return new double[] {parameters[0], distribution.scaled() ? parameters[1] : 0};
  }

  double[][] covariance() {
    return Arrays.stream(covariance).map(double[]::clone).toArray(double[][]::new);
  }
}
