package pondtally.stats;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Limits of an estimate from its values in resamples. Undefined values (NaN: a ratio whose
 * denominator was 0 in that resample) are counted and left out; above 1 per cent of them there are
 * no limits.
 *
 * <p>A quantile α of R sorted values is taken at rank (R + 1)α; between two ranks k and k + 1 it is
 * interpolated on the normal scale, by (z(α) − z(k/(R+1))) / (z((k+1)/(R+1)) − z(k/(R+1))). Source:
 * Davison &amp; Hinkley 1997, section 5.2. Ranks outside 1 to R give the extreme value and are
 * marked: take more resamples.
 */
public final class Bootstrap {
  private static final double MOST_UNDEFINED = 0.01;

  /** Of two or three clusters the limits are the extreme resamples. */
  private static final double WIDEST = 1 - 1e-9;

  private final double[] sorted;
  private final int undefined;
  private final double level;

  private Bootstrap(double[] values, double level) {
    double[] copy = values.clone();
    Arrays.sort(copy);
    int defined = copy.length;
    while (defined > 0 && !(Math.abs(copy[defined - 1]) < Double.POSITIVE_INFINITY)) {
      defined--;
    }
    int from = 0;
    while (from < defined && copy[from] == Double.NEGATIVE_INFINITY) {
      from++;
    }
    this.sorted = Arrays.copyOfRange(copy, from, defined);
    this.undefined = copy.length - sorted.length;
    this.level = Quantile.checkLevel(level);
  }

  /**
   * From the estimate's value in each resample, in any order.
   *
   * @param values one for each resample; NaN or infinite where it is undefined
   * @param level such as 0.95
   */
  public static Bootstrap of(double[] values, double level) {
    return new Bootstrap(values, level);
  }

  /**
   * The same for a statistic of n clusters, widened for small n: resampling clusters gives too
   * narrow a spread by √((n − 1)/n), and takes it as known, so that normal quantiles z are replaced
   * by √(n/(n − 1))·t(n − 1). Source: Hesterberg 2015, The American Statistician 69:371-386,
   * section 5.3 (expanded percentile limits).
   *
   * @param clusters n, at least 2; with one the caller gives no limits
   */
  public static Bootstrap expanded(double[] values, double level, long clusters) {
    if (clusters < 2) {
      return new Bootstrap(values, level);
    }
    double t = Quantile.studentT((1 + level) / 2, clusters - 1.0);
    double wide = 1 - 2 * Quantile.normalBelow(-t * Math.sqrt(clusters / (clusters - 1.0)));
    return new Bootstrap(values, Math.min(wide, WIDEST));
  }

  /** Resamples, the undefined ones included. */
  public int resamples() {
    return sorted.length + undefined;
  }

  /** Resamples in which the estimate was undefined. */
  public int undefined() {
    return undefined;
  }

  /** Whether limits can be given: some resamples, and at most 1 per cent of them undefined. */
  public boolean usable() {
    return sorted.length > 0 && undefined <= MOST_UNDEFINED * resamples();
  }

  /** Percentile limits: the α/2 and 1 − α/2 quantiles. Source: Efron 1979. */
  public Limits percentile() {
    return usable() ? between((1 - level) / 2, (1 + level) / 2) : Limits.none();
  }

  /**
   * BCa limits, corrected for bias and for skewness: quantiles at Φ(z₀ + (z₀ ± z)/(1 − a(z₀ ± z))),
   * with z₀ the normal quantile of the share of resamples below the estimate and a the
   * acceleration. Source: Efron 1987. None where all or no resamples lie below the estimate.
   *
   * @param estimate the value in the data themselves
   * @param acceleration see {@link JackknifeInfluence}
   */
  public Limits bca(double estimate, double acceleration) {
    double z0 = biasCorrection(estimate);
    if (!usable() || Double.isInfinite(z0)) {
      return Limits.none();
    }
    double z = Quantile.twoSided(level);
    double lower = corrected(z0, -z, acceleration);
    double upper = corrected(z0, z, acceleration);
    return lower <= upper ? between(lower, upper) : Limits.none();
  }

  /** z₀, infinite where all or no resamples lie below the estimate. */
  double biasCorrection(double estimate) {
    long below = Arrays.stream(sorted).filter(v -> v < estimate).count();
    return sorted.length == 0
        ? Double.POSITIVE_INFINITY
        : Quantile.normal(below / (double) sorted.length);
  }

  private static double corrected(double z0, double z, double acceleration) {
    double shifted = z0 + z;
    return Quantile.normalBelow(z0 + shifted / (1 - acceleration * shifted));
  }

  private Limits between(double lower, double upper) {
    return Limits.of(quantile(lower), quantile(upper));
  }

  /**
   * Share of defined resamples above a value, such as a benefit-cost ratio of 1; empty where no
   * limits can be given. It carries the sampling of clusters, not the doubt about assumptions.
   */
  public OptionalDouble shareAbove(double value) {
    long above = Arrays.stream(sorted).filter(v -> v > value).count();
    return usable() ? OptionalDouble.of(above / (double) sorted.length) : OptionalDouble.empty();
  }

  /**
   * Whether a quantile's rank (R + 1)α lies outside 1 to R, so that the extreme value stands for
   * it.
   */
  public boolean extreme(double probability) {
    double rank = rank(probability);
    return rank < 1 || rank > sorted.length;
  }

  private double rank(double probability) {
    double rank = (sorted.length + 1) * probability;
    // 1000 · 0.025 is rank 25, although it is not in binary arithmetic.
    return Math.abs(rank - Math.rint(rank)) < 1e-9 ? Math.rint(rank) : rank;
  }

  private double quantile(double probability) {
    double rank = rank(probability);
    int k = (int) rank;
    if (k < 1 || k >= sorted.length || k == rank) {
      return sorted[Math.min(Math.max(k, 1), sorted.length) - 1];
    }
    double below = Quantile.normal(k / (sorted.length + 1.0));
    double above = Quantile.normal((k + 1) / (sorted.length + 1.0));
    double share = (Quantile.normal(probability) - below) / (above - below);
    return sorted[k - 1] + share * (sorted[k] - sorted[k - 1]);
  }
}
