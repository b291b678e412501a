package pondtally.analysis;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import pondtally.history.DeviceHistory;
import pondtally.history.PondHistory;
import pondtally.history.PropertyHistory;
import pondtally.history.SiteHistory;
import pondtally.pack.ByteSink;
import pondtally.pack.ByteSource;
import pondtally.record.Removal;

/**
 * What the devices of one group in one cluster cost and brought, from their first install to the
 * end of the period.
 *
 * @param costed whether the building cost of every device is recorded
 * @param cashUsd dollars of the base year paid in cash
 * @param allUsd cash, in-kind lines and valued volunteer hours
 * @param properties distinct properties with at least one verified functional day
 * @param propertyYears verified functional time of those properties
 * @param acreYears wetland area over verified functional time; null where a pond was never measured
 * @param removalsAvoided null where no year could be computed for a site
 * @param functionalDeviceYears verified functional time of the devices
 */
public record Effect(
    boolean costed,
    double cashUsd,
    double allUsd,
    double properties,
    double propertyYears,
    Double acreYears,
    Double removalsAvoided,
    double functionalDeviceYears)
    implements Serializable {

  private static final double DAYS_PER_YEAR = 365.25;
  private static final int COSTED = 1;
  private static final int ACRES_KNOWN = 2;
  private static final int REMOVALS_KNOWN = 4;

  /** Appends it to packed values. */
  void writeTo(ByteSink sink) {
    sink.writeNumber(
        (costed ? COSTED : 0)
            | (acreYears == null ? 0 : ACRES_KNOWN)
            | (removalsAvoided == null ? 0 : REMOVALS_KNOWN));
    sink.writeDouble(cashUsd);
    sink.writeDouble(allUsd);
    sink.writeDouble(properties);
    sink.writeDouble(propertyYears);
    if (acreYears != null) {
      sink.writeDouble(acreYears);
    }
    if (removalsAvoided != null) {
      sink.writeDouble(removalsAvoided);
    }
    sink.writeDouble(functionalDeviceYears);
  }

  /** Reads back the next from packed values. */
  static Effect readFrom(ByteSource source) {
    long known = source.readNumber();
    return new Effect(
        (known & COSTED) != 0,
        source.readDouble(),
        source.readDouble(),
        source.readDouble(),
        source.readDouble(),
        (known & ACRES_KNOWN) != 0 ? (Double) source.readDouble() : null,
        (known & REMOVALS_KNOWN) != 0 ? (Double) source.readDouble() : null,
        source.readDouble());
  }

  /**
   * The effect of some devices of a cluster.
   *
   * @param reports removals reported in the cluster, by site and year
   */
  static Effect of(
      ClusterView cluster,
      List<DeviceHistory> devices,
      Map<String, Map<Integer, Removal>> reports,
      AnalysisSettings settings) {
    int end = settings.endHalfDay();
    boolean costed = true;
    double cash = 0;
    double all = 0;
    double functional = 0;
    SortedSet<String> siteIds = new TreeSet<>();
    for (DeviceHistory device : devices) {
      DeviceCost cost = cluster.costOf(device);
      costed &= cost.built();
      for (CostLine line : cost.lines()) {
        if (2 * line.day() < end && line.realUsd() != null) {
          all += line.realUsd();
          cash += line.payment() == CostLine.Payment.CASH ? line.realUsd() : 0;
        }
      }
      functional += device.functional().within(Integer.MIN_VALUE, end).days() / DAYS_PER_YEAR;
      siteIds.add(device.siteId());
    }
    double[] properties = properties(cluster, devices, end);
    return new Effect(
        costed,
        cash,
        all,
        properties[0],
        properties[1],
        acreYears(cluster, devices, end),
        removalsAvoided(cluster, devices, siteIds, reports, settings),
        functional);
  }

  private static double[] properties(ClusterView cluster, List<DeviceHistory> devices, int end) {
    double count = 0;
    double years = 0;
    for (PropertyHistory property : cluster.history().properties()) {
      List<DeviceHistory> here = ClusterView.at(devices, property.siteIds());
      long halfDays =
          PropertyTally.protectedBy(property, here).within(Integer.MIN_VALUE, end).halfDays();
      count += halfDays >= 2 ? 1 : 0;
      years += halfDays / (2 * DAYS_PER_YEAR);
    }
    return new double[] {count, years};
  }

  private static Double acreYears(ClusterView cluster, List<DeviceHistory> devices, int end) {
    double sum = 0;
    for (PondHistory pond : cluster.history().ponds()) {
      List<DeviceHistory> here = ClusterView.at(devices, pond.siteIds());
      if (here.isEmpty()) {
        continue;
      }
      if (pond.area() == null) {
        return null;
      }
      sum +=
          pond.area().acreDays(ClusterView.functional(here).within(Integer.MIN_VALUE, end))
              / DAYS_PER_YEAR;
    }
    return sum;
  }

  private static Double removalsAvoided(
      ClusterView cluster,
      List<DeviceHistory> devices,
      SortedSet<String> siteIds,
      Map<String, Map<Integer, Removal>> reports,
      AnalysisSettings settings) {
    double sum = 0;
    for (String siteId : siteIds) {
      SiteHistory site = cluster.site(siteId);
      List<DeviceHistory> here = ClusterView.at(devices, List.of(siteId));
      boolean any = false;
      for (Removal report : reports.getOrDefault(siteId, Map.of()).values()) {
        Double avoided =
            RemovalTally.avoided(
                site, here, ClusterView.firstEntry(here), report.year(), report, settings);
        if (avoided != null) {
          sum += avoided;
          any = true;
        }
      }
      if (!any) {
        return null;
      }
    }
    return sum;
  }
}
