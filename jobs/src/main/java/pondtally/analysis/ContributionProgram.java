package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import pondtally.analysis.CostLine.Payment;
import pondtally.record.Expense;

/**
 * Contributions that only the whole program tells: estimates from its median unit costs, and its
 * own expenses.
 */
public final class ContributionProgram {

  private ContributionProgram() {}

  /** All of them, in no particular order. */
  public static List<Contribution> contributions(EstimatedCosts estimated, List<Expense> expenses) {
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
    return rows;
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
}
