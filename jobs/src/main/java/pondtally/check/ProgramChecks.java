package pondtally.check;

import java.util.List;
import pondtally.record.Budget;
import pondtally.record.Expense;

/** Checks of the rows that belong to no site: budgets and expenses. */
public final class ProgramChecks {

  private ProgramChecks() {}

  /**
   * What the checks left.
   *
   * @param budgets rows that count, in file order
   * @param expenses rows that count, in file order
   * @param findings what was noticed
   * @param verdicts fates that differ from the one the row came with
   */
  public record Checked(
      List<Budget> budgets,
      List<Expense> expenses,
      List<Finding> findings,
      List<Verdict> verdicts) {}

  /** Takes out copies of a row, and expenses after the data cut. */
  public static Checked check(
      List<Budget> budgets, List<Expense> expenses, CheckSettings settings) {
    CheckLog log = new CheckLog();
    Rows<Budget> budgetRows = new Rows<>("budgets", budgets, log);
    Rows<Expense> expenseRows = new Rows<>("expenses", expenses, log);
    DuplicateRows.applyWithinPartner(budgetRows);
    DuplicateRows.applyWithinPartner(expenseRows);
    DatesAfterCut.setAside(expenseRows, "date", Expense::date, settings);
    return new Checked(budgetRows.list(), expenseRows.list(), log.findings(), log.verdicts());
  }
}
