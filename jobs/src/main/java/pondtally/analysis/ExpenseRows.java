package pondtally.analysis;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.record.Expense;
import pondtally.stats.ExactSum;

/**
 * The result table {@code program_expenses}: what the program cost beyond its devices, by kind and
 * fiscal year, in dollars of the base year. It belongs to no device and is in no other cost table;
 * {@code funding} holds it in nominal dollars.
 */
public final class ExpenseRows {

  private static final String ALL_KINDS = "all";

  private final SortedMap<String, SortedMap<String, Sums>> sums = new TreeMap<>();

  private static final class Sums {
    private long lines;
    private long linesBeforeIndex;
    private final ExactSum cash = new ExactSum();
    private final ExactSum inKind = new ExactSum();
    private final ExactSum miles = new ExactSum();
  }

  private ExpenseRows() {}

  /** One row of the result table. */
  public record Row(
      String kind,
      String year,
      Long lines,
      Double cashUsd,
      Double inKindUsd,
      Double miles,
      Long linesBeforeIndex,
      Integer baseYear) {}

  /** The rows: each kind and all, each fiscal year and the whole record to the period's end. */
  public static List<Row> rows(List<Expense> expenses, AnalysisSettings settings, Prices prices) {
    ExpenseRows rows = new ExpenseRows();
    for (Expense expense : expenses) {
      if (2 * expense.date() < settings.endHalfDay()) {
        String year = Integer.toString(settings.fiscalYears().of(expense.date()));
        for (String kind : List.of(ALL_KINDS, kind(expense))) {
          rows.add(kind, Years.ALL, expense, prices);
          rows.add(kind, year, expense, prices);
        }
      }
    }
    return rows.list(settings);
  }

  private static String kind(Expense expense) {
    return expense.kind() == null ? GroupKey.UNKNOWN : expense.kind().code();
  }

  private void add(String kind, String year, Expense expense, Prices prices) {
    Sums own =
        sums.computeIfAbsent(kind, k -> new TreeMap<>()).computeIfAbsent(year, y -> new Sums());
    own.lines++;
    if (expense.miles() != null) {
      own.miles.add(expense.miles());
    }
    if (expense.usd() == null) {
      return;
    }
    Double real = prices.real(expense.usd(), LocalDate.ofEpochDay(expense.date()).getYear());
    if (real == null) {
      own.linesBeforeIndex++;
    } else {
      (CostRules.IN_KIND.equals(expense.paidBy()) ? own.inKind : own.cash).add(real);
    }
  }

  private List<Row> list(AnalysisSettings settings) {
    List<Row> rows = new ArrayList<>();
    sums.forEach(
        (kind, byYear) ->
            byYear.forEach(
                (year, own) ->
                    rows.add(
                        new Row(
                            kind,
                            year,
                            own.lines,
                            own.cash.result(),
                            own.inKind.result(),
                            own.miles.result(),
                            own.linesBeforeIndex,
                            settings.baseYear()))));
    return rows;
  }
}
