package pondtally.analysis;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import pondtally.analysis.CostLine.Payment;
import pondtally.analysis.FundingPeriods.Period;
import pondtally.record.Budget;
import pondtally.record.Expense;

/**
 * Contributions that only the whole program tells: estimates from its median unit costs, and its
 * own expenses; and the budget period that each payment belongs to.
 */
public final class ContributionProgram {

  private final FundingPeriods periods;
  private final List<Contribution> contributions;

  private ContributionProgram(FundingPeriods periods, List<Contribution> contributions) {
    this.periods = periods;
    this.contributions = contributions;
  }

  /** What the whole program tells. */
  public static ContributionProgram of(
      EstimatedCosts estimated, List<Budget> budgets, List<Expense> expenses) {
    List<Contribution> rows = new ArrayList<>(estimated.contributions());
    for (Expense expense : expenses) {
      if (expense.usd() != null && expense.usd() != 0) {
        boolean inKind = CostRules.IN_KIND.equals(expense.paidBy());
        FundingRows.shares(
                inKind ? Payment.IN_KIND : Payment.CASH,
                inKind ? null : expense.paidBy(),
                expense.matchFor())
            .forEach((subject, funder) -> rows.add(paid(expense, subject, funder)));
      }
    }
    return new ContributionProgram(new FundingPeriods(budgets), rows);
  }

  private static Contribution paid(Expense expense, ContributionSubject subject, String funder) {
    return new Contribution(
        subject,
        null,
        null,
        expense.usd(),
        expense.origin(),
        expense.date(),
        null,
        funder,
        ContributionGroups.NONE);
  }

  /** Its own contributions, in no particular order. */
  public List<Contribution> contributions() {
    return contributions;
  }

  /**
   * The year that a contribution counts in, or the funder's budget period (2024-07-01/2025-06-30);
   * null outside every period.
   */
  public String year(Contribution contribution) {
    if (!contribution.subject().isFunding()) {
      return contribution.year();
    }
    Period period = periods.of(contribution.part(), contribution.day());
    return period.from() == null
        ? null
        : LocalDate.ofEpochDay(period.from()) + "/" + LocalDate.ofEpochDay(period.to());
  }
}
