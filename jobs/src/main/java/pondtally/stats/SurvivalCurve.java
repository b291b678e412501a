package pondtally.stats;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Product-limit estimate of the share that has not failed by time t: S(t) = Π over failure times u
 * ≤ t of (1 − d/n), with d failures among n at risk at u. No unit. Source: Kaplan &amp; Meier 1958;
 * delayed entry as in Lynden-Bell 1971.
 *
 * <p>Greenwood's error is S·√Σ d/(n(n−d)) (Greenwood 1926). The cumulative hazard is Σ d/n (Nelson
 * 1969; Aalen 1978). Assumes independent lives whose follow-up ends for reasons unrelated to their
 * condition. With delayed entry the first numbers at risk can be so small that the curve drops to 0
 * for good: look at {@link #atRisk}. This class carries the textbook figures; {@link
 * SurvivalFigures} stops them where too few remain at risk.
 *
 * <p>One row for each distinct time of exit, in order of time.
 */
public final class SurvivalCurve {
  /** S is taken to have reached a share once it is within this of it, so that 3/4 · 2/3 is 1/2. */
  private static final double REACHED = 1e-9;

  private final RiskTable table;
  private final CurveInterval interval;
  private final CurveEdge edge;
  private final double level;
  private final double z;
  private final double[] survival;
  private final double[] greenwood;
  private final double[] hazard;
  private final double[] hazardVarianceAalen;
  private final double[] hazardVarianceKlein;

  private SurvivalCurve(RiskTable table, CurveInterval interval, CurveEdge edge, double level) {
    this.table = table;
    this.interval = interval;
    this.edge = edge;
    this.level = level;
    this.z = Quantile.twoSided(level);
    int n = table.rows();
    this.survival = new double[n];
    this.greenwood = new double[n];
    this.hazard = new double[n];
    this.hazardVarianceAalen = new double[n];
    this.hazardVarianceKlein = new double[n];
    fill();
  }

  /** The curve with 95 per cent LOG_LOG limits, exact where nothing has failed. */
  public static SurvivalCurve of(RiskTable table) {
    return of(table, CurveInterval.LOG_LOG, CurveEdge.EXACT, 0.95);
  }

  /** The curve with limits of your choice; level above 0 and below 1, such as 0.95. */
  public static SurvivalCurve of(
      RiskTable table, CurveInterval interval, CurveEdge edge, double level) {
    return new SurvivalCurve(table, interval, edge, level);
  }

  private void fill() {
    double s = 1;
    double g = 0;
    double h = 0;
    double aalen = 0;
    double klein = 0;
    for (int i = 0; i < survival.length; i++) {
      double n = table.atRisk(i);
      double d = table.events(i);
      if (d > 0) {
        s *= (n - d) / n;
        g += d / (n * (n - d));
        h += d / n;
        aalen += d / (n * n);
        klein += n > 1 ? d * (n - d) / (n * n * (n - 1)) : 0;
      }
      survival[i] = s;
      greenwood[i] = g;
      hazard[i] = h;
      hazardVarianceAalen[i] = aalen;
      hazardVarianceKlein[i] = klein;
    }
  }

  /** The numbers behind the curve; rows are the same. */
  public RiskTable table() {
    return table;
  }

  /** Level of all limits, such as 0.95. */
  public double level() {
    return level;
  }

  /** Number of rows. */
  public int rows() {
    return survival.length;
  }

  /** Time of a row. */
  public double time(int row) {
    return table.time(row);
  }

  /** At risk at a row's time. */
  public long atRisk(int row) {
    return table.atRisk(row);
  }

  /** Events at a row's time. */
  public long events(int row) {
    return table.events(row);
  }

  /** Censored at a row's time. */
  public long censored(int row) {
    return table.censored(row);
  }

  /** S at a row's time, after its events. */
  public double survival(int row) {
    return survival[row];
  }

  /** Greenwood's standard error of S at a row's time; empty where S = 0. */
  public OptionalDouble stdError(int row) {
    return stdError(survival[row], greenwood[row]);
  }

  private static OptionalDouble stdError(double s, double g) {
    return s > 0 ? OptionalDouble.of(s * Math.sqrt(g)) : OptionalDouble.empty();
  }

  /** Limits of S at a row's time; none where S = 0. */
  public Limits limits(int row) {
    return limits(survival[row], greenwood[row], table.atRisk(row));
  }

  private Limits limits(double s, double g, long atRisk) {
    if (g == 0) {
      return edge.atOne(interval, atRisk, level);
    }
    return s > 0 ? interval.inside(s, g, z) : Limits.none();
  }

