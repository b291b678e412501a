package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pondtally.stats.HazardReference.close;
import static pondtally.stats.HazardReference.number;
import static pondtally.stats.HazardReference.whole;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Hazard models of published data against a reference library; sources are in {@code
 * published/hazards/README.md}. The reference's exact (discrete) treatment of ties is not built
 * here and not compared.
 */
class ProportionalHazardsPublishedTest {
  private static final double TIGHT = 1e-8;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "gehan_efron",
        "gehan_breslow",
        "aml_efron",
        "aml_breslow",
        "veteran_full_efron",
        "veteran_full_breslow",
        "veteran_strata_celltype_efron",
        "veteran_strata_celltype_breslow",
        "larynx_stage_age_efron",
        "larynx_stage_age_breslow",
        "rats_cluster_litter_efron",
        "rats_cluster_litter_breslow"
      })
  void coefficientsTestsAndConcordance(String name) {
    HazardModels model = HazardModels.of(name);
    coefficients(model.fit(), HazardReference.rows("cox_coefficients", "model", name));
    covariances(model.fit(), HazardReference.rows("cox_vcov", "model", name));
    Map<String, String> expected = HazardReference.rows("cox_model_stats", "model", name).get(0);
    statistics(model.fit(), expected);
    if (!expected.get("robust_score_test").isEmpty()) {
      HazardTest robust =
          model.fit().robustScoreTest(model.sums(model.fit().scoresAtZero())).orElseThrow();
      close(number(expected, "robust_score_test"), robust.statistic(), TIGHT, 0, name);
    }
    concordance(model, expected);
  }

  @Test
  void lateEntry() {
    coefficients(
        HazardModels.of("channing_cox_gender_efron").fit(),
        HazardReference.rows("lefttrunc_channing_cox"));
  }

  private static void coefficients(ProportionalHazards fit, List<Map<String, String>> expected) {
    assertEquals(expected.size(), fit.terms().size());
    for (int j = 0; j < expected.size(); j++) {
      Map<String, String> row = expected.get(j);
      String what = row.get("model") + " " + row.get("term");
      HazardTerm.Estimate e = fit.terms().get(j).estimate().orElseThrow();
      // A coefficient is compared in units of its error where it is nearly 0.
      assertEquals(
          number(row, "coef"),
          e.coefficient(),
          TIGHT * Math.max(Math.abs(e.coefficient()), 0.01 * e.modelStandardError()),
          what);
      close(number(row, "hr"), e.hazardRatio(), TIGHT, 0, what);
      close(number(row, "se_model"), e.modelStandardError(), TIGHT, 0, what);
      assertEquals(row.get("se_robust").isEmpty(), e.robustStandardError().isEmpty(), what);
      e.robustStandardError().ifPresent(s -> close(number(row, "se_robust"), s, TIGHT, 0, what));
      close(number(row, "z"), e.z(), TIGHT, 0.01, what);
      close(number(row, "p"), e.pValue(), 1e-7, 0, what);
      close(number(row, "hr_lower95"), e.lower(), TIGHT, 0, what);
      close(number(row, "hr_upper95"), e.upper(), TIGHT, 0, what);
    }
  }

  private static void covariances(ProportionalHazards fit, List<Map<String, String>> expected) {
    double[][] covariance = fit.covariance();
    int p = covariance.length;
    assertEquals(p * p, expected.size());
    for (int k = 0; k < expected.size(); k++) {
      int i = k % p;
      int j = k / p;
      double size = Math.sqrt(covariance[i][i] * covariance[j][j]);
      assertEquals(
          number(expected.get(k), "cov"),
          covariance[i][j],
          TIGHT * size,
          expected.get(k)::toString);
    }
  }

  private static void statistics(ProportionalHazards fit, Map<String, String> expected) {
    String name = expected.get("model");
    assertEquals(whole(expected, "n"), fit.lives());
    assertEquals(whole(expected, "events"), fit.failures());
    assertEquals(number(expected, "loglik_null"), fit.logLikelihoodNull(), 1e-10, name);
    assertEquals(number(expected, "loglik"), fit.logLikelihood(), 1e-10, name);
    HazardTest ratio = fit.likelihoodRatioTest().orElseThrow();
    close(number(expected, "lr_test"), ratio.statistic(), TIGHT, 0, name);
    close(number(expected, "lr_p"), ratio.pValue(), 1e-7, 0, name);
    assertEquals(number(expected, "df"), ratio.degreesOfFreedom());
    HazardTest wald = fit.waldTest().orElseThrow();
    close(number(expected, "wald_test"), wald.statistic(), TIGHT, 0, name);
    close(number(expected, "wald_p"), wald.pValue(), 1e-7, 0, name);
    HazardTest score = fit.scoreTest().orElseThrow();
    close(number(expected, "score_test"), score.statistic(), TIGHT, 0, name);
    close(number(expected, "score_p"), score.pValue(), 1e-7, 0, name);
  }

  private static void concordance(HazardModels model, Map<String, String> expected) {
    HazardConcordance concordance = model.fit().concordance();
    assertEquals(whole(expected, "concordant"), concordance.concordant());
    assertEquals(whole(expected, "discordant"), concordance.discordant());
    assertEquals(whole(expected, "tied_x"), concordance.tiedPrediction());
    assertEquals(whole(expected, "tied_y"), concordance.tiedAge());
    assertEquals(whole(expected, "tied_xy"), concordance.tiedBoth());
    close(number(expected, "concordance"), concordance.value().getAsDouble(), 1e-12, 0, "C");
    double clustered = concordance.clusteredStandardError(model.byCluster().values()).getAsDouble();
    close(number(expected, "concordance_se"), clustered, 1e-10, 0, "error of C");
    if (!expected.get("model").contains("cluster")) {
      assertEquals(clustered, concordance.standardError().getAsDouble(), 1e-14);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"veteran_full_efron", "gehan_efron", "larynx_stage_age_efron"})
  void proportionality(String name) {
    ProportionalHazards fit = HazardModels.of(name).fit();
    List<Map<String, String>> rows = HazardReference.rows("cox_zph", "model", name);
    int checked = 0;
    for (HazardTransform transform : HazardTransform.values()) {
      HazardProportionality tests = fit.proportionality(transform);
      List<Optional<HazardTest>> all = new ArrayList<>(tests.tests());
      all.add(tests.all());
      String label = transform.name().toLowerCase(java.util.Locale.ROOT);
      List<Map<String, String>> expected =
          rows.stream().filter(r -> r.get("transform").equals(label)).toList();
      for (int j = 0; j < expected.size(); j++) {
        HazardTest test = all.get(j).orElseThrow();
        close(
            number(expected.get(j), "chisq"),
            test.statistic(),
            1e-7,
            1e-3,
            expected.get(j).toString());
        close(number(expected.get(j), "p"), test.pValue(), 1e-6, 0, expected.get(j).toString());
        assertEquals(number(expected.get(j), "df"), test.degreesOfFreedom());
        checked++;
      }
    }
    assertEquals(rows.size(), checked);
  }

  @ParameterizedTest
  @ValueSource(strings = {"gehan_efron", "gehan_breslow"})
  void baselineHazard(String name) {
    HazardBaseline baseline = HazardModels.of(name).fit().baselines().get("");
    for (Map<String, String> row : HazardReference.rows("cox_baseline_hazard", "model", name)) {
      close(
          number(row, "baseline_cumhaz"),
          baseline.at(number(row, "time")),
          1e-9,
          0,
          row.toString());
    }
    assertEquals(0, baseline.at(0.5));
  }

  /**
   * Printed in Kleinbaum and Klein (ch. 3), Venables and Ripley, Klein and Moeschberger (Example
   * 8.2); typed from memory, see README.
   */
  @Test
  void printedFigures() {
    Map<String, Double> computed =
        Map.of(
            "gehan Breslow coef", estimate("gehan_breslow", 0).coefficient(),
            "gehan Breslow se", estimate("gehan_breslow", 0).modelStandardError(),
            "gehan Breslow -2 log L", -2 * HazardModels.of("gehan_breslow").fit().logLikelihood(),
            "gehan Efron coef", estimate("gehan_efron", 0).coefficient(),
            "gehan Efron se", estimate("gehan_efron", 0).modelStandardError(),
            "larynx stage IV v I, Breslow", estimate("larynx_stage_age_breslow", 2).coefficient());
    int checked = 0;
    for (Map<String, String> row : HazardReference.rows("published_checks")) {
      Double value = computed.get(row.get("quantity"));
      if (value != null) {
        double half =
            row.get("published").contains(".")
                ? 0.5
                    * Math.pow(
                        10, row.get("published").indexOf('.') + 1 - row.get("published").length())
                : 0.5;
        assertEquals(number(row, "published"), value, half * 1.001, row.toString());
        checked++;
      }
    }
    assertEquals(computed.size(), checked);
    assertTrue(checked > 5);
  }

  private static HazardTerm.Estimate estimate(String model, int term) {
    return HazardModels.of(model).fit().terms().get(term).estimate().orElseThrow();
  }
}
