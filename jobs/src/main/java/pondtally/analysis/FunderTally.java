package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import pondtally.history.DeviceHistory;
import pondtally.history.PondHistory;
import pondtally.history.PropertyHistory;
import pondtally.history.Stretches;
import pondtally.stats.ExactSum;

/**
 * What each funder's cash had a part in, up to the end of the reporting period: whole, as the
 * devices with any of its cash did it, and as its share of their cash. The shares of all funders
 * add up to the program, because the parts of each device, pond and property add up to one; whole
 * figures overlap where funders paid together, and do not.
 */
public final class FunderTally implements Serializable {

  private static final long serialVersionUID = 1;

  private final AnalysisSettings settings;
  private final SortedMap<String, Sums> sums = new TreeMap<>();

  public FunderTally(AnalysisSettings settings) {
    this.settings = settings;
  }

  private static final class Sums implements Serializable {
    private static final long serialVersionUID = 1;
    private long devices;
    private final ExactSum devicesShared = new ExactSum();
    private final ExactSum cash = new ExactSum();
    private final ExactSum functional = new ExactSum();
    private final ExactSum functionalShared = new ExactSum();
    private final ExactSum acreYears = new ExactSum();
    private final ExactSum acreYearsShared = new ExactSum();
    private final ExactSum propertyYears = new ExactSum();
    private final ExactSum propertyYearsShared = new ExactSum();

    private void merge(Sums other) {
      devices += other.devices;
      devicesShared.merge(other.devicesShared);
      cash.merge(other.cash);
      functional.merge(other.functional);
      functionalShared.merge(other.functionalShared);
      acreYears.merge(other.acreYears);
      acreYearsShared.merge(other.acreYearsShared);
      propertyYears.merge(other.propertyYears);
      propertyYearsShared.merge(other.propertyYearsShared);
    }
  }

  /** Adds a cluster. */
  public void add(ClusterView cluster) {
    List<DeviceHistory> all = cluster.devicesByGroup().getOrDefault(GroupKey.ALL, List.of());
    Map<String, TreeMap<String, Double>> cash = new HashMap<>();
    for (DeviceHistory device : all) {
      cash.put(
          device.deviceId(), FunderShare.cash(cluster, List.of(device), settings.endHalfDay() / 2));
    }
    all.forEach(device -> addDevice(device, cash.get(device.deviceId())));
    for (PondHistory pond : cluster.history().ponds()) {
      if (pond.area() != null) {
        addSubject(
            cluster,
            ClusterView.at(all, pond.siteIds()),
            cash,
            devices -> acreYears(pond, devices),
            true);
      }
    }
    for (PropertyHistory property : cluster.history().properties()) {
      addSubject(
          cluster,
          ClusterView.at(all, property.siteIds()),
          cash,
          devices -> propertyYears(property, devices),
          false);
    }
  }

  private void addDevice(DeviceHistory device, TreeMap<String, Double> cash) {
    double years =
        device.functional().within(Integer.MIN_VALUE, settings.endHalfDay()).days() / Years.DAYS;
    FunderShare.parts(cash)
        .forEach(
            (funder, part) -> {
              Sums own = sums(funder);
              own.devices++;
              own.devicesShared.add(part);
              own.cash.add(cash.getOrDefault(funder, 0.0));
              own.functional.add(years);
              own.functionalShared.add(part * years);
            });
  }

  /** A pond or property: whole for each funder of any of its devices, and each one's part. */
  private void addSubject(
      ClusterView cluster,
      List<DeviceHistory> devices,
      Map<String, TreeMap<String, Double>> cash,
      ToDoubleFunction<List<DeviceHistory>> measure,
      boolean isPond) {
    if (devices.isEmpty()) {
      return;
    }
    double whole = measure.applyAsDouble(devices);
    TreeMap<String, Double> paid = FunderShare.cash(cluster, devices, settings.endHalfDay() / 2);
    FunderShare.parts(paid)
        .forEach(
            (funder, part) -> {
              List<DeviceHistory> own =
                  devices.stream()
                      .filter(d -> FunderShare.isPayer(funder, cash.get(d.deviceId())))
                      .toList();
              Sums s = sums(funder);
              (isPond ? s.acreYears : s.propertyYears).add(measure.applyAsDouble(own));
              (isPond ? s.acreYearsShared : s.propertyYearsShared).add(part * whole);
            });
  }

  private double acreYears(PondHistory pond, List<DeviceHistory> devices) {
    Stretches functional =
        ClusterView.functional(devices).within(Integer.MIN_VALUE, settings.endHalfDay());
    return pond.area().acreDays(functional) / Years.DAYS;
  }

  private double propertyYears(PropertyHistory property, List<DeviceHistory> devices) {
    return PropertyTally.protectedBy(property, devices)
            .within(Integer.MIN_VALUE, settings.endHalfDay())
            .days()
        / Years.DAYS;
  }

  private Sums sums(String funder) {
    return sums.computeIfAbsent(funder, f -> new Sums());
  }

  /** Adds what another tally summed. */
  public void merge(FunderTally other) {
    other.sums.forEach((funder, more) -> sums(funder).merge(more));
  }

  /** Everybody who paid cash for a device, in order. */
  public List<String> funders() {
    return sums.keySet().stream().filter(name -> !name.equals(FunderShare.NO_CASH)).toList();
  }

  /**
   * One row of the result table {@code funder_shares}. Dollars of the base year; device-years,
   * acre-years and property-years to date.
   */
  public record Row(
      String funder,
      Long devices,
      Double devicesShared,
      Double cashUsd,
      Double cashShare,
      Double functionalDeviceYears,
      Double functionalDeviceYearsShared,
      Double acreYears,
      Double acreYearsShared,
      Double propertyYears,
      Double propertyYearsShared) {}

  /** The rows of the result table. */
  public List<Row> rows() {
    ExactSum all = new ExactSum();
    sums.values().forEach(s -> all.merge(s.cash));
    double cash = all.result();
    List<Row> rows = new ArrayList<>();
    sums.forEach((funder, s) -> rows.add(row(funder, s, cash)));
    return rows;
  }

  private static Row row(String funder, Sums s, double allCash) {
    return new Row(
        funder,
        s.devices,
        s.devicesShared.result(),
        s.cash.result(),
        allCash > 0 ? (Double) (s.cash.result() / allCash) : null,
        s.functional.result(),
        s.functionalShared.result(),
        s.acreYears.result(),
        s.acreYearsShared.result(),
        s.propertyYears.result(),
        s.propertyYearsShared.result());
  }
}