  /** Nelson-Aalen cumulative hazard Σ d/n at a row's time. */
  public double cumulativeHazard(int row) {
    return hazard[row];
  }

  /** Variance Σ d/n² of the cumulative hazard (Aalen 1978). */
  public double hazardVarianceAalen(int row) {
    return hazardVarianceAalen[row];
  }

  /** Variance Σ d(n−d)/(n²(n−1)) of the cumulative hazard, corrected for ties (Klein 1991). */
  public double hazardVarianceKlein(int row) {
    return hazardVarianceKlein[row];
  }

  /** Time of the last exit; 0 without rows. */
  public double lastTime() {
    return rows() == 0 ? 0 : time(rows() - 1);
  }

  /**
   * S at any time from 0. Empty after the last exit, unless the curve has reached 0: what nobody
   * was watched for is not known.
   */
  public OptionalDouble at(double t) {
    int row = table.rowAtOrBefore(checkTime(t));
    double s = row < 0 ? 1 : survival[row];
    return t > lastTime() && s > 0 ? OptionalDouble.empty() : OptionalDouble.of(s);
  }

  /** Standard error of S at any time from 0; empty where S is empty or 0. */
  public OptionalDouble stdErrorAt(double t) {
    OptionalDouble s = at(t);
    int row = table.rowAtOrBefore(t);
    return s.isEmpty() ? s : stdError(s.getAsDouble(), row < 0 ? 0 : greenwood[row]);
  }

  /** Limits of S at any time from 0; none where S is empty or 0. At t = 0, S is 1 for certain. */
  public Limits limitsAt(double t) {
    OptionalDouble s = at(t);
    if (s.isEmpty() || t == 0) {
      return s.isEmpty() ? Limits.none() : Limits.of(1, 1);
    }
    int row = table.rowAtOrBefore(t);
    return limits(s.getAsDouble(), row < 0 ? 0 : greenwood[row], table.atRiskAt(t));
  }

  /**
   * Time by which a share p has failed: the smallest t with S(t) ≤ 1 − p; empty if the curve does
   * not come down so far. Where S equals 1 − p over a stretch this is the beginning of the stretch,
   * as in Klein &amp; Moeschberger 2003 (some programs give its middle).
   *
   * @param p share failed, above 0 and below 1; 0.5 for the median
   */
  public OptionalDouble quantile(double p) {
    return firstTime(p, row -> survival[row]);
  }

  /**
   * Limits of {@link #quantile}: the smallest times at which the lower and the upper limit of S
   * come down to 1 − p. Source: Brookmeyer &amp; Crowley 1982. A side is empty if its limit never
   * does. With {@link CurveEdge#EXACT} the lower one can come before the first failure, where too
   * few are at risk to speak against it.
   */
  public Limits quantileLimits(double p) {
    return new Limits(
        firstTime(p, row -> limits(row).lower().orElse(1)),
        firstTime(p, row -> limits(row).upper().orElse(1)));
  }

  private OptionalDouble firstTime(double p, ToDoubleFunction<Integer> share) {
    if (!(p > 0 && p < 1)) {
      throw new IllegalArgumentException("share failed " + p + ", expected above 0 and below 1");
    }
    for (int row = 0; row < rows(); row++) {
      if (share.applyAsDouble(row) <= 1 - p + REACHED) {
        return OptionalDouble.of(time(row));
      }
    }
    return OptionalDouble.empty();
  }

  /** Last row's time with at least so many at risk; empty if there never were. */
  public OptionalDouble lastTimeWithAtRisk(long minimum) {
    return table.lastTimeWithAtRisk(minimum);
  }

  /**
   * Restricted mean life to a horizon τ: ∫ S(t) dt from 0 to τ, in the unit of time, with variance
   * Σ A²·d/(n(n−d)), A the area under S from a failure time to τ. Source: Irwin 1949; Royston &amp;
   * Parmar 2013. After the last exit the last S is carried on, as in the textbooks; {@link
   * SurvivalFigures#meanLife} does not do so.
   */
  public RestrictedMean restrictedMean(double horizon) {
    double until = checkTime(horizon);
    double area = 0;
    double variance = 0;
    for (int row = table.rowAtOrBefore(horizon); row >= 0; row--) {
      area += survival[row] * (until - time(row));
      until = time(row);
      double n = atRisk(row);
      double d = events(row);
      variance += n > d ? area * area * d / (n * (n - d)) : 0;
    }
    return new RestrictedMean(horizon, area + until, Math.sqrt(variance), level);
  }

  private static double checkTime(double t) {
    if (!(t >= 0 && t < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("time " + t + ", expected 0 or more");
    }
    return t;
  }
}
