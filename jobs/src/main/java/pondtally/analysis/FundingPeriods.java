package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.record.Budget;
import pondtally.stats.ExactSum;

/** The budget periods of each funder: what was awarded, and which of them a day belongs to. */
final class FundingPeriods implements Serializable {

  private static final long serialVersionUID = 1;

  /**
   * A funder's period.
   *
   * @param from first day, days since 1970-01-01; null: outside every budget period
   * @param to last day, days since 1970-01-01; null likewise
   */
  record Period(String funder, Integer from, Integer to)
      implements Comparable<Period>, Serializable {

    private static final Comparator<Integer> DAY = Comparator.nullsFirst(Comparator.naturalOrder());
    private static final Comparator<Period> ORDER =
        Comparator.comparing(Period::funder)
            .thenComparing(Period::from, DAY)
            .thenComparing(Period::to, DAY);

    @Override
    public int compareTo(Period other) {
      return ORDER.compare(this, other);
    }
  }

  /** Dollars of the budget rows of one period; null where no row states any. */
  record Award(Double awardUsd, Double matchRequiredUsd) {}

  private final SortedMap<Period, List<Budget>> budgets = new TreeMap<>();

  FundingPeriods(List<Budget> rows) {
    for (Budget row : rows) {
      Period period = new Period(row.funder(), row.periodStart(), row.periodEnd());
      budgets.computeIfAbsent(period, p -> new ArrayList<>()).add(row);
    }
  }

  /** Every period that has a budget, in order. */
  List<Period> all() {
    return List.copyOf(budgets.keySet());
  }

  /** The funder's first period that holds the day, so that a line counts once where two overlap. */
  Period of(String funder, int day) {
    for (Period period : budgets.keySet()) {
      if (period.funder().equals(funder) && period.from() <= day && day <= period.to()) {
        return period;
      }
    }
    return new Period(funder, null, null);
  }

  /** What the budget rows of a period add up to. */
  Award award(Period period) {
    List<Budget> rows = budgets.getOrDefault(period, List.of());
    return new Award(
        sum(rows.stream().map(Budget::awardUsd).toList()),
        sum(rows.stream().map(Budget::matchRequiredUsd).toList()));
  }

  private static Double sum(List<Double> amounts) {
    ExactSum sum = new ExactSum();
    boolean any = false;
    for (Double amount : amounts) {
      if (amount != null) {
        sum.add(amount);
        any = true;
      }
    }
    return any ? (Double) sum.result() : null;
  }
}
