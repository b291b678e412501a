package pondtally.stats;

/**
 * What each failure time counts for in a test of the log-rank family. With n at risk and d failures
 * in all groups of the stratum together, S(t−) their product-limit curve just before t, and S̃(t) =
 * Π (1 − d/(n+1)) through t. Sources: Klein &amp; Moeschberger 2003, table 7.3; Harrington &amp;
 * Fleming 1982. Choose before looking at the data.
 */
public final class LogRankWeight {
  /** 1 at every failure: most power against proportional hazards. Source: Mantel 1966. */
  public static final LogRankWeight LOG_RANK = new LogRankWeight(Kind.ONE, 0, 0);

  /** n: early failures count more, and so do times with little censoring. Source: Gehan 1965. */
  public static final LogRankWeight GEHAN_BRESLOW = new LogRankWeight(Kind.AT_RISK, 0, 0);

  /** √n. Source: Tarone &amp; Ware 1977. */
  public static final LogRankWeight TARONE_WARE = new LogRankWeight(Kind.ROOT_AT_RISK, 0, 0);

  /** S̃(t): early failures count more, whatever the censoring. Source: Peto &amp; Peto 1972. */
  public static final LogRankWeight PETO_PETO = new LogRankWeight(Kind.PETO, 0, 0);

  /** S̃(t)·n/(n+1). Source: Andersen et al. 1982. */
  public static final LogRankWeight MODIFIED_PETO_PETO =
      new LogRankWeight(Kind.MODIFIED_PETO, 0, 0);

  private final Kind kind;
  private final double rho;
  private final double gamma;

  private LogRankWeight(Kind kind, double rho, double gamma) {
    this.kind = kind;
    this.rho = rho;
    this.gamma = gamma;
  }

  /**
   * S(t−)^ρ·(1 − S(t−))^γ, both at least 0. Source: Harrington &amp; Fleming 1982; Fleming &amp;
   * Harrington 1991. (0, 0) is the log-rank test; ρ favors early, γ late differences.
   */
  public static LogRankWeight gRho(double rho, double gamma) {
    if (!(rho >= 0 && gamma >= 0)) {
      throw new IllegalArgumentException(
          "rho " + rho + " and gamma " + gamma + ", expected 0 or more");
    }
    return new LogRankWeight(Kind.G_RHO, rho, gamma);
  }

  double at(double survivalBefore, double petoThrough, double atRisk) {
    return switch (kind) {
      case ONE -> 1;
      case AT_RISK -> atRisk;
      case ROOT_AT_RISK -> Math.sqrt(atRisk);
      case PETO -> petoThrough;
      case MODIFIED_PETO -> petoThrough * atRisk / (atRisk + 1);
      case G_RHO -> Math.pow(survivalBefore, rho) * Math.pow(1 - survivalBefore, gamma);
    };
  }

  private enum Kind {
    ONE,
    AT_RISK,
    ROOT_AT_RISK,
    PETO,
    MODIFIED_PETO,
    G_RHO
  }
}
