package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import pondtally.history.BuildSpecification;
import pondtally.history.DeviceHistory;
import pondtally.history.Life;
import pondtally.history.PipeType;
import pondtally.history.SiteHistory;

/** One row of the result table {@code devices}. Days are days; dates are days since 1970-01-01. */
public record DeviceRow(
    String deviceId,
    String siteId,
    String partner,
    String watershed,
    String kind,
    String pipe,
    Integer installedOn,
    Integer entryOn,
    Integer lastVisitOn,
    String state,
    Long failures,
    Double firstFailureAfterDays,
    Double firstFailureByDays,
    Double verifiedDays,
    Double functionalDays,
    Long buildItemsMet,
    Long buildItemsJudged,
    Double costRecordedUsd,
    Double costEstimatedUsd)
    implements Serializable {

  /** The rows of a cluster's devices. */
  public static List<DeviceRow> of(ClusterView cluster, AnalysisSettings settings) {
    List<DeviceRow> rows = new ArrayList<>();
    for (SiteHistory site : cluster.history().sites()) {
      for (DeviceHistory device : site.devices()) {
        rows.add(of(cluster, site, device, settings));
      }
    }
    return rows;
  }

  private static DeviceRow of(
      ClusterView cluster, SiteHistory site, DeviceHistory device, AnalysisSettings settings) {
    Life failed = device.lives().stream().filter(Life::failed).findFirst().orElse(null);
    var build = BuildSpecification.judge(device.install());
    DeviceCost cost = cluster.costOf(device);
    return new DeviceRow(
        device.deviceId(),
        device.siteId(),
        device.install().partner(),
        site.site().watershed(),
        device.install().deviceKind() == null ? null : device.install().deviceKind().code(),
        PipeType.of(device.install()),
        device.install().installedOn(),
        Math.floorDiv(device.entryOn(), 2),
        device.lastVisitOn() == null ? null : (Integer) Math.floorDiv(device.lastVisitOn(), 2),
        device.state().code(),
        (long) device.failures().size(),
        failed == null ? null : (Double) (failed.knownGoodAge() / 2.0),
        failed == null ? null : (Double) (failed.foundAge() / 2.0),
        device.verified().days(),
        device.functional().days(),
        (long) build.met(),
        (long) build.judged(),
        cost.lines().isEmpty() ? null : (Double) cost.realUsd(settings.endHalfDay() / 2),
        null);
  }

  /** The row with an estimate (dollars of the base year) of its unknown cost; null: none. */
  DeviceRow withEstimate(Double estimatedUsd) {
    return estimatedUsd == null
        ? this
        : new DeviceRow(
            deviceId,
            siteId,
            partner,
            watershed,
            kind,
            pipe,
            installedOn,
            entryOn,
            lastVisitOn,
            state,
            failures,
            firstFailureAfterDays,
            firstFailureByDays,
            verifiedDays,
            functionalDays,
            buildItemsMet,
            buildItemsJudged,
            costRecordedUsd,
            estimatedUsd);
  }
}
