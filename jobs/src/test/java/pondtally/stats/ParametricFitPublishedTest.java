package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pondtally.stats.HazardReference.close;
import static pondtally.stats.HazardReference.number;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Parametric fits of published data against a reference library; sources are in {@code
 * published/hazards/README.md}.
 */
class ParametricFitPublishedTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;
  private static final double TIGHT = 1e-7;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "gehan_6mp_weibull",
        "gehan_6mp_exponential",
        "gehan_control_weibull",
        "veteran_weibull",
        "veteran_exponential",
        "fan_weibull",
        "fan_exponential",
        "fan_lognormal",
        "cracks_weibull_interval",
        "cracks_exponential_interval",
        "cracks_months_weibull_interval",
        "cosmesis_RT_weibull_interval",
        "cosmesis_RT_exponential_interval",
        "cosmesis_RCT_weibull_interval",
        "cosmesis_RCT_exponential_interval"
      })
  void oneGroup(String name) {
    List<Map<String, String>> rows = HazardReference.rows("parametric_fits", "model", name);
    ParametricFit fit = ParametricFit.of(distribution(rows), counts(name));
    Map<String, Optional<ParametricEstimate>> computed = new TreeMap<>();
    computed.put("(Intercept)", fit.location());
    computed.put("log(sigma)", fit.logSigma());
    computed.put("sigma", fit.sigma());
    computed.put("weibull_shape", fit.shape());
    computed.put("weibull_scale", fit.scaleDays());
    computed.put("mean_life", fit.meanLifeDays());
    for (double share : new double[] {0.1, 0.5, 0.9}) {
      computed.put("quantile_" + share, fit.quantileDays(share));
    }
    for (Map<String, String> row : rows) {
      if (row.get("parameter").equals("loglik")) {
        assertEquals(number(row, "estimate"), fit.logLikelihood().getAsDouble(), 1e-9, name);
      } else {
        compare(row, computed.get(row.get("parameter")).orElseThrow());
      }
    }
  }

  private static void compare(Map<String, String> row, ParametricEstimate estimate) {
    close(number(row, "estimate"), estimate.value(), TIGHT, 0, row.toString());
    if (!row.get("se").isEmpty()) {
      close(number(row, "se"), estimate.standardError(), TIGHT, 0, row.toString());
      close(number(row, "lower95"), estimate.lower(), TIGHT, 1e-1, row.toString());
      close(number(row, "upper95"), estimate.upper(), TIGHT, 1e-1, row.toString());
    }
  }

  private static ParametricDistribution distribution(List<Map<String, String>> rows) {
    return ParametricDistribution.valueOf(rows.get(0).get("dist").toUpperCase(Locale.ROOT));
  }

  static IntervalCounts counts(String name) {
    if (name.startsWith("gehan")) {
      String group = name.contains("6mp") ? "6-MP" : "control";
      return dated(HazardReference.rows("gehan_6mp", "group", group), "time", 1);
    }
    if (name.startsWith("veteran")) {
      return dated(HazardReference.rows("veteran"), "time", 1);
    }
    if (name.startsWith("fan")) {
      return dated(
          HazardReference.rows("generator_fan"), "hours", name.contains("exponential") ? 1 : 1000);
    }
    if (name.startsWith("cosmesis")) {
      return IntervalEstimatePublishedTest.cosmesis(name.contains("RCT") ? "RCT" : "RT");
    }
    IntervalCounts counts = IntervalCounts.empty();
    String file = name.contains("months") ? "turbine_part_cracks_months" : "turbine_part_cracks";
    for (Map<String, String> row : HazardReference.rows(file)) {
      counts.add(0, number(row, "left"), number(row, "right"), Long.parseLong(row.get("count")));
    }
    return counts;
  }

  private static IntervalCounts dated(List<Map<String, String>> rows, String time, double unit) {
    IntervalCounts counts = IntervalCounts.empty();
    for (Map<String, String> row : rows) {
      double at = number(row, time) / unit;
      counts.add(0, at, row.get("status").equals("1") ? at : NEVER, 1);
    }
    return counts;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "gehan_weibull_by_group",
        "gehan_exponential_by_group",
        "veteran_weibull_cov",
        "cosmesis_weibull_interval_by_group"
      })
  void regression(String name) {
    List<Map<String, String>> rows = HazardReference.rows("parametric_fits", "model", name);
    ParametricRegression fit = ParametricRegression.fit(distribution(rows), data(name));
    LinkedHashMap<String, ParametricEstimate> computed = new LinkedHashMap<>();
    for (ParametricEstimate coefficient : fit.coefficients()) {
      computed.put(rows.get(computed.size()).get("parameter"), coefficient);
    }
    fit.logSigma().ifPresent(s -> computed.put("log(sigma)", s));
    fit.logSigma()
        .ifPresent(
            s ->
                computed.put(
                    "sigma",
                    ParametricEstimate.positive(
                        Math.exp(s.value()), Math.exp(s.value()) * s.standardError())));
    fit.logSigma()
        .ifPresent(
            s ->
                computed.put(
                    "weibull_shape",
                    ParametricEstimate.positive(
                        Math.exp(-s.value()), Math.exp(-s.value()) * s.standardError())));
    assertEquals(rows.size() - 1, computed.size());
    for (Map<String, String> row : rows) {
      if (row.get("parameter").equals("loglik")) {
        assertEquals(number(row, "estimate"), fit.logLikelihood().getAsDouble(), 1e-9, name);
      } else {
        compare(row, computed.get(row.get("parameter")));
      }
    }
  }

  private static ParametricRegression.Data data(String name) {
    ParametricRegression.Data data = new ParametricRegression.Data();
    HazardDesign cells =
        HazardDesign.empty()
            .withFactor("trt", "1", List.of("2"))
            .withFactor("celltype", "squamous", List.of("smallcell", "adeno", "large"))
            .withNumber("karno");
    String file =
        name.startsWith("gehan")
            ? "gehan_6mp"
            : name.startsWith("veteran") ? "veteran" : "breast_cosmesis";
    for (Map<String, String> row : HazardReference.rows(file)) {
      if (file.equals("breast_cosmesis")) {
        data.add(
            new double[] {row.get("group").equals("RCT") ? 1 : 0},
            0,
            number(row, "left"),
            number(row, "right"),
            1);
      } else {
        double[] x =
            file.equals("gehan_6mp")
                ? new double[] {row.get("group").equals("6-MP") ? 1 : 0}
                : cells.encode(row.get("trt"), row.get("celltype"), number(row, "karno"));
        double time = number(row, "time");
        data.add(x, 0, time, row.get("status").equals("1") ? time : NEVER, 1);
      }
    }
    return data;
  }

  /**
   * Printed in Kleinbaum and Klein ch. 7 and from Nelson 1982 (p. 318, 415); typed from memory, see
   * README.
   */
  @Test
  void printedFigures() {
    ParametricRegression weibull =
        ParametricRegression.fit(ParametricDistribution.WEIBULL, data("gehan_weibull_by_group"));
    ParametricRegression exponential =
        ParametricRegression.fit(
            ParametricDistribution.EXPONENTIAL, data("gehan_exponential_by_group"));
    ParametricFit cracks = WeibullFit.of(counts("cracks_months_weibull_interval"));
    ParametricFit fan = WeibullFit.of(counts("fan_weibull"));
    Map<String, Double> computed =
        Map.of(
            "gehan Weibull intercept", weibull.coefficients().get(0).value(),
            "gehan Weibull treatment", weibull.coefficients().get(1).value(),
            "gehan Weibull shape", Math.exp(-weibull.logSigma().orElseThrow().value()),
            "gehan exponential treatment", exponential.coefficients().get(1).value(),
            "cracks Weibull scale", cracks.scaleDays().orElseThrow().value(),
            "cracks Weibull shape", cracks.shape().orElseThrow().value(),
            "fan Weibull scale (1000 h)", fan.scaleDays().orElseThrow().value(),
            "fan Weibull shape", fan.shape().orElseThrow().value(),
            "fan exponential mean (h) = total hours / failures",
                ExponentialFit.of(counts("fan_exponential")).meanLifeDays().orElseThrow().value());
    int checked = 0;
    for (Map<String, String> row : HazardReference.rows("published_checks")) {
      Double value = computed.get(row.get("quantity"));
      if (value != null) {
        double half =
            0.5
                * Math.pow(
                    10, row.get("published").indexOf('.') + 1 - row.get("published").length());
        assertEquals(
            number(row, "published"), value, Math.max(half * 1.001, 1e-9 * value), row.toString());
        checked++;
      }
    }
    assertEquals(computed.size(), checked);
    assertTrue(checked > 8);
  }
}
