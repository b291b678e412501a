package pondtally.stats;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * A chi-square test.
 *
 * @param statistic chi-square statistic, no unit
 * @param degreesOfFreedom 1 or more
 * @param pValue probability of a statistic at least as large if the hypothesis holds
 */
public record HazardTest(double statistic, int degreesOfFreedom, double pValue) {
  static HazardTest of(double statistic, int degreesOfFreedom) {
    double p = ChiSquaredDistribution.of(degreesOfFreedom).survivalProbability(statistic);
    return new HazardTest(statistic, degreesOfFreedom, p);
  }
}
