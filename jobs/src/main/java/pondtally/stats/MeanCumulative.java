package pondtally.stats;

import java.util.OptionalDouble;

/**
 * Mean cumulative function: how many failures a device has had on average by time t, M(t) = Σ d/n
 * over event times up to t, with d events among n devices at risk. Unit: failures per device.
 * Source: Nelson 1995, 2003. One row for each distinct event time.
 *
 * <p>Assumes nothing of how a device's failures hang together, only that follow-up does not depend
 * on them. The Poisson variance Σ d/n² needs no second pass but holds only if failures come
 * independently of each other; {@link RepeatSpread} gives the robust one.
 */
public final class MeanCumulative {
  private final long devices;
  private final double[] times;
  private final long[] atRisk;
  private final long[] events;
  private final double[] mean;
  private final double[] poissonVariance;

  private MeanCumulative(long devices, RiskTable followUp, RiskTable eventTable) {
    int rows = eventTable.rows();
    this.devices = devices;
    this.times = new double[rows];
    this.atRisk = new long[rows];
    this.events = new long[rows];
    this.mean = new double[rows];
    this.poissonVariance = new double[rows];
    double m = 0;
    double v = 0;
    for (int i = 0; i < rows; i++) {
      times[i] = eventTable.time(i);
      events[i] = eventTable.events(i);
      atRisk[i] = followUp.atRiskAt(times[i]);
      double n = atRisk[i];
      m += events[i] / n;
      v += events[i] / (n * n);
      mean[i] = m;
      poissonVariance[i] = v;
    }
  }

  /** From the first pass over the devices. */
  public static MeanCumulative of(RepeatCounts counts) {
    return new MeanCumulative(counts.devices(), counts.followUpTable(), counts.eventTable());
  }

  /** Number of rows. */
  public int rows() {
    return times.length;
  }

  /** Time of a row. */
  public double time(int row) {
    return times[row];
  }

  /** Devices at risk at a row's time. */
  public long atRisk(int row) {
    return atRisk[row];
  }

  /** Events at a row's time. */
  public long events(int row) {
    return events[row];
  }

  /** M at a row's time, after its events. */
  public double mean(int row) {
    return mean[row];
  }

  /** Poisson variance of M at a row's time. */
  public double poissonVariance(int row) {
    return poissonVariance[row];
  }

  /**
   * Limits M·exp(±z·se/M), normal on log M; none where the error is 0. Source: Nelson 2003.
   *
   * @param stdError of M at the row, robust or Poisson
   * @param level such as 0.95
   */
  public Limits limits(int row, double stdError, double level) {
    double spread = Quantile.twoSided(level) * stdError / mean[row];
    return stdError > 0
        ? Limits.of(mean[row] * Math.exp(-spread), mean[row] * Math.exp(spread))
        : Limits.none();
  }

  /** Last row's time with at least so many at risk; empty if there never were. */
  public OptionalDouble lastTimeWithAtRisk(long minimum) {
    for (int row = rows() - 1; row >= 0; row--) {
      if (atRisk[row] >= minimum) {
        return OptionalDouble.of(times[row]);
      }
    }
    return OptionalDouble.empty();
  }

  /** An empty second pass, for the robust variance. */
  public RepeatSpread spread() {
    return RepeatSpread.of(this);
  }

  long devices() {
    return devices;
  }
}
