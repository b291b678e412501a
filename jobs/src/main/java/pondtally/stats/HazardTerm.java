package pondtally.stats;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * One column of a fitted hazard model: an estimate, or the reason why there is none.
 *
 * @param column the covariate, its level and the reference
 * @param lives lives with a value other than 0 in the column (at the level)
 * @param failures of them, seen to fail
 * @param estimate empty if the coefficient cannot be estimated
 * @param reason why not, as a sentence part; empty if it can
 */
public record HazardTerm(
    HazardDesign.Column column,
    long lives,
    long failures,
    Optional<Estimate> estimate,
    Optional<String> reason) {

  private static final double Z = NormalDistribution.of(0, 1).inverseSurvivalProbability(0.025);

  /**
   * An estimated coefficient.
   *
   * @param coefficient β, log of the hazard ratio, per unit of a number
   * @param modelStandardError from the information matrix, as if lives were independent
   * @param robustStandardError clustered (Lin &amp; Wei 1989); empty until clusters are given
   * @param hazardRatio exp(β)
   * @param lower 95 per cent limit exp(β − 1.96 s), s robust where known
   * @param upper the other limit
   * @param z β/s
   * @param pValue of β = 0, two-sided, normal
   */
  public record Estimate(
      double coefficient,
      double modelStandardError,
      OptionalDouble robustStandardError,
      double hazardRatio,
      double lower,
      double upper,
      double z,
      double pValue) {

    static Estimate of(double coefficient, double modelError, OptionalDouble robustError) {
      double error = robustError.orElse(modelError);
      double z = coefficient / error;
      return new Estimate(
          coefficient,
          modelError,
          robustError,
          Math.exp(coefficient),
          Math.exp(coefficient - Z * error),
          Math.exp(coefficient + Z * error),
          z,
          2 * NormalDistribution.of(0, 1).survivalProbability(Math.abs(z)));
    }
  }
}
