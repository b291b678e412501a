package pondtally.analysis;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;
import pondtally.analysis.FundingPeriods.Period;
import pondtally.record.Budget;

/** The year, or the funder's budget period, that a contribution counts in. */
public final class ContributionYears implements Serializable {

  private static final long serialVersionUID = 1;

  private final FundingPeriods periods;

  private ContributionYears(FundingPeriods periods) {
    this.periods = periods;
  }

  /** With the periods of these budgets. */
  public static ContributionYears of(List<Budget> budgets) {
    return new ContributionYears(new FundingPeriods(budgets));
  }

  /**
   * The year that a contribution counts in, or the funder's budget period (2024-07-01/2025-06-30);
   * null outside every period.
   */
  public String of(Contribution contribution) {
    if (!contribution.subject().isFunding()) {
      return contribution.year();
    }
    Period period = periods.of(contribution.part(), contribution.day());
    return period.from() == null
        ? null
        : LocalDate.ofEpochDay(period.from()) + "/" + LocalDate.ofEpochDay(period.to());
  }
}
