package pondtally.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The survival curve of lives whose failures are known only to lie between two visits: the
 * nonparametric maximum-likelihood estimate of Turnbull (1976), each life contributing P(L &lt; T ≤
 * R)/P(T &gt; E), with the support of Frydman (1994) for late entry.
 *
 * <p>The likelihood says how much probability each innermost interval (left, right] holds, and
 * nothing about where inside it. So a survival at an age inside such an interval has two bounds;
 * the conventional value lets the curve fall at the interval's right end. Ages are days; survival
 * has no unit.
 *
 * <p>Assumes that visits are timed without regard to the device's condition, and that lives that
 * enter late do not differ from the others at that age. Limits: probabilities converge more slowly
 * than a product-limit curve (rate n^⅓ where visits are dense), so small sets give few, large
 * steps; with late entry the masses, though not their likelihood, may fail to be unique.
 *
 * <p>Solver and stopping rule: {@link IntervalEstimateSolver}.
 */
public final class IntervalEstimate {
  /** More distinct follow-ups than this, and ends are rounded outward. */
  static final int MOST_DISTINCT = 50_000;

  private static final int[] ROUNDING_DAYS = {7, 30};
  private static final double SAME = 1e-12;

  /**
   * One innermost interval.
   *
   * @param leftDays its left end; the end itself belongs to it only where both ends are equal (a
   *     failure on a known day)
   * @param rightDays its right end; infinite for the probability of outliving all observation
   * @param mass estimated probability that a life fails in it
   * @param survivalAfter estimated probability of outliving it
   * @param atRisk lives at risk before it that are known to outlive it or were seen to fail in an
   *     interval that holds it
   * @param expectedFailures of the lives seen to fail, how many did so here, as the estimate shares
   *     them out
   */
  public record Mass(
      double leftDays,
      double rightDays,
      double mass,
      double survivalAfter,
      double atRisk,
      double expectedFailures) {}

  /**
   * What the data allow: every value from {@code lower} to {@code upper} has the same likelihood.
   *
   * @param lower least value, as if failures fell at the left ends of their intervals
   * @param upper greatest value, as if they fell at the right ends
   */
  public record Bounds(double lower, double upper) {}

  private final List<IntervalCounts.Row> rows;
  private final int roundedToDays;
  private final IntervalEstimateSupport support;
  private final IntervalEstimateFit fit;
  private final List<Mass> masses;

  private IntervalEstimate(
      List<IntervalCounts.Row> rows,
      int roundedToDays,
      IntervalEstimateSupport support,
      IntervalEstimateFit fit,
      double[] weights) {
    this.rows = rows;
    this.roundedToDays = roundedToDays;
    this.support = support;
    this.fit = fit;
    this.masses = Collections.unmodifiableList(masses(rows, support, fit, weights));
  }

  /**
   * The estimate; above 50,000 distinct follow-ups ends are first rounded outward to 7, then to 30
   * days (see {@link #roundedToDays}).
   */
  public static IntervalEstimate of(IntervalCounts counts) {
    return of(counts, MOST_DISTINCT);
  }

  static IntervalEstimate of(IntervalCounts counts, int mostDistinct) {
    int days = 0;
    IntervalCounts used = counts;
    for (int i = 0; i < ROUNDING_DAYS.length && used.distinct() > mostDistinct; i++) {
      days = ROUNDING_DAYS[i];
      used = counts.roundedOutward(days);
    }
    List<IntervalCounts.Row> rows = Collections.unmodifiableList(used.rows());
    double[] weights = rows.stream().mapToDouble(IntervalCounts.Row::count).toArray();
    IntervalEstimateSupport support = IntervalEstimateSupport.of(rows, weights);
    IntervalEstimateFit fit = IntervalEstimateFit.of(rows, weights, support, Optional.empty());
    return new IntervalEstimate(rows, days, support, fit, weights);
  }

  /**
   * The estimate for the same follow-ups with other weights, as a bootstrap over clusters of lives
   * needs. It starts from this estimate, so it costs a fraction of the first.
   *
   * @param weights one for each of {@link #rows}, 0 or more; a row of weight 0 is left out
   * @throws IllegalArgumentException when the length differs or a weight is negative or not a
   *     number
   */
  public IntervalEstimate reweighted(double[] weights) {
    if (weights.length != rows.size()
        || Arrays.stream(weights).anyMatch(w -> !(w >= 0 && w < Double.POSITIVE_INFINITY))) {
      throw new IllegalArgumentException(
          "expected " + rows.size() + " finite weights of 0 or more, got " + weights.length);
    }
    IntervalEstimateSupport own = IntervalEstimateSupport.of(rows, weights);
    IntervalEstimateFit refit = IntervalEstimateFit.of(rows, weights, own, Optional.of(this));
    return new IntervalEstimate(rows, roundedToDays, own, refit, weights);
  }

