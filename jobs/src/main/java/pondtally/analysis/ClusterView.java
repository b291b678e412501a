package pondtally.analysis;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import pondtally.history.ClusterHistory;
import pondtally.history.DeviceHistory;
import pondtally.history.Life;
import pondtally.history.SiteHistory;
import pondtally.history.Stretches;
import pondtally.record.ClusterRecords;
import pondtally.record.Install;
import pondtally.record.MaterialLine;
import pondtally.record.Visit;
import pondtally.stats.PoissonWeights;

/**
 * A cluster's histories with its devices sorted into groups, shared by the analyses so that each is
 * done once.
 */
public final class ClusterView {

  private final ClusterHistory history;
  private final Groups groups;
  private final Map<String, SiteHistory> sites = new LinkedHashMap<>();
  private final Map<GroupKey, List<DeviceHistory>> byGroup = new LinkedHashMap<>();
  private final Map<String, List<GroupKey>> groupsOfDevice = new HashMap<>();
  private final Map<String, DeviceCost> costs;
  private final Prices prices;
  private final Collection<Subset> subsets;
  private double[] weights;

  public ClusterView(ClusterHistory history, Groups groups, CostRules costRules) {
    this.history = history;
    this.groups = groups;
    this.costs = costs(history.records(), costRules);
    this.prices = costRules.prices();
    for (SiteHistory site : history.sites()) {
      sites.put(site.site().siteId(), site);
      for (DeviceHistory device : site.devices()) {
        List<GroupKey> keys = groups.of(device.install(), site.site());
        groupsOfDevice.put(device.deviceId(), keys);
        for (GroupKey key : keys) {
          byGroup.computeIfAbsent(key, k -> new ArrayList<>()).add(device);
        }
      }
    }
    subsets = subsets(byGroup);
  }

  public ClusterHistory history() {
    return history;
  }

  public Groups groups() {
    return groups;
  }

  /** The site of that id; every device's site is here. */
  public SiteHistory site(String siteId) {
    return sites.get(siteId);
  }

  /** The cluster's devices in each group that has any, as first installed. */
  public Map<GroupKey, List<DeviceHistory>> devicesByGroup() {
    return byGroup;
  }

  /** The groups of one device, as first installed. */
  public List<GroupKey> groupsOf(DeviceHistory device) {
    return groupsOfDevice.get(device.deviceId());
  }

  /** The groups of one service life of a device. */
  public List<GroupKey> groupsOf(DeviceHistory device, Life life) {
    return life.number() == 0 && life.design().equals(device.install())
        ? groupsOf(device)
        : groups.of(life.design(), site(device.siteId()).site(), life.openedOn() / 2);
  }

  /**
   * Devices that make up one or more groups, so that what several groups have in common is computed
   * once.
   *
   * @param devices some of the cluster's devices, at least one
   * @param keys the groups whose devices in this cluster are exactly these
   */
  public record Subset(List<DeviceHistory> devices, List<GroupKey> keys) {}

  /** The cluster's devices as the groups divide them. */
  public Collection<Subset> subsets() {
    return subsets;
  }

  /** Groups that have the same devices, together. */
  static Collection<Subset> subsets(Map<GroupKey, List<DeviceHistory>> byGroup) {
    List<Subset> subsets = new ArrayList<>();
    byGroup.forEach((key, devices) -> subset(subsets, devices).keys().add(key));
    return subsets;
  }

  private static Subset subset(List<Subset> subsets, List<DeviceHistory> devices) {
    for (Subset subset : subsets) {
      if (same(subset.devices(), devices)) {
        return subset;
      }
    }
    Subset subset = new Subset(devices, new ArrayList<>());
    subsets.add(subset);
    return subset;
  }

  private static boolean same(List<DeviceHistory> a, List<DeviceHistory> b) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (a.get(i) != b.get(i)) {
        return false;
      }
    }
    return true;
  }

  /** The cluster's weight in each bootstrap resample; drawn once for all analyses. */
  double[] weights(long seed, int resamples) {
    if (weights == null || weights.length != resamples) {
      weights = new double[resamples];
      PoissonWeights.of(seed, history.records().cluster()).fill(weights);
    }
    return weights;
  }

  /** What turns dollars of a year into dollars of the base year. */
  public Prices prices() {
    return prices;
  }

  /** What one device cost. */
  public DeviceCost costOf(DeviceHistory device) {
    return costs.get(device.deviceId());
  }

  private static Map<String, DeviceCost> costs(ClusterRecords records, CostRules rules) {
    Map<String, List<Install>> installs = byDevice(records.installs(), Install::deviceId);
    Map<String, List<MaterialLine>> materials =
        byDevice(records.materials(), MaterialLine::deviceId);
    Map<String, List<Visit>> visits = byDevice(records.visits(), Visit::deviceId);
    Map<String, DeviceCost> costs = new HashMap<>();
    installs.forEach(
        (device, rows) -> {
          rows.sort(Comparator.comparingInt(Install::installedOn).thenComparing(Install::origin));
          costs.put(
              device,
              rules.of(
                  rows,
                  materials.getOrDefault(device, List.of()),
                  visits.getOrDefault(device, List.of())));
        });
    return costs;
  }

  private static <R> Map<String, List<R>> byDevice(List<R> rows, Function<R, String> deviceId) {
    Map<String, List<R>> byDevice = new HashMap<>();
    for (R row : rows) {
      byDevice.computeIfAbsent(deviceId.apply(row), d -> new ArrayList<>()).add(row);
    }
    return byDevice;
  }

  /** The time during which at least one of {@code devices} was functional, verified. */
  public static Stretches functional(List<DeviceHistory> devices) {
    Stretches union = Stretches.NONE;
    for (DeviceHistory device : devices) {
      union = union.union(device.functional());
    }
    return union;
  }

  /** Those of {@code devices} that stand at one of {@code siteIds}. */
  public static List<DeviceHistory> at(List<DeviceHistory> devices, List<String> siteIds) {
    List<DeviceHistory> there = new ArrayList<>(devices.size());
    for (DeviceHistory device : devices) {
      if (siteIds.contains(device.siteId())) {
        there.add(device);
      }
    }
    return there;
  }

  /**
   * Earliest entry of any of {@code devices}, half days since 1970-01-01; devices must not be
   * empty.
   */
  public static int firstEntry(List<DeviceHistory> devices) {
    int first = devices.get(0).entryOn();
    for (DeviceHistory device : devices) {
      first = Math.min(first, device.entryOn());
    }
    return first;
  }
}
