package pondtally.stats;

/**
 * Visits every failure day of every stratum, last day first, with the sums over the lives at risk.
 */
final class HazardSweep {
  /** What is done on each failure day. */
  interface Visitor {
    /**
     * Called once a failure day.
     *
     * @param stratum index of the stratum
     * @param day index of the failure day in it
     */
    void visit(int stratum, int day, HazardMoments moments);
  }

  private HazardSweep() {}

  static void over(HazardData data, double[] beta, HazardTies ties, Visitor visitor) {
    double[] predictor = data.predictors(beta);
    double[] theta = new double[predictor.length];
    for (int v = 0; v < theta.length; v++) {
      theta[v] = Math.exp(predictor[v]);
    }
    HazardMoments moments = new HazardMoments(beta.length, ties);
    for (int s = 0; s < data.strata.size(); s++) {
      HazardData.Stratum stratum = data.strata.get(s);
      moments.clearRisk();
      long atRisk = 0;
      for (int k = stratum.days.length; k >= 1; k--) {
        atRisk += move(stratum.leaving, k, 1, theta, data.x, moments);
        atRisk -= move(stratum.entering, k, -1, theta, data.x, moments);
        moments.clearFailed();
        for (int e = stratum.failing.from(k); e < stratum.failing.to(k); e++) {
          int v = stratum.failing.profile(e);
          moments.addFailed(stratum.failing.count(e), predictor[v], theta[v], data.x[v]);
        }
        moments.settle();
        visitor.visit(s, k - 1, moments);
        if (atRisk == 0) {
          moments.clearRisk();
        }
      }
    }
  }

  private static long move(
      HazardBuckets lives,
      int number,
      int sign,
      double[] theta,
      double[][] x,
      HazardMoments moments) {
    long moved = 0;
    for (int e = lives.from(number); e < lives.to(number); e++) {
      int v = lives.profile(e);
      moved += lives.count(e);
      moments.addRisk(sign * lives.count(e) * theta[v], x[v]);
    }
    return moved;
  }
}
