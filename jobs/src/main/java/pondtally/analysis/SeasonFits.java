package pondtally.analysis;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import pondtally.stats.IntervalCounts;
import pondtally.stats.WeibullFit;

/**
 * Fits for the next seasons by pipe type. A type with fewer than three failures borrows the fit of
 * all devices, and says so.
 */
final class SeasonFits {

  /** The estimates and 250 mirrored pairs. */
  static final int DRAWS = 501;

  private static final long FEWEST_FAILURES = 3;
  private static final int MOST_ROWS = 50_000;
  private static final int[] ROUNDED_DAYS = {7, 30};

  private final SeasonTally tally;
  private final long seed;
  private final Map<GroupKey, Optional<SeasonFit>> own = new HashMap<>();

  private SeasonFits(SeasonTally tally, long seed) {
    this.tally = tally;
    this.seed = seed;
  }

  static SeasonFits of(SeasonTally tally, long seed) {
    return new SeasonFits(tally, seed);
  }

  /** The type's own fit, else that of all devices; empty where neither can be estimated. */
  Optional<SeasonFit> of(GroupKey key) {
    Optional<SeasonFit> fit = own(key);
    return fit.isPresent() ? fit : own(GroupKey.ALL);
  }

  private Optional<SeasonFit> own(GroupKey key) {
    return own.computeIfAbsent(key, this::fit);
  }

  private Optional<SeasonFit> fit(GroupKey key) {
    IntervalCounts counts = tally.stretches(key);
    if (counts.failures() < FEWEST_FAILURES) {
      return Optional.empty();
    }
    for (int days : ROUNDED_DAYS) {
      counts = counts.distinct() > MOST_ROWS ? tally.stretches(key).roundedOutward(days) : counts;
    }
    return SeasonFit.of(key.group(), WeibullFit.of(counts), DRAWS, seed);
  }
}