  /**
   * The distinct follow-ups used, after any rounding, in order of L, R, E; weights of {@link
   * #reweighted} follow this order.
   */
  public List<IntervalCounts.Row> rows() {
    return rows;
  }

  /**
   * Place in {@link #rows} of a follow-up as it was before any rounding; empty if the counts held
   * none like it.
   */
  public OptionalInt rowOf(double entryDays, double leftDays, double rightDays) {
    IntervalCounts.Row key = IntervalCounts.outward(entryDays, leftDays, rightDays, roundedToDays);
    int at = Collections.binarySearch(rows, key, IntervalCounts.Row.ORDER);
    return at >= 0 ? OptionalInt.of(at) : OptionalInt.empty();
  }

  /**
   * Days to which ends were rounded outward because there were too many distinct ones; 0 if none
   * was. Any report must say so.
   */
  public int roundedToDays() {
    return roundedToDays;
  }

  /** The innermost intervals in order of age, those without probability included. */
  public List<Mass> masses() {
    return masses;
  }

  /** Σ over lives of log P(L &lt; T ≤ R)/P(T &gt; E). */
  public double logLikelihood() {
    return fit.logLikelihood();
  }

  /**
   * Largest breach of the Kuhn-Tucker condition per life (Gentleman &amp; Geyer 1994); 0 at the
   * exact maximum.
   */
  public double residual() {
    return fit.residual();
  }

  /** Solver iterations. */
  public int iterations() {
    return fit.iterations();
  }

  /**
   * The age after which nothing is known because every life then at risk had failed while others
   * entered only later; survival is 0 from there on for want of lives, not of devices. Empty where
   * that did not happen.
   */
  public OptionalDouble emptiedAtDays() {
    return fit.emptied() < support.size()
        ? OptionalDouble.of(support.right(fit.emptied()))
        : OptionalDouble.empty();
  }

  /** Bounds of the survival at an age in days. */
  public Bounds survivalBounds(double days) {
    int j = support.upTo(days);
    boolean inside = j < support.size() && support.left(j + 1) < days;
    return new Bounds(fit.survival(inside ? j + 1 : j), fit.survival(j));
  }

  /**
   * Survival at an age in days, the curve falling at right ends; empty past the last age at which
   * anything is known.
   */
  public OptionalDouble survivalAt(double days) {
    int j = support.upTo(days);
    boolean unknown =
        support.size() == 0
            || (j == support.size() - 1
                && Double.isInfinite(support.right(j + 1))
                && days > support.left(j + 1));
    return unknown ? OptionalDouble.empty() : OptionalDouble.of(fit.survival(j));
  }

  /**
   * The interval that holds the age by which a share of lives has failed (0.5 for the median): the
   * first after which survival is at most 1 − share. The conventional quantile is its right end.
   * Empty if the curve does not come down so far.
   *
   * @param share above 0 and below 1
   */
  public Optional<Mass> quantile(double share) {
    return masses.stream()
        .filter(
            m -> m.survivalAfter() <= 1 - share + SAME && m.rightDays() < Double.POSITIVE_INFINITY)
        .findFirst();
  }

  /**
   * Bounds of the mean life up to a horizon in days: the area under the curve with all falls at
   * left ends, and at right ends. Empty if the horizon lies past the last age at which anything is
   * known.
   */
  public Optional<Bounds> meanLifeDays(double horizonDays) {
    if (survivalAt(horizonDays).isEmpty()) {
      return Optional.empty();
    }
    double lower = horizonDays;
    double upper = horizonDays;
    for (Mass m : masses) {
      lower -= m.mass() * Math.max(0, horizonDays - m.leftDays());
      upper -= m.mass() * Math.max(0, horizonDays - m.rightDays());
    }
    return Optional.of(new Bounds(lower, upper));
  }

  private static List<Mass> masses(
      List<IntervalCounts.Row> rows,
      IntervalEstimateSupport support,
      IntervalEstimateFit fit,
      double[] weights) {
    double[] failures = fit.expectedFailures(rows, weights, support);
    double[] atRisk = IntervalEstimateFit.atRisk(rows, weights, support);
    List<Mass> masses = new ArrayList<>(support.size());
    for (int j = 1; j <= support.size(); j++) {
      masses.add(
          new Mass(
              support.left(j),
              support.right(j),
              fit.mass(j),
              fit.survival(j),
              atRisk[j],
              failures[j]));
    }
    return masses;
  }

  /** Cumulative hazard behind the supports up to an age, infinite where survival is 0. */
  double cumulativeHazard(double days) {
    return -Math.log(fit.survival(support.upTo(days)));
  }
}
