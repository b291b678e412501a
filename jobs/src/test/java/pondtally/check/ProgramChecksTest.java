package pondtally.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.Budget;
import pondtally.record.Expense;
import pondtally.record.ExpenseKind;
import pondtally.record.Origin;

class ProgramChecksTest {

  private static final int CUT = day("2025-12-31");

  private static int day(String date) {
    return (int) LocalDate.parse(date).toEpochDay();
  }

  private static Expense expense(int row, String partner, String date, double usd) {
    return new Expense(
        new Origin(0, 0, row, false),
        partner,
        day(date),
        ExpenseKind.PERMIT,
        usd,
        null,
        "levy",
        null);
  }

  private static ProgramChecks.Checked check(Expense... rows) {
    return ProgramChecks.check(List.of(), List.of(rows), new CheckSettings(CUT, CUT + 60));
  }

  @Test
  void aCopyOfOnePartnersRowCountsOnce() {
    ProgramChecks.Checked checked =
        check(expense(2, "a", "2024-02-01", 40), expense(3, "a", "2024-02-01", 40));
    assertEquals(1, checked.expenses().size());
    assertEquals(RowFate.DUPLICATE, checked.verdicts().get(0).fate());
    assertEquals(3, checked.verdicts().get(0).origin().row());
  }

  @Test
  void twoPartnersMayPayTheSameFeeOnOneDay() {
    ProgramChecks.Checked checked =
        check(expense(2, "a", "2024-02-01", 40), expense(3, "b", "2024-02-01", 40));
    assertEquals(2, checked.expenses().size());
    assertEquals(List.of(), checked.verdicts());
  }

  @Test
  void anExpenseAfterTheCutIsSetAside() {
    ProgramChecks.Checked checked = check(expense(2, "a", "2026-01-05", 40));
    assertEquals(List.of(), checked.expenses());
    assertEquals("date-after-cut", checked.findings().get(0).rule());
  }

  @Test
  void aBudgetGivenTwiceCountsOnce() {
    Budget budget =
        new Budget(new Origin(0, 0, 2, false), "a", "levy", day("2025-01-01"), CUT, 1000.0, null);
    Budget copy =
        new Budget(new Origin(0, 0, 3, false), "a", "levy", day("2025-01-01"), CUT, 1000.0, null);
    ProgramChecks.Checked checked =
        ProgramChecks.check(List.of(budget, copy), List.of(), new CheckSettings(CUT, CUT));
    assertEquals(List.of(budget), checked.budgets());
  }
}
