package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pondtally.stats.IntervalDraws;
import pondtally.stats.PoissonWeights;

/** How often each follow-up was drawn in resamples of the clusters, by group: the second pass. */
final class IntervalSpreads implements Serializable {

  private static final long serialVersionUID = 1;

  /** Resamples behind the limits of interval estimates. */
  static final int RESAMPLES = 200;

  private final long seed;
  private final Map<GroupKey, Spread> spreads = new HashMap<>();

  /** Draws of one group. */
  private static final class Spread implements Serializable {
    private static final long serialVersionUID = 1;
    private final IntervalDraws draws;
    private long clusters;

    Spread(IntervalDraws draws) {
      this.draws = draws;
    }
  }

  IntervalSpreads(long seed) {
    this.seed = seed;
  }

  /** Expects the lives of a group. */
  void expect(GroupKey key, IntervalDraws draws) {
    spreads.put(key, new Spread(draws));
  }

  void add(String cluster, List<LifePart> lives) {
    byte[] drawn = new byte[RESAMPLES];
    PoissonWeights.of(seed, cluster).fill(drawn);
    List<Spread> seen = new ArrayList<>();
    for (LifePart life : lives) {
      FollowUp followUp = life.followUp();
      for (GroupKey key : life.covariates().curveGroups()) {
        Spread spread = spreads.get(key);
        spread.draws.add(followUp.entryDays(), followUp.leftDays(), followUp.rightDays(), drawn);
        if (!seen.contains(spread)) {
          seen.add(spread);
          spread.clusters++;
        }
      }
    }
  }

  void merge(IntervalSpreads other) {
    other.spreads.forEach(
        (key, more) -> {
          Spread spread = spreads.get(key);
          spread.draws.merge(more.draws);
          spread.clusters += more.clusters;
        });
  }

  IntervalDraws draws(GroupKey key) {
    return spreads.get(key).draws;
  }

  /** Clusters with lives in a group. */
  long clusters(GroupKey key) {
    return spreads.get(key).clusters;
  }
}
