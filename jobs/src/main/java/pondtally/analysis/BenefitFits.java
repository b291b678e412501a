package pondtally.analysis;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import pondtally.stats.IntervalCounts;
import pondtally.stats.ParametricFit;
import pondtally.stats.WeibullFit;

/**
 * Weibull fits for looking ahead. A group with fewer than three failures borrows the fit of all
 * devices, and says so.
 */
public final class BenefitFits {

  private static final long FEWEST_FAILURES = 3;
  private static final int MOST_ROWS = 50_000;
  private static final int[] ROUNDED_DAYS = {7, 30};

  private final BenefitLives lives;
  private final Map<GroupKey, Optional<BenefitFit>> own = new HashMap<>();

  private BenefitFits(BenefitLives lives) {
    this.lives = lives;
  }

  /** The fits of a program; each is made when first asked for. */
  public static BenefitFits of(BenefitTally tally) {
    return new BenefitFits(tally.lives());
  }

  /** The group's own fit, else that of all devices; empty where neither can be estimated. */
  Optional<BenefitFit> of(GroupKey key) {
    Optional<BenefitFit> fit = own(key);
    return fit.isPresent() ? fit : own(GroupKey.ALL);
  }

  private Optional<BenefitFit> own(GroupKey key) {
    return own.computeIfAbsent(key, this::fit);
  }

  private Optional<BenefitFit> fit(GroupKey key) {
    IntervalCounts counts = lives.of(key);
    if (counts.failures() < FEWEST_FAILURES) {
      return Optional.empty();
    }
    for (int days : ROUNDED_DAYS) {
      counts = counts.distinct() > MOST_ROWS ? lives.of(key).roundedOutward(days) : counts;
    }
    ParametricFit fit = WeibullFit.of(counts);
    return fit.reason().isPresent()
        ? Optional.empty()
        : Optional.of(
            new BenefitFit(
                key.group(),
                fit.shape().orElseThrow().value(),
                fit.scaleDays().orElseThrow().value()));
  }
}
