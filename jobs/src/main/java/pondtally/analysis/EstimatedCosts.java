package pondtally.analysis;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import pondtally.stats.ExactSum;

/**
 * Estimates that fill unknown building costs, in dollars of the base year. They stand beside
 * recorded cost and are never added to it.
 */
public final class EstimatedCosts {

  private final Map<String, Double> usdOfDevice = new HashMap<>();
  private final Map<GroupKey, Map<String, Sums>> sums = new TreeMap<>();

  private final List<Contribution> contributions = new ArrayList<>();

  private EstimatedCosts() {}

  private static final class Sums {
    private long devices;
    private final ExactSum usd = new ExactSum();
  }

  /** The estimates of all devices whose cost is unknown and whose design is known. */
  public static EstimatedCosts of(EstimatedTally tally, AnalysisSettings settings) {
    EstimatedCosts costs = new EstimatedCosts();
    for (EstimatedTally.Unknown device : tally.unknown()) {
      OptionalDouble usd = tally.estimateUsd(device.design());
      int installed = device.design().installedOn();
      if (usd.isPresent() && 2 * installed < settings.endHalfDay()) {
        costs.usdOfDevice.put(device.design().deviceId(), usd.getAsDouble());
        String year = Integer.toString(settings.fiscalYears().of(installed));
        costs.contributions.add(
            new Contribution(
                ContributionSubject.ESTIMATED_USD,
                device.design().siteId(),
                device.design().deviceId(),
                usd.getAsDouble(),
                device.design().origin(),
                0,
                year,
                null,
                ContributionGroups.of(device.groups())));
        for (GroupKey key : device.groups()) {
          costs.add(key, Years.ALL, usd.getAsDouble());
          costs.add(key, year, usd.getAsDouble());
        }
      }
    }
    return costs;
  }

  private void add(GroupKey key, String year, double usd) {
    Sums s = sums.computeIfAbsent(key, k -> new TreeMap<>()).computeIfAbsent(year, y -> new Sums());
    s.devices++;
    s.usd.add(usd);
  }

  /** Devices of a group, put in in that year, whose cost is an estimate. */
  long devices(GroupKey key, String year) {
    Sums s = sums.getOrDefault(key, Map.of()).get(year);
    return s == null ? 0 : s.devices;
  }

  /** The design from which each estimate was made. */
  List<Contribution> contributions() {
    return contributions;
  }

  /** Sum of their estimates; null where there are none. */
  Double usd(GroupKey key, String year) {
    Sums s = sums.getOrDefault(key, Map.of()).get(year);
    return s == null ? null : (Double) s.usd.result();
  }

  /** The rows of {@code devices} with the estimates filled in as they are asked for. */
  public List<DeviceRow> fill(List<DeviceRow> rows) {
    return new AbstractList<>() {
      @Override
      public DeviceRow get(int index) {
        DeviceRow row = rows.get(index);
        return row.withEstimate(usdOfDevice.get(row.deviceId()));
      }

      @Override
      public int size() {
        return rows.size();
      }
    };
  }
}
