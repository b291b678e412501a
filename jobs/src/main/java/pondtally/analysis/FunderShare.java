package pondtally.analysis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pondtally.analysis.CostLine.Payment;
import pondtally.history.DeviceHistory;
import pondtally.stats.ExactSum;

/**
 * Who paid what part of the cash of some devices. The parts add up to one. Devices without any cash
 * on record have no parts to tell: they stand with {@link #NO_CASH}.
 */
final class FunderShare {

  /** Stands for the funder of devices without cash on record. */
  static final String NO_CASH = "no cash on record";

  private FunderShare() {}

  /** Cash in dollars of the base year by payer, up to {@code endDay}; nobody pays nothing. */
  static TreeMap<String, Double> cash(
      ClusterView cluster, List<DeviceHistory> devices, int endDay) {
    Map<String, ExactSum> sums = new HashMap<>();
    for (DeviceHistory device : devices) {
      for (CostLine line : cluster.costOf(device).lines()) {
        boolean counts =
            line.payment() == Payment.CASH && line.day() < endDay && line.realUsd() != null;
        if (counts && line.realUsd() > 0) {
          String payer = line.payer() == null ? FundingRows.UNASSIGNED : line.payer();
          sums.computeIfAbsent(payer, p -> new ExactSum()).add(line.realUsd());
        }
      }
    }
    TreeMap<String, Double> cash = new TreeMap<>();
    sums.forEach((payer, sum) -> cash.put(payer, sum.result()));
    return cash;
  }

  /** Whether somebody has a part of it. */
  static boolean isPayer(String payer, TreeMap<String, Double> cash) {
    return cash.isEmpty() ? payer.equals(NO_CASH) : cash.containsKey(payer);
  }

  /** Each payer's part of all of it, from 0 to 1. */
  static TreeMap<String, Double> parts(TreeMap<String, Double> cash) {
    TreeMap<String, Double> parts = new TreeMap<>();
    ExactSum all = new ExactSum();
    cash.values().forEach(all::add);
    double total = all.result();
    cash.forEach((payer, usd) -> parts.put(payer, usd / total));
    if (parts.isEmpty()) {
      parts.put(NO_CASH, 1.0);
    }
    return parts;
  }
}
