package pondtally.stats;

import java.util.Arrays;
import java.util.List;

/**
 * Log-likelihood of log T = xβ + σW for lives with counts: known days f(t), otherwise P(L &lt; T ≤
 * R), each over P(T &gt; E) (left-, right- and interval-censored lives are cases of it; Turnbull
 * 1976, Meeker &amp; Escobar 1998 ch. 7 and 11). Parameters are β, then τ = log σ where σ is
 * estimated.
 */
final class ParametricLikelihood {
  /** Lives that share a follow-up and covariates, the intercept's 1 included. */
  static final class Lives {
    final IntervalCounts.Row row;
    final double[] x;

    Lives(IntervalCounts.Row row, double[] x) {
      this.row = row;
      this.x = x;
    }
  }

  final double value;
  final double[] score;
  final double[][] information;

  private final ParametricDistribution distribution;
  private final double[] beta;
  private final double sigma;
  private final double[] terms = new double[6];

  private ParametricLikelihood(
      ParametricDistribution distribution, List<Lives> all, double[] parameters) {
    this.distribution = distribution;
    int p = parameters.length - (distribution.scaled() ? 1 : 0);
    beta = Arrays.copyOf(parameters, p);
    sigma = distribution.scaled() ? Math.exp(parameters[p]) : 1;
    score = new double[parameters.length];
    information = new double[parameters.length][parameters.length];
    double sum = 0;
    for (Lives lives : all) {
      sum += add(lives);
    }
    value = sum;
  }

  static ParametricLikelihood at(
      ParametricDistribution distribution, List<Lives> all, double[] parameters) {
    return new ParametricLikelihood(distribution, all, parameters);
  }

  private double add(Lives lives) {
    IntervalCounts.Row row = lives.row;
    double mu = 0;
    for (int j = 0; j < beta.length; j++) {
      mu += beta[j] * lives.x[j];
    }
    double n = row.count();
    double left = standard(row.leftDays(), mu);
    double right = standard(row.rightDays(), mu);
    double log;
    if (row.exact()) {
      distribution.density(left, terms);
      log = terms[0] - Math.log(sigma * row.leftDays());
      derive(lives.x, n, left, 0, terms[1], 0, terms[2], 0, 0);
      if (distribution.scaled()) {
        score[beta.length] -= n;
      }
    } else {
      distribution.interval(left, right, terms);
      log = terms[0];
      derive(lives.x, n, left, right, terms[1], terms[2], terms[3], terms[4], terms[5]);
    }
    if (row.entryDays() > 0) {
      double entry = standard(row.entryDays(), mu);
      distribution.interval(entry, Double.POSITIVE_INFINITY, terms);
      log -= terms[0];
      derive(lives.x, -n, entry, 0, terms[1], 0, terms[3], 0, 0);
    }
    return n * log;
  }

  private double standard(double days, double mu) {
    return (Math.log(days) - mu) / sigma;
  }

  /**
   * Adds derivatives by the chain rule: z depends on μ by −1/σ and on τ by −z, of second order by
   * 1/σ (μ, τ) and z (τ, τ).
   */
  private void derive(
      double[] x,
      double n,
      double za,
      double zb,
      double a,
      double b,
      double aa,
      double ab,
      double bb) {
    double ya = Double.isInfinite(za) ? 0 : za;
    double yb = Double.isInfinite(zb) ? 0 : zb;
    double mu = -(a + b) / sigma;
    double muMu = (aa + 2 * ab + bb) / (sigma * sigma);
    double tau = -(a * ya + b * yb);
    double muTau = (aa * ya + ab * (ya + yb) + bb * yb + a + b) / sigma;
    double tauTau = aa * ya * ya + 2 * ab * ya * yb + bb * yb * yb + a * ya + b * yb;
    int p = beta.length;
    for (int i = 0; i < p; i++) {
      score[i] += n * mu * x[i];
      for (int j = 0; j < p; j++) {
        information[i][j] -= n * muMu * x[i] * x[j];
      }
      if (distribution.scaled()) {
        information[i][p] -= n * muTau * x[i];
        information[p][i] -= n * muTau * x[i];
      }
    }
    if (distribution.scaled()) {
      score[p] += n * tau;
      information[p][p] -= n * tauTau;
    }
  }
}
