package pondtally.stats;

/** What the limits are while nothing has failed, S = 1, where Greenwood's error is 0. */
public enum CurveEdge {
  /**
   * Lower (α/2)^(1/n) with n at risk then, upper 1: the survival at which n of n still working has
   * probability α/2. Source: the exact binomial limit of Clopper &amp; Pearson 1934. Three devices
   * without a failure are not a certainty.
   */
  EXACT {
    @Override
    Limits atOne(CurveInterval interval, long atRisk, double level) {
      return atRisk > 0 ? Limits.of(Math.pow((1 - level) / 2, 1.0 / atRisk), 1) : Limits.none();
    }
  },

  /** As most programs have it: undefined for LOG_LOG; 1 to 1 for PLAIN and LOG. */
  TEXTBOOK {
    @Override
    Limits atOne(CurveInterval interval, long atRisk, double level) {
      return interval == CurveInterval.LOG_LOG ? Limits.none() : Limits.of(1, 1);
    }
  };

  abstract Limits atOne(CurveInterval interval, long atRisk, double level);
}
