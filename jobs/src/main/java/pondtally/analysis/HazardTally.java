package pondtally.analysis;

import java.io.Serializable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pondtally.stats.IntervalCounts;

/** Service lives by covariates and follow-up, counted. */
public final class HazardTally implements Serializable {

  private static final long serialVersionUID = 1;

  /** Follow-up with the day of each failure, as dated. */
  private final HashMap<Covariates, IntervalCounts> lives = new HashMap<>();

  /** Counts lives. */
  void add(List<LifePart> parts) {
    for (LifePart life : parts) {
      double failedDays = life.failed() ? life.exitDays() : Double.POSITIVE_INFINITY;
      counts(life.covariates()).add(life.followUp().entryDays(), life.exitDays(), failedDays, 1);
    }
  }

  /** Adds what another tally counted. */
  void merge(HazardTally other) {
    other.lives.forEach((covariates, more) -> counts(covariates).merge(more));
  }

  private IntervalCounts counts(Covariates covariates) {
    return lives.computeIfAbsent(covariates, k -> IntervalCounts.empty());
  }

  /**
   * Counts by covariates and follow-up, ages in days: a life that failed did so at its right age,
   * which is its left one.
   */
  Map<Covariates, IntervalCounts> lives() {
    return lives;
  }
}
