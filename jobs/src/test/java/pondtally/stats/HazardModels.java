package pondtally.stats;

import static pondtally.stats.HazardReference.number;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * The models of the reference results, fitted here. A model's name is its data and form, and the
 * treatment of ties.
 */
final class HazardModels {
  private record Model(
      String file,
      HazardDesign design,
      Function<Map<String, String>, Object[]> covariates,
      Function<Map<String, String>, String> stratum,
      String exit,
      String failed) {}

  private static final Map<String, Model> MODELS = models();

  private final List<HazardConcordance.Life> lives = new ArrayList<>();
  private final List<String> clusters = new ArrayList<>();
  private final ProportionalHazards fit;

  private HazardModels(String name, String cluster) {
    int split = name.lastIndexOf('_');
    Model model = MODELS.get(name.substring(0, split));
    HazardTies ties =
        HazardTies.valueOf(name.substring(split + 1).toUpperCase(java.util.Locale.ROOT));
    HazardPatterns patterns = HazardPatterns.ofColumns(model.design.columns().size());
    for (Map<String, String> row : HazardReference.rows(model.file)) {
      double entry = row.containsKey("ageentry") ? number(row, "ageentry") : 0;
      double exit = number(row, model.exit);
      if (entry < exit) {
        double[] x = model.design.encode(model.covariates.apply(row));
        boolean failed = row.get(model.failed).equals("1");
        patterns.add(model.stratum.apply(row), x, entry, exit, failed, 1);
        lives.add(HazardConcordance.Life.of(model.stratum.apply(row), x, entry, exit, failed));
        clusters.add(cluster.isEmpty() ? "" + lives.size() : row.get(cluster));
      }
    }
    ProportionalHazards independent = ProportionalHazards.fit(patterns, model.design, ties);
    fit = cluster.isEmpty() ? independent : independent.withClusters(sums(independent.scores()));
  }

  static HazardModels of(String name) {
    return new HazardModels(name, name.contains("cluster_litter") ? "litter" : "");
  }

  static HazardModels clustered(String name, String cluster) {
    return new HazardModels(name, cluster);
  }

  ProportionalHazards fit() {
    return fit;
  }

  List<HazardConcordance.Life> lives() {
    return lives;
  }

  /** Lives by cluster. */
  Map<String, List<HazardConcordance.Life>> byCluster() {
    TreeMap<String, List<HazardConcordance.Life>> byCluster = new TreeMap<>();
    for (int i = 0; i < lives.size(); i++) {
      byCluster.computeIfAbsent(clusters.get(i), c -> new ArrayList<>()).add(lives.get(i));
    }
    return byCluster;
  }

  HazardClusterSums sums(HazardScores scores) {
    HazardClusterSums sums = HazardClusterSums.of(scores);
    for (List<HazardConcordance.Life> cluster : byCluster().values()) {
      double[] total = new double[scores.size()];
      for (HazardConcordance.Life life : cluster) {
        scores.addTo(total, life.stratum, life.x, life.entryDays, life.exitDays, life.failed);
      }
      sums.add(total);
    }
    return sums;
  }

  private static Map<String, Model> models() {
    Map<String, Model> models = new TreeMap<>();
    HazardDesign drug = HazardDesign.empty().withFactor("group", "6-MP", List.of("control"));
    models.put(
        "gehan",
        new Model(
            "gehan_6mp", drug, r -> new Object[] {r.get("group")}, r -> "", "time", "status"));
    HazardDesign maintenance =
        HazardDesign.empty().withFactor("group", "Maintained", List.of("Nonmaintained"));
    models.put(
        "aml",
        new Model(
            "aml", maintenance, r -> new Object[] {r.get("group")}, r -> "", "time", "status"));
    HazardDesign lung =
        HazardDesign.empty()
            .withFactor("trt", "1", List.of("2"))
            .withFactor("celltype", "squamous", List.of("smallcell", "adeno", "large"))
            .withNumber("karno")
            .withNumber("diagtime")
            .withNumber("age")
            .withFactor("prior", "0", List.of("10"));
    models.put(
        "veteran_full",
        new Model(
            "veteran",
            lung,
            r ->
                new Object[] {
                  r.get("trt"),
                  r.get("celltype"),
                  number(r, "karno"),
                  number(r, "diagtime"),
                  number(r, "age"),
                  r.get("prior")
                },
            r -> "",
            "time",
            "status"));
    HazardDesign byCell =
        HazardDesign.empty().withFactor("trt", "1", List.of("2")).withNumber("karno");
    models.put(
        "veteran_strata_celltype",
        new Model(
            "veteran",
            byCell,
            r -> new Object[] {r.get("trt"), number(r, "karno")},
            r -> r.get("celltype"),
            "time",
            "status"));
    HazardDesign stage =
        HazardDesign.empty().withFactor("stage", "1", List.of("2", "3", "4")).withNumber("age");
    models.put(
        "larynx_stage_age",
        new Model(
            "larynx",
            stage,
            r -> new Object[] {r.get("stage"), number(r, "age")},
            r -> "",
            "time",
            "delta"));
    HazardDesign rx = HazardDesign.empty().withNumber("rx");
    models.put(
        "rats_cluster_litter",
        new Model(
            "rats_female_litter",
            rx,
            r -> new Object[] {number(r, "rx")},
            r -> "",
            "time",
            "status"));
    HazardDesign gender = HazardDesign.empty().withFactor("gender", "2", List.of("1"));
    models.put(
        "channing_cox_gender",
        new Model(
            "channing", gender, r -> new Object[] {r.get("gender")}, r -> "", "age", "death"));
    return models;
  }
}
