package pondtally.stats;

import java.util.OptionalDouble;

/**
 * Ratios of observed to expected failures drawn toward their mean by their precision: counts are
 * Poisson with mean θ·E, and θ varies between groups by a gamma distribution with shape ν and rate
 * α. Each group's ratio becomes the posterior mean (O + ν)/(E + α). Source: Clayton &amp; Kaldor
 * 1987, with ν and α at their maximum likelihood. No units.
 *
 * <p>Where the groups vary no more than chance explains, the likelihood is greatest without any
 * variance between them: every group then has the pooled ratio ΣO/ΣE. Assumes groups that are alike
 * beforehand; a shrunken ratio is a better forecast, not a better record, and a few groups fix ν
 * and α poorly.
 */
public final class GammaPoisson {
  private final OptionalDouble shape;
  private final OptionalDouble rate;
  private final OptionalDouble pooled;

  private GammaPoisson(OptionalDouble shape, OptionalDouble rate, OptionalDouble pooled) {
    this.shape = shape;
    this.rate = rate;
    this.pooled = pooled;
  }

  /**
   * Fits ν and α.
   *
   * @param observed failures of each group, 0 or more
   * @param expected failures of each group if all were alike, 0 or more; groups with 0 say nothing
   */
  public static GammaPoisson fit(long[] observed, double[] expected) {
    GammaPoissonFit fit = GammaPoissonFit.of(observed, expected);
    OptionalDouble shape = fit.shape();
    OptionalDouble rate =
        shape.isPresent()
            ? OptionalDouble.of(shape.getAsDouble() / fit.mean(shape.getAsDouble()))
            : shape;
    return new GammaPoisson(shape, rate, fit.pooled());
  }

  /** ν; empty where no variance between groups was found. */
  public OptionalDouble shape() {
    return shape;
  }

  /** α, in expected failures; empty where no variance between groups was found. */
  public OptionalDouble rate() {
    return rate;
  }

  /** ΣO/ΣE over all groups; empty if nothing was expected. */
  public OptionalDouble pooled() {
    return pooled;
  }

  /** Mean ν/α of the ratios between groups, or the pooled ratio; empty if nothing was expected. */
  public OptionalDouble mean() {
    return shape.isPresent() ? OptionalDouble.of(shape.getAsDouble() / rate.getAsDouble()) : pooled;
  }

  /** A group's ratio drawn toward the mean; empty if nothing was expected anywhere. */
  public OptionalDouble shrunken(long observed, double expected) {
    return shape.isPresent()
        ? OptionalDouble.of((observed + shape.getAsDouble()) / (expected + rate.getAsDouble()))
        : pooled;
  }

  /**
   * Equal-tailed posterior limits of a group's ratio, by the gamma distribution with shape O + ν
   * and rate E + α; none without variance between groups. ν and α are taken as known, so they are
   * somewhat too narrow.
   */
  public Limits limits(long observed, double expected, double level) {
    double tail = (1 - Quantile.checkLevel(level)) / 2;
    if (shape.isEmpty()) {
      return Limits.none();
    }
    double a = observed + shape.getAsDouble();
    double b = expected + rate.getAsDouble();
    return Limits.of(Quantile.gamma(tail, a) / b, Quantile.gamma(1 - tail, a) / b);
  }
}
