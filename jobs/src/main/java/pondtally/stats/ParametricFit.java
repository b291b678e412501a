package pondtally.stats;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.hipparchus.special.Gamma;

/**
 * A distribution fitted to one group of lives, and what follows from it. Ages are days. Errors by
 * the delta method, 95 per cent limits on the log scale. Everything is empty where the fit has a
 * {@link #reason}. What lies past the longest observed age is extrapolation: it rests on the
 * distribution, not on the lives.
 */
public final class ParametricFit {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private final ParametricRegression regression;

  private ParametricFit(ParametricRegression regression) {
    this.regression = regression;
  }

  /**
   * Maximum likelihood from lives with counts; exact, left-, right- and interval-censored, with
   * late entry.
   */
  public static ParametricFit of(ParametricDistribution distribution, IntervalCounts counts) {
    return new ParametricFit(ParametricRegression.fit(distribution, counts));
  }

  /** The distribution fitted. */
  public ParametricDistribution distribution() {
    return regression.distribution();
  }

  /** Why nothing could be estimated; empty if it could. */
  public Optional<String> reason() {
    return regression.reason();
  }

  /** Lives in the fit. */
  public long lives() {
    return regression.lives();
  }

  /** Of them, seen to fail. */
  public long failures() {
    return regression.failures();
  }

  /** Log-likelihood at the maximum, densities per day. */
  public OptionalDouble logLikelihood() {
    return regression.logLikelihood();
  }

  /** μ, mean of log T less σ times the mean of W. */
  public Optional<ParametricEstimate> location() {
    return regression.coefficients().stream().findFirst();
  }

  /** log σ; empty for the exponential. */
  public Optional<ParametricEstimate> logSigma() {
    return regression.logSigma();
  }

  /** σ. */
  public Optional<ParametricEstimate> sigma() {
    return logSigma()
        .map(
            s ->
                ParametricEstimate.positive(
                    Math.exp(s.value()), Math.exp(s.value()) * s.standardError()));
  }

  /**
   * Weibull shape 1/σ: above 1 devices wear out, below 1 early failures dominate; empty for the
   * others.
   */
  public Optional<ParametricEstimate> shape() {
    return distribution() != ParametricDistribution.WEIBULL
        ? Optional.empty()
        : logSigma()
            .map(
                s ->
                    ParametricEstimate.positive(
                        Math.exp(-s.value()), Math.exp(-s.value()) * s.standardError()));
  }

  /**
   * exp(μ) in days: the age by which 63.2 per cent have failed (Weibull, exponential), or half
   * (lognormal).
   */
  public Optional<ParametricEstimate> scaleDays() {
    return location()
        .map(
            m ->
                ParametricEstimate.positive(
                    Math.exp(m.value()), Math.exp(m.value()) * m.standardError()));
  }

  /**
   * Location μ and log σ at a point of their approximate normal distribution around the estimates,
   * as drawn for prediction limits.
   *
   * @param first standard normal deviate that moves both
   * @param second standard normal deviate that moves log σ alone; not used by the exponential
   * @return {μ, log σ}; the estimates themselves at 0, 0; empty where nothing could be estimated
   */
  public Optional<double[]> displaced(double first, double second) {
    if (reason().isPresent()) {
      return Optional.empty();
    }
    double[] at = regression.location();
    double[][] covariance = regression.covariance();
    double error = Math.sqrt(covariance[0][0]);
    if (covariance.length < 2) {
      return Optional.of(new double[] {at[0] + error * first, at[1]});
    }
    double shared = covariance[0][1] / error;
    double own = Math.sqrt(Math.max(0, covariance[1][1] - shared * shared));
    return Optional.of(new double[] {at[0] + error * first, at[1] + shared * first + own * second});
  }

  /** S(t) = P(T &gt; t) at an age in days. */
  public OptionalDouble survivalAt(double days) {
    if (reason().isPresent()) {
      return OptionalDouble.empty();
    }
    double[] at = regression.location();
    return OptionalDouble.of(survival(days, at[0], at[1]));
  }

