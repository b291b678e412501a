package pondtally.stats;

import java.util.List;
import java.util.stream.DoubleStream;

/** Weighted observed, expected and covariance of the groups, added up over strata. */
final class LogRankSums {
  final double[] observed;
  final double[] expected;
  final double[] score;
  final double[][] covariance;

  private final int groups;
  private final LogRankWeight weight;
  private final double[] atRisk;
  private final double[] failed;

  LogRankSums(int groups, LogRankWeight weight) {
    this.groups = groups;
    this.weight = weight;
    this.observed = new double[groups];
    this.expected = new double[groups];
    this.score = new double[groups];
    this.covariance = new double[groups][groups];
    this.atRisk = new double[groups];
    this.failed = new double[groups];
  }

  /** Adds one stratum; its groups are in the same order as those of every other. */
  void add(List<RiskTable> stratum) {
    double survivalBefore = 1;
    double peto = 1;
    int[] row = new int[groups];
    for (double t : eventTimes(stratum)) {
      gather(stratum, t, row);
      double n = DoubleStream.of(atRisk).sum();
      double d = DoubleStream.of(failed).sum();
      peto *= 1 - d / (n + 1);
      addTime(n, d, weight.at(survivalBefore, peto, n));
      survivalBefore *= (n - d) / n;
    }
  }

  private static double[] eventTimes(List<RiskTable> stratum) {
    DoubleStream.Builder times = DoubleStream.builder();
    for (RiskTable group : stratum) {
      for (int i = 0; i < group.rows(); i++) {
        if (group.events(i) > 0) {
          times.add(group.time(i));
        }
      }
    }
    return times.build().sorted().distinct().toArray();
  }

  private void gather(List<RiskTable> stratum, double t, int[] row) {
    for (int j = 0; j < groups; j++) {
      RiskTable group = stratum.get(j);
      while (row[j] < group.rows() && group.time(row[j]) < t) {
        row[j]++;
      }
      boolean here = row[j] < group.rows() && group.time(row[j]) == t;
      failed[j] = here ? group.events(row[j]) : 0;
      atRisk[j] = here ? group.atRisk(row[j]) : group.atRiskAt(t);
    }
  }

  private void addTime(double n, double d, double w) {
    double spread = n > 1 ? w * w * d * (n - d) / (n - 1) : 0;
    for (int i = 0; i < groups; i++) {
      if (atRisk[i] > 0) {
        double share = atRisk[i] / n;
        observed[i] += w * failed[i];
        expected[i] += w * d * share;
        score[i] += w * (failed[i] - d * share);
        covariance[i][i] += spread * share;
        for (int j = 0; j < groups; j++) {
          covariance[i][j] -= spread * share * (atRisk[j] / n);
        }
      }
    }
  }
}
