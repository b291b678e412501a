package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.Action;
import pondtally.record.Budget;
import pondtally.record.Condition;
import pondtally.record.Expense;
import pondtally.record.ExpenseKind;
import pondtally.record.MaterialItem;
import pondtally.record.Origin;

class FundingTest {

  private static final Origin ROW = new Origin(1, 0, 2, false);

  private static Budget budget(String funder, int year, Double award, Double match) {
    int from = MoneyProgram.day(year + "-01-01");
    int to = MoneyProgram.day(year + "-12-31");
    return new Budget(ROW, "p", funder, from, to, award, match);
  }

  private static Expense expense(String on, Double usd, String paidBy, String match) {
    int day = MoneyProgram.day(on);
    return new Expense(ROW, "p", day, ExpenseKind.TRAVEL, usd, 100.0, paidBy, match);
  }

  private static final List<Budget> BUDGETS =
      List.of(
          budget("fund-a", 2020, 5000.0, 300.0),
          budget("fund-a", 2021, 5000.0, 300.0),
          budget("fund-b", 2020, 800.0, null));

  private static final List<Expense> EXPENSES =
      List.of(
          expense("2020-12-31", 40.0, "fund-b", null),
          expense("2021-01-01", 60.0, "in-kind", "fund-a"),
          expense("2020-03-01", null, "fund-b", null),
          expense("2020-03-01", 7.0, null, null));

  private static MoneyProgram program() {
    return new MoneyProgram()
        .site("S1", null)
        .device("D1", "S1", "2020-05-01", 10.0, null, "fund-a")
        .material("D1", MaterialItem.PIPE, 20, 400, null, null)
        .material("D1", MaterialItem.WIRE, 1, 50, "in-kind", "fund-a")
        .material("D1", MaterialItem.POST, 4, 25, "in-kind", null)
        .material("D1", MaterialItem.FENCE_PANEL, 1, 150, "fund-b", "fund-a")
        .visit("D1", "2020-11-01", Condition.WORKING, Action.NONE, 33.0, 5.0, null, "fund-a")
        .visit("D1", "2022-05-01", Condition.WORKING, Action.NONE, 12.5);
  }

  private static List<FundingRows.Row> rows(Double volunteerRateUsd) {
    AnalysisSettings settings = MoneyProgram.settings(volunteerRateUsd);
    FundingTally tally = new FundingTally();
    tally.add(program().view(settings));
    return FundingRows.rows(tally, BUDGETS, EXPENSES, settings);
  }

  private static FundingRows.Row row(List<FundingRows.Row> rows, String funder, Integer year) {
    Integer from = year == null ? null : (Integer) MoneyProgram.day(year + "-01-01");
    return rows.stream()
        .filter(r -> r.funder().equals(funder) && java.util.Objects.equals(r.periodStart(), from))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void cashStandsWithWhoPaidAndMatchWithTheAwardItIsClaimedAgainst() {
    List<FundingRows.Row> rows = rows(20.0);
    FundingRows.Row a = row(rows, "fund-a", 2020);
    assertEquals(400 + 10 * 30 + 33, a.cashUsd());
    assertEquals(50, a.inKindUsd());
    assertEquals(5 * 20, a.volunteerUsd());
    assertEquals(150, a.matchCashUsd());
    assertEquals(300, a.matchClaimedUsd());
    assertEquals(true, a.matchMet());
    assertEquals(150 + 40, row(rows, "fund-b", 2020).cashUsd());
    assertNull(row(rows, "fund-b", 2020).matchMet());
    assertEquals(25, row(rows, FundingRows.UNCLAIMED, null).inKindUsd());
    assertEquals(7, row(rows, FundingRows.UNASSIGNED, null).cashUsd());
  }

  @Test
  void aPeriodEndsWithItsLastDayAndLinesOutsideEveryPeriodKeepARow() {
    List<FundingRows.Row> rows = rows(20.0);
    assertEquals(60, row(rows, "fund-a", 2021).inKindUsd());
    assertEquals(false, row(rows, "fund-a", 2021).matchMet());
    assertEquals(12.5, row(rows, "fund-a", null).cashUsd());
    assertNull(row(rows, "fund-a", null).awardUsd());
  }

  @Test
  void everyLineAndExpenseCountsExactlyOnce() {
    double lines = 0;
    ClusterView view = program().view();
    for (CostLine line : view.costOf(view.history().sites().get(0).devices().get(0)).lines()) {
      lines += line.nominalUsd();
    }
    double funded = 0;
    for (FundingRows.Row row : rows(20.0)) {
      funded += row.cashUsd() + row.inKindUsd() + row.volunteerUsd();
    }
    assertEquals(1070.5, lines);
    assertEquals(lines + 107, funded);
  }

  @Test
  void withoutAVolunteerRateAMissingMatchIsNotCalledMissed() {
    FundingRows.Row a = row(rows(null), "fund-a", 2020);
    assertNull(a.volunteerUsd());
    assertNull(a.matchMet());
  }
}
