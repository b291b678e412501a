package pondtally.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Tests that hazard ratios do not drift with age: the score test of adding x·g(t) to the model
 * (Grambsch &amp; Therneau 1994 in the score form; Therneau &amp; Grambsch 2000), g one of {@link
 * HazardTransform}. A small p-value says that the one ratio reported is an average over ages whose
 * ratios differ.
 *
 * @param transform the function of age
 * @param tests one for each of the model's terms, empty where the coefficient could not be
 *     estimated
 * @param all all coefficients together; empty if none could be estimated
 */
public record HazardProportionality(
    HazardTransform transform, List<Optional<HazardTest>> tests, Optional<HazardTest> all) {

  static HazardProportionality of(
      HazardData data,
      double[] beta,
      HazardTies ties,
      int[] columns,
      HazardTransform transform,
      int terms) {
    HazardClock clock = HazardClock.of(data, transform);
    int p = columns.length;
    double[] score = new double[2 * p];
    double[][] information = new double[2 * p][2 * p];
    HazardSweep.over(
        data,
        beta,
        ties,
        (s, day, m) -> {
          double g = clock.at(data.strata.get(s).days[day]);
          for (int i = 0; i < p; i++) {
            score[p + i] += g * (m.failedX[columns[i]] - m.meanSum(columns[i]));
            for (int j = 0; j <= i; j++) {
              double v = m.covarianceSum(columns[i], columns[j]);
              information[i][j] += v;
              information[p + i][j] += g * v;
              information[p + i][p + j] += g * g * v;
            }
          }
        });
    mirror(information, p);
    return tested(score, information, columns, transform, terms);
  }

  /**
   * Fills the upper triangles; the block of covariances between x and x·g is symmetric in itself.
   */
  private static void mirror(double[][] information, int p) {
    for (int i = 0; i < p; i++) {
      for (int j = 0; j < i; j++) {
        information[j][i] = information[i][j];
        information[p + j][p + i] = information[p + i][p + j];
        information[p + j][i] = information[p + i][j];
      }
    }
    for (int i = 0; i < p; i++) {
      for (int j = 0; j < p; j++) {
        information[j][p + i] = information[p + i][j];
      }
    }
  }

  private static HazardProportionality tested(
      double[] score, double[][] information, int[] columns, HazardTransform transform, int terms) {
    int p = columns.length;
    List<Optional<HazardTest>> tests =
        new ArrayList<>(Collections.nCopies(terms, Optional.empty()));
    int[] chosen = new int[p + 1];
    for (int i = 0; i < p; i++) {
      chosen[i] = i;
    }
    for (int i = 0; i < p; i++) {
      chosen[p] = p + i;
      tests.set(columns[i], Optional.of(test(score, information, chosen, 1)));
    }
    int[] every = new int[2 * p];
    Arrays.setAll(every, i -> i);
    Optional<HazardTest> all =
        p == 0 ? Optional.empty() : Optional.of(test(score, information, every, p));
    return new HazardProportionality(transform, List.copyOf(tests), all);
  }

  private static HazardTest test(
      double[] score, double[][] information, int[] chosen, int degrees) {
    double[][] inverse = HazardInverse.of(HazardInverse.part(information, chosen));
    return HazardTest.of(HazardInverse.form(inverse, HazardInverse.part(score, chosen)), degrees);
  }
}