  /**
   * S(t) with limits exp(−exp(·)) on the scale of log(−log S), which keeps them between 0 and 1.
   */
  public Optional<ParametricEstimate> survivalLimits(double days) {
    Optional<ParametricEstimate> hazard = estimate((mu, tau) -> -Math.log(survival(days, mu, tau)));
    return hazard.map(
        h ->
            new ParametricEstimate(
                Math.exp(-h.value()),
                Math.exp(-h.value()) * h.standardError(),
                Math.exp(-h.upper()),
                Math.exp(-h.lower())));
  }

  /**
   * Age in days by which a share of lives has failed.
   *
   * @param share above 0 and below 1
   */
  public Optional<ParametricEstimate> quantileDays(double share) {
    double z = distribution().quantile(share);
    return estimate((mu, tau) -> Math.exp(mu + z * Math.exp(tau)));
  }

  /**
   * Mean life in days, scale · Γ(1 + σ) or exp(μ + σ²/2): an extrapolation wherever many lives
   * outlast observation.
   */
  public Optional<ParametricEstimate> meanLifeDays() {
    return estimate(
        (mu, tau) ->
            distribution() == ParametricDistribution.LOGNORMAL
                ? Math.exp(mu + Math.exp(2 * tau) / 2)
                : Math.exp(mu + Gamma.logGamma(1 + Math.exp(tau))));
  }

  /** Mean life up to a horizon in days: ∫ S from 0 to it. */
  public Optional<ParametricEstimate> restrictedMeanDays(double horizonDays) {
    return estimate((mu, tau) -> restrictedMean(horizonDays, mu, Math.exp(tau)));
  }

  private double survival(double days, double mu, double tau) {
    return days <= 0
        ? 1
        : Math.exp(distribution().logSurvival((Math.log(days) - mu) * Math.exp(-tau)));
  }

  private double restrictedMean(double horizon, double mu, double sigma) {
    if (horizon <= 0) {
      return 0;
    }
    double z = (Math.log(horizon) - mu) / sigma;
    double beyond = horizon * Math.exp(distribution().logSurvival(z));
    if (distribution() == ParametricDistribution.LOGNORMAL) {
      return Math.exp(mu + sigma * sigma / 2) * NORMAL.cumulativeProbability(z - sigma) + beyond;
    }
    return Math.exp(mu + Gamma.logGamma(1 + sigma))
            * Gamma.regularizedGammaP(1 + sigma, Math.exp(z))
        + beyond;
  }

  /** A positive function of μ and log σ with its error by the delta method. */
  private Optional<ParametricEstimate> estimate(DoubleBinaryOperator function) {
    if (reason().isPresent()) {
      return Optional.empty();
    }
    double[] at = regression.location();
    double[][] covariance = regression.covariance();
    double byMu = slope(h -> function.applyAsDouble(at[0] + h, at[1]));
    double byTau = covariance.length < 2 ? 0 : slope(h -> function.applyAsDouble(at[0], at[1] + h));
    double variance = byMu * byMu * covariance[0][0];
    if (covariance.length > 1) {
      variance += 2 * byMu * byTau * covariance[0][1] + byTau * byTau * covariance[1][1];
    }
    return Optional.of(
        ParametricEstimate.positive(function.applyAsDouble(at[0], at[1]), Math.sqrt(variance)));
  }

  /**
   * Derivative at 0 by central differences of fourth order; parameters are logarithms, so one step
   * width suits all.
   */
  private static double slope(DoubleUnaryOperator f) {
    double h = 1e-3;
    double near = f.applyAsDouble(h) - f.applyAsDouble(-h);
    double far = f.applyAsDouble(2 * h) - f.applyAsDouble(-2 * h);
    return (8 * near - far) / (12 * h);
  }
}
