package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import pondtally.history.DeviceHistory;
import pondtally.history.DeviceState;
import pondtally.history.PondHistory;
import pondtally.history.SiteHistory;
import pondtally.record.Site;

/** One row of the result table {@code sites}. */
public record SiteRow(
    String siteId,
    String partner,
    String watershed,
    String setting,
    Double latitude,
    Double longitude,
    String pondId,
    Long devices,
    Long devicesFunctional,
    String state,
    Double acresRetained,
    Long properties,
    Double totalUsd)
    implements Serializable {

  /** The rows of a cluster's sites. */
  public static List<SiteRow> of(ClusterView cluster, AnalysisSettings settings) {
    List<SiteRow> rows = new ArrayList<>();
    for (SiteHistory site : cluster.history().sites()) {
      rows.add(of(cluster, site, settings));
    }
    return rows;
  }

  private static SiteRow of(ClusterView cluster, SiteHistory history, AnalysisSettings settings) {
    Site site = history.site();
    int at = settings.endHalfDay() - 1;
    int interval = settings.rules().revisitEveryDays();
    Standing standing = Standing.of(history.devices(), at, interval);
    long functional =
        history.devices().stream()
            .filter(device -> Standing.of(device, at, interval) != Standing.NOT_FUNCTIONAL)
            .count();
    return new SiteRow(
        site.siteId(),
        site.partner(),
        site.watershed(),
        site.setting() == null ? null : site.setting().code(),
        site.latitude(),
        site.longitude(),
        history.pondId(),
        (long) history.devices().size(),
        functional,
        state(history, standing),
        acres(cluster, history, at, interval),
        cluster.history().properties().stream()
            .filter(property -> property.siteIds().contains(site.siteId()))
            .count(),
        cost(cluster, history, settings.endHalfDay() / 2));
  }

  private static String state(SiteHistory history, Standing standing) {
    if (history.devices().isEmpty()) {
      return "no-device";
    }
    return switch (standing) {
      case VERIFIED -> "functional";
      case UNVERIFIED -> "unverified";
      case NOT_FUNCTIONAL ->
          history.devices().stream().allMatch(d -> d.state() == DeviceState.RETIRED)
              ? "retired"
              : "failed";
    };
  }

  private static Double acres(ClusterView cluster, SiteHistory history, int at, int interval) {
    for (PondHistory pond : cluster.history().ponds()) {
      if (pond.pondId().equals(history.pondId())) {
        if (pond.area() == null) {
          return null;
        }
        List<DeviceHistory> devices =
            ClusterView.at(
                cluster.devicesByGroup().getOrDefault(GroupKey.ALL, List.of()), pond.siteIds());
        return Standing.of(devices, at, interval) == Standing.NOT_FUNCTIONAL
            ? 0.0
            : pond.area().acresAt(at);
      }
    }
    return null;
  }

  private static Double cost(ClusterView cluster, SiteHistory history, int endDay) {
    double sum = 0;
    boolean any = false;
    for (DeviceHistory device : history.devices()) {
      DeviceCost cost = cluster.costOf(device);
      any |= !cost.lines().isEmpty();
      sum += cost.realUsd(endDay);
    }
    return any ? sum : null;
  }
}
