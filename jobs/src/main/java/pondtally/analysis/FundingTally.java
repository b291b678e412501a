package pondtally.analysis;

import java.io.Serializable;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.analysis.CostLine.Payment;
import pondtally.history.DeviceHistory;
import pondtally.history.SiteHistory;
import pondtally.record.Expense;
import pondtally.stats.ExactSum;

/**
 * Nominal dollars by who paid or claims them, how, and on which day: what {@link FundingRows} sorts
 * into budget periods. Every line of every device counts once, and so does every expense of the
 * program; an expense in miles alone has no dollars.
 */
public final class FundingTally implements Serializable {

  private static final long serialVersionUID = 1;

  /**
   * Lines that are booked alike.
   *
   * @param payer who paid in cash; null for in-kind and volunteer value, or where nobody is named
   * @param matchFor award that it is claimed against; null: unclaimed
   * @param day days since 1970-01-01
   */
  record Booking(Payment payment, String payer, String matchFor, int day)
      implements Comparable<Booking>, Serializable {

    private static final Comparator<String> TEXT = Comparator.nullsFirst(Comparator.naturalOrder());
    private static final Comparator<Booking> ORDER =
        Comparator.comparing(Booking::payment)
            .thenComparing(Booking::payer, TEXT)
            .thenComparing(Booking::matchFor, TEXT)
            .thenComparingInt(Booking::day);

    @Override
    public int compareTo(Booking other) {
      return ORDER.compare(this, other);
    }
  }

  private final Map<Booking, ExactSum> sums = new HashMap<>();

  /** Adds the cost lines of a cluster's devices. */
  public void add(ClusterView cluster) {
    for (SiteHistory site : cluster.history().sites()) {
      for (DeviceHistory device : site.devices()) {
        for (CostLine line : cluster.costOf(device).lines()) {
          add(line.payment(), line.payer(), line.matchFor(), line.day(), line.nominalUsd());
        }
      }
    }
  }

  /** Adds the program's own expenses. */
  FundingTally with(List<Expense> expenses) {
    FundingTally both = new FundingTally();
    both.merge(this);
    for (Expense expense : expenses) {
      if (expense.usd() != null) {
        boolean inKind = CostRules.IN_KIND.equals(expense.paidBy());
        both.add(
            inKind ? Payment.IN_KIND : Payment.CASH,
            inKind ? null : expense.paidBy(),
            expense.matchFor(),
            expense.date(),
            expense.usd());
      }
    }
    return both;
  }

  private void add(Payment payment, String payer, String matchFor, int day, double usd) {
    sums.computeIfAbsent(new Booking(payment, payer, matchFor, day), b -> new ExactSum()).add(usd);
  }

  /** Adds what another tally summed. */
  public void merge(FundingTally other) {
    other.sums.forEach(
        (booking, more) -> sums.computeIfAbsent(booking, b -> new ExactSum()).merge(more));
  }

  /** Dollars of each booking. */
  SortedMap<Booking, ExactSum> sums() {
    return new TreeMap<>(sums);
  }
}
