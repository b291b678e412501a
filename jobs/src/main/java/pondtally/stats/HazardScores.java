package pondtally.stats;

import java.io.Serializable;
import java.util.Arrays;
import java.util.TreeMap;

/**
 * Score residuals at a given β: how much one life contributes to the gradient of the log partial
 * likelihood,
 *
 * <p>U = failed · (x − x̄(t)) − ∫ (x − x̄(u)) exp(xβ) dΛ(u) over the life's time at risk
 *
 * <p>(Lin &amp; Wei 1989; Therneau &amp; Grambsch 2000, with Efron's averaging over tied failures).
 * The table holds running sums by stratum and failure day, so it can be sent to wherever the lives
 * are, and each life costs a few operations. Units: those of the covariates.
 */
public final class HazardScores implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] beta;
  private final double[] center;
  private final int[] columns;
  private final double[] scale;
  private final TreeMap<String, Table> tables = new TreeMap<>();

  /** Running sums up to each failure day, and what differs for a life that fails on it. */
  private static final class Table implements Serializable {
    private static final long serialVersionUID = 1L;
    final double[] days;
    final double[] hazard;
    final double[][] mean;
    final double[][] meanAtFailure;
    final double[] ownHazard;
    final double[][] ownMean;

    Table(double[] days, int p) {
      this.days = days;
      hazard = new double[days.length + 1];
      mean = new double[days.length + 1][p];
      meanAtFailure = new double[days.length + 1][p];
      ownHazard = new double[days.length + 1];
      ownMean = new double[days.length + 1][p];
    }

    void record(int day, int[] columns, HazardMoments m) {
      hazard[day] = m.inverse[0];
      ownHazard[day] = m.inverse[0] - m.inverse[1];
      for (int i = 0; i < columns.length; i++) {
        int j = columns[i];
        mean[day][i] = m.risk1[j] * m.square[0] - m.failed1[j] * m.square[1];
        ownMean[day][i] =
            m.risk1[j] * (m.square[0] - m.square[1]) - m.failed1[j] * (m.square[1] - m.square[2]);
        meanAtFailure[day][i] = m.meanSum(j) / m.failures;
      }
    }

    void accumulate() {
      for (int k = 1; k <= days.length; k++) {
        hazard[k] += hazard[k - 1];
        for (int i = 0; i < mean[k].length; i++) {
          mean[k][i] += mean[k - 1][i];
        }
      }
    }

    int number(double age) {
      int at = Arrays.binarySearch(days, age);
      return at >= 0 ? at + 1 : -at - 1;
    }
  }

  private HazardScores(HazardData data, double[] beta, int[] columns, HazardTies ties) {
    this.beta = beta.clone();
    this.columns = columns.clone();
    center = data.center;
    scale = new double[columns.length];
    for (double[] row : data.x) {
      for (int i = 0; i < columns.length; i++) {
        scale[i] = Math.max(scale[i], Math.abs(row[columns[i]]));
      }
    }
    for (HazardData.Stratum stratum : data.strata) {
      tables.put(stratum.name, new Table(stratum.days, columns.length));
    }
    HazardSweep.over(
        data,
        beta,
        ties,
        (s, day, m) -> tables.get(data.strata.get(s).name).record(day + 1, columns, m));
    tables.values().forEach(Table::accumulate);
  }

  static HazardScores of(HazardData data, double[] beta, int[] columns, HazardTies ties) {
    return new HazardScores(data, beta, columns, ties);
  }

  /** Number of entries of a score: the coefficients that could be estimated. */
  public int size() {
    return columns.length;
  }

  /** The largest size of each covariate, for sums that do not depend on their order. */
  double[] scale() {
    return scale.clone();
  }

  /**
   * Adds one life's score to a sum, as a cluster's sum over its lives.
   *
   * @param x covariates as in the fit
   * @param sum of length {@link #size}
   */
  public void addTo(
      double[] sum, String stratum, double[] x, double entryDays, double exitDays, boolean failed) {
    Table table = tables.get(stratum);
    if (table == null) {
      throw new IllegalArgumentException("stratum " + stratum + " was not in the fit");
    }
    int enter = table.number(entryDays);
    int leave = table.number(exitDays);
    int last = failed ? leave - 1 : leave;
    double theta = theta(x);
    for (int i = 0; i < columns.length; i++) {
      double own = x[columns[i]] - center[columns[i]];
      double score = 0;
      if (last > enter) {
        score -=
            theta
                * (own * (table.hazard[last] - table.hazard[enter])
                    - (table.mean[last][i] - table.mean[enter][i]));
      }
      if (failed) {
        score +=
            own
                - table.meanAtFailure[leave][i]
                - theta * (own * table.ownHazard[leave] - table.ownMean[leave][i]);
      }
      sum[i] += score;
    }
  }

  private double theta(double[] x) {
    double predictor = 0;
    for (int j = 0; j < beta.length; j++) {
      predictor += (x[j] - center[j]) * beta[j];
    }
    return Math.exp(predictor);
  }
}
