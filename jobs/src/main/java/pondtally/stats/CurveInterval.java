package pondtally.stats;

/**
 * How the limits of a survival curve are computed from S and Greenwood's error. With z the normal
 * quantile, g = Σ d/(n(n−d)) and se = S·√g. Undefined at S = 0; see {@link CurveEdge} for S = 1.
 */
public enum CurveInterval {
  /**
   * S^exp(±z·√g/|ln S|): normal on log(−log S), always between 0 and 1. Source: Kalbfleisch &amp;
   * Prentice 1980; recommended for small numbers by Borgan &amp; Liestøl 1990.
   */
  LOG_LOG {
    @Override
    Limits inside(double survival, double greenwood, double z) {
      double spread = z * Math.sqrt(greenwood) / -Math.log(survival);
      return Limits.of(Math.pow(survival, Math.exp(spread)), Math.pow(survival, Math.exp(-spread)));
    }
  },

  /** S ± z·se: normal on S, cut at 0 and 1. Source: Greenwood 1926. Poor for small numbers. */
  PLAIN {
    @Override
    Limits inside(double survival, double greenwood, double z) {
      double spread = z * survival * Math.sqrt(greenwood);
      return Limits.of(Math.max(0, survival - spread), Math.min(1, survival + spread));
    }
  },

  /** S·exp(±z·√g): normal on log S, cut at 1. Source: Kalbfleisch &amp; Prentice 1980. */
  LOG {
    @Override
    Limits inside(double survival, double greenwood, double z) {
      double spread = z * Math.sqrt(greenwood);
      return Limits.of(survival * Math.exp(-spread), Math.min(1, survival * Math.exp(spread)));
    }
  };

  /** Limits where 0 &lt; S &lt; 1. */
  abstract Limits inside(double survival, double greenwood, double z);
}
