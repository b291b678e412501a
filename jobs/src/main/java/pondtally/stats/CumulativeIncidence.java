package pondtally.stats;

import java.util.OptionalDouble;

/**
 * Share of lives that have ended by each kind of event by time t, where the kinds compete: F_j(t) =
 * Σ S(u−)·d_j/n over event times u ≤ t, with d_j events of kind j among n at risk and S the
 * product-limit curve for events of any kind. No unit. The F_j and S add up to 1. Source: Aalen
 * &amp; Johansen 1978; delayed entry allowed. It says what will be seen, while one less a
 * product-limit curve per kind says what would be seen if the other kinds did not exist.
 *
 * <p>The standard error is Greenwood's for the product integral, carried from time to time: it
 * equals the delta method's (Dinse &amp; Larson 1986; Marubini &amp; Valsecchi 1995) and, without
 * delayed entry, the infinitesimal jackknife's. Assumes independent lives and noninformative
 * censoring. One row for each distinct time of exit.
 */
public final class CumulativeIncidence {
  /** F is taken for 1 from here on: all lives have ended, up to rounding. */
  private static final double CERTAIN = 1 - 1e-12;

  private final RiskTable table;
  private final RiskTable ofKind;
  private final double level;
  private final double[] incidence;
  private final double[] variance;

  private CumulativeIncidence(RiskTable table, RiskTable ofKind, double level) {
    this.table = table;
    this.ofKind = ofKind;
    this.level = Quantile.checkLevel(level);
    this.incidence = new double[table.rows()];
    this.variance = new double[table.rows()];
    fill();
  }

  /** Incidence of one kind, or of several taken together, with 95 per cent limits. */
  public static CumulativeIncidence of(CountedLives lives, int... kinds) {
    return of(lives, 0.95, kinds);
  }

  /**
   * Incidence of one kind, or of several taken together; all others compete.
   *
   * @param level of the limits, such as 0.95
   * @param kinds at least one, each 1 to the number of kinds counted
   */
  public static CumulativeIncidence of(CountedLives lives, double level, int... kinds) {
    if (kinds.length == 0) {
      throw new IllegalArgumentException("no kind of event was asked for");
    }
    return new CumulativeIncidence(lives.anyEvent(), lives.eventsOf(kinds), level);
  }

  private void fill() {
    double s = 1;
    double f = 0;
    double varS = 0;
    double covSf = 0;
    double varF = 0;
    for (int i = 0; i < incidence.length; i++) {
      double n = table.atRisk(i);
      double d = table.events(i);
      double dj = ofKind.events(i);
      if (d > 0) {
        double q = (n - d) / n;
        double h = dj / n;
        double s2 = s * s / (n * n * n);
        varF += 2 * h * covSf + h * h * varS + s2 * dj * (n - dj);
        covSf = q * (covSf + h * varS) - s2 * dj * (n - d);
        varS = q * q * varS + s2 * d * (n - d);
        f += s * h;
        s *= q;
      }
      incidence[i] = f;
      variance[i] = varF;
    }
  }

  /** Number of rows: distinct times at which a life ended or was censored. */
  public int rows() {
    return incidence.length;
  }

  /** Time of a row. */
  public double time(int row) {
    return table.time(row);
  }

  /** At risk at a row's time. */
  public long atRisk(int row) {
    return table.atRisk(row);
  }

  /** Events of the kinds asked for at a row's time. */
  public long events(int row) {
    return ofKind.events(row);
  }

  /** F at a row's time, after its events. */
  public double incidence(int row) {
    return incidence[row];
  }

  /** Standard error of F at a row's time; 0 before the first event, which is no certainty. */
  public double stdError(int row) {
    return Math.sqrt(Math.max(0, variance[row]));
  }

  /**
   * Limits of F at a row's time: F^exp(±z·se/(F·|ln F|)), normal on log(−log F) (Kalbfleisch &amp;
   * Prentice 1980; Choudhury 2002). Before the first event of the kind they are 0 and 1 −
   * (α/2)^(1/n) with n at risk, as for a curve at 1. None where F = 1.
   */
  public Limits limits(int row) {
    return limits(incidence[row], stdError(row), table.atRisk(row));
  }

  private Limits limits(double f, double se, long atRisk) {
    if (f == 0) {
      return atRisk > 0 ? Limits.of(0, 1 - Math.pow((1 - level) / 2, 1.0 / atRisk)) : Limits.none();
    }
    if (f >= CERTAIN || !(se > 0)) {
      return Limits.none();
    }
    double spread = Quantile.twoSided(level) * se / (f * -Math.log(f));
    return Limits.of(Math.pow(f, Math.exp(spread)), Math.pow(f, Math.exp(-spread)));
  }

  /** F at any time from 0; empty after the last exit. */
  public OptionalDouble at(double t) {
    if (!(t >= 0)) {
      throw new IllegalArgumentException("time " + t + ", expected 0 or more");
    }
    int row = table.rowAtOrBefore(t);
    return covers(t) ? OptionalDouble.of(row < 0 ? 0 : incidence[row]) : OptionalDouble.empty();
  }

  /** Standard error of F at any time from 0; empty after the last exit. */
  public OptionalDouble stdErrorAt(double t) {
    int row = table.rowAtOrBefore(t);
    return covers(t) ? OptionalDouble.of(row < 0 ? 0 : stdError(row)) : OptionalDouble.empty();
  }

  /** Limits of F at any time from 0; none after the last exit. At t = 0, F is 0 for certain. */
  public Limits limitsAt(double t) {
    OptionalDouble f = at(t);
    if (f.isEmpty() || t == 0) {
      return f.isEmpty() ? Limits.none() : Limits.of(0, 0);
    }
    return limits(f.getAsDouble(), stdErrorAt(t).getAsDouble(), table.atRiskAt(t));
  }

  /** Last row's time with at least so many at risk; empty if there never were. */
  public OptionalDouble lastTimeWithAtRisk(long minimum) {
    return table.lastTimeWithAtRisk(minimum);
  }

  private boolean covers(double t) {
    return t == 0 || (rows() > 0 && t <= time(rows() - 1));
  }
}
