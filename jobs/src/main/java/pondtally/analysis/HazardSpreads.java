package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import pondtally.stats.HazardClusterSums;
import pondtally.stats.HazardScores;

/** Scores of the hazard models summed by cluster of sites: the second pass. */
final class HazardSpreads implements Serializable {

  private static final long serialVersionUID = 1;

  private final ArrayList<Spread> spreads = new ArrayList<>();

  /** One model's scores, and their sums over clusters. */
  private record Spread(HazardModel model, HazardScores scores, HazardClusterSums sums)
      implements Serializable {

    void add(List<LifePart> lives) {
      double[] score = new double[scores.size()];
      boolean any = false;
      for (LifePart life : lives) {
        Covariates covariates = life.covariates();
        if (model.includes(covariates)) {
          any = true;
          scores.addTo(
              score,
              model.stratum(covariates),
              model.encode(covariates),
              life.followUp().entryDays(),
              life.exitDays(),
              life.failed());
        }
      }
      if (any) {
        sums.add(score);
      }
    }
  }

  /** Expects the clusters of a fitted model. */
  void expect(HazardModel model, HazardScores scores) {
    spreads.add(new Spread(model, scores, HazardClusterSums.of(scores)));
  }

  void add(List<LifePart> lives) {
    spreads.forEach(spread -> spread.add(lives));
  }

  void merge(HazardSpreads other) {
    for (int i = 0; i < spreads.size(); i++) {
      spreads.get(i).sums().merge(other.spreads.get(i).sums());
    }
  }

  /** Sums of the model that was expected at that place. */
  HazardClusterSums sums(int model) {
    return spreads.get(model).sums();
  }
}
