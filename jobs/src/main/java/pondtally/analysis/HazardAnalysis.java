package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.history.BuildGroup;
import pondtally.stats.HazardProportionality;
import pondtally.stats.HazardTerm;
import pondtally.stats.HazardTest;
import pondtally.stats.HazardTies;
import pondtally.stats.HazardTransform;
import pondtally.stats.ProportionalHazards;
import pondtally.stats.RiskTable;

/**
 * How much sooner devices of one kind fail than those of another, whatever the shape of the hazard
 * (Cox 1972; ties by Efron 1977): pipe types, also within watersheds, build to specification, kind
 * of device, year of installation, and pipe, build and kind together. Errors allow for likeness
 * within a cluster of sites (Lin and Wei 1989). What cannot be estimated says why.
 */
public final class HazardAnalysis {

  /** Fewer clusters than this give no error that can be trusted. */
  static final int FEWEST_CLUSTERS = 10;

  private static final int FEW_FAILURES = 5;

  private final List<HazardModel> models;
  private final List<ProportionalHazards> fits;
  private final LifeTally lives;
  private final int groupsBelow;

  private HazardAnalysis(ProgramTally tally, int groupsBelow) {
    this.lives = tally.lives();
    this.groupsBelow = groupsBelow;
    models =
        List.of(
            model("pipe", false, Grouping.PIPE),
            model("pipe, stratified by watershed", true, Grouping.PIPE),
            model("build to specification", false, Grouping.BUILD),
            model("kind", false, Grouping.KIND),
            model("cohort", false, Grouping.COHORT),
            model("full", true, Grouping.PIPE, Grouping.BUILD, Grouping.KIND));
    fits =
        models.stream()
            .map(
                model ->
                    ProportionalHazards.fit(
                        model.patterns(tally.hazards()), model.design(), HazardTies.EFRON))
            .toList();
  }

  private HazardModel model(String name, boolean byWatershed, Grouping... terms) {
    return HazardModel.of(name, byWatershed, lives, groupsBelow, terms);
  }

  /** Fits every model. */
  public static HazardAnalysis of(ProgramTally tally, int groupsBelow) {
    return new HazardAnalysis(tally, groupsBelow);
  }

  /** One row of the result table {@code hazard_ratios}. */
  public record Row(
      String model,
      String term,
      String level,
      String reference,
      Long devices,
      Long failures,
      Double hazardRatio,
      Double lower,
      Double upper,
      Double logStdError,
      Double modelLogStdError,
      Double pValue,
      String reason,
      String note,
      Double levelProportionalityP,
      Double logLikelihood,
      Double concordance,
      Double proportionalityP,
      Long clusters) {}

  /** An empty second pass over the clusters. */
  HazardSpreads spreads() {
    HazardSpreads spreads = new HazardSpreads();
    for (int i = 0; i < models.size(); i++) {
      spreads.expect(models.get(i), fits.get(i).scores());
    }
    return spreads;
  }

  /** The rows of the result table. */
  public List<Row> rows(SecondPass second) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < models.size(); i++) {
      HazardModel model = models.get(i);
      if (model.compares()) {
        long clusters = second.hazards().sums(i).clusters();
        addRows(rows, model, fits.get(i).withClusters(second.hazards().sums(i)), clusters);
      }
      model.leftOut().forEach(key -> rows.add(leftOut(model, key)));
    }
    return rows;
  }

  private void addRows(List<Row> rows, HazardModel model, ProportionalHazards fit, long clusters) {
    HazardProportionality drift = fit.proportionality(HazardTransform.KM);
    List<HazardTerm> terms = fit.terms();
    for (int j = 0; j < terms.size(); j++) {
      rows.add(row(model, terms.get(j), drift.tests().get(j), fit, drift.all(), clusters));
    }
  }

  private Row row(
      HazardModel model,
      HazardTerm term,
      Optional<HazardTest> drift,
      ProportionalHazards fit,
      Optional<HazardTest> modelDrift,
      long clusters) {
    Optional<HazardTerm.Estimate> estimate = term.estimate();
    Optional<HazardTerm.Estimate> trusted = estimate.filter(e -> clusters >= FEWEST_CLUSTERS);
    return new Row(
        model.name(),
        term.column().term(),
        term.column().level(),
        term.column().reference(),
        term.lives(),
        term.failures(),
        estimate.map(HazardTerm.Estimate::hazardRatio).orElse(null),
        trusted.map(HazardTerm.Estimate::lower).orElse(null),
        trusted.map(HazardTerm.Estimate::upper).orElse(null),
        trusted.map(e -> e.robustStandardError().orElseThrow()).orElse(null),
        estimate.map(HazardTerm.Estimate::modelStandardError).orElse(null),
        trusted.map(HazardTerm.Estimate::pValue).orElse(null),
        term.reason().map(why -> "not estimable: " + why).orElse(null),
        estimate.isPresent() ? TestNotes.joined(note(term, clusters), dating(model)) : null,
        drift.map(HazardTest::pValue).orElse(null),
        fit.failures() == 0 ? null : fit.logLikelihood(),
        Cells.of(fit.concordance().value()),
        modelDrift.map(HazardTest::pValue).orElse(null),
        clusters);
  }

  private String dating(HazardModel model) {
    return model.terms().contains(Grouping.COHORT)
        ? TestNotes.ofDating(lives.dating(), Grouping.COHORT)
        : null;
  }

  private static String note(HazardTerm term, long clusters) {
    if (clusters < FEWEST_CLUSTERS) {
      return "no limits: fewer than " + FEWEST_CLUSTERS + " clusters of sites";
    }
    return term.failures() < FEW_FAILURES
        ? "fewer than " + FEW_FAILURES + " failures at this level: limits are rough"
        : null;
  }

  private Row leftOut(HazardModel model, GroupKey key) {
    RiskTable table = lives.failures(key);
    return new Row(
        model.name(),
        key.grouping().code(),
        key.group(),
        null,
        table.lives(),
        table.events(),
        null,
        null,
        null,
        null,
        null,
        null,
        "left out: " + whyLeftOut(key),
        null,
        null,
        null,
        null,
        null,
        null);
  }

  private String whyLeftOut(GroupKey key) {
    if (key.group().equals(BuildGroup.NOT_JUDGED.code())) {
      return "too few items recorded to judge the build";
    }
    return lives.devices(key) < groupsBelow
        ? "fewer than " + groupsBelow + " devices"
        : "not recorded";
  }
}
