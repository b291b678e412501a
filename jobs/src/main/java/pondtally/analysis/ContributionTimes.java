package pondtally.analysis;

import java.util.List;
import pondtally.history.DeviceHistory;
import pondtally.history.Failure;
import pondtally.history.FailureDating;
import pondtally.history.Life;
import pondtally.history.SiteHistory;
import pondtally.history.Stretches;
import pondtally.record.Condition;
import pondtally.record.Origin;
import pondtally.record.Visit;

/** Contributions to lives, failures and the time during which they could happen. */
final class ContributionTimes {

  private final ClusterView cluster;
  private final RateTally rates;
  private final FailureDating dating;
  private final ContributionSink sink;

  ContributionTimes(ClusterView cluster, AnalysisSettings settings, ContributionSink sink) {
    this.cluster = cluster;
    this.rates = new RateTally(settings.fiscalYears());
    this.dating = settings.rules().dating();
    this.sink = sink;
  }

  void add() {
    for (SiteHistory site : cluster.history().sites()) {
      for (DeviceHistory device : site.devices()) {
        Origin installed = device.install().origin();
        List<GroupKey> keys = cluster.groupsOf(device);
        sink.device(
            ContributionSubject.VERIFIED_DAYS,
            device,
            keys,
            device.verified().days(),
            installed,
            null,
            null);
        sink.device(
            ContributionSubject.FUNCTIONAL_DAYS,
            device,
            keys,
            device.functional().days(),
            installed,
            null,
            null);
        for (Life life : device.lives()) {
          rates(device, life);
          life(device, life);
        }
      }
    }
  }

  private void rates(DeviceHistory device, Life life) {
    List<GroupKey> keys = cluster.groupsOf(device, life);
    Stretches exposed = device.exposure(life);
    rates
        .byYear(exposed, List.of())
        .forEach(
            (year, counts) -> {
              if (year != Years.WHOLE) {
                sink.device(
                    ContributionSubject.DEVICE_YEARS,
                    device,
                    keys,
                    counts.deviceYears(),
                    life.design().origin(),
                    Years.label(year),
                    null);
              }
            });
    for (Failure failure : device.failures()) {
      if (failure.life() == life.number()) {
        sink.device(
            ContributionSubject.FAILURES,
            device,
            keys,
            1,
            foundBy(device, failure),
            Years.label(rates.yearOf(failure)),
            failure.cause().code());
      }
    }
  }

  private void life(DeviceHistory device, Life life) {
    double days = (life.exitAge(dating) - life.entryAge()) / 2.0;
    if (!life.followed() || days <= 0) {
      return;
    }
    List<GroupKey> keys = cluster.groupsOf(device, life);
    Origin design = life.design().origin();
    sink.device(ContributionSubject.LIVES, device, keys, 1, design, null, null);
    sink.device(
        ContributionSubject.LIFE_YEARS, device, keys, days / Years.DAYS, design, null, null);
    if (life.failed()) {
      sink.device(
          ContributionSubject.FIRST_FAILURES,
          device,
          keys,
          1,
          foundBy(device, life.firstFailure()),
          null,
          null);
    }
  }

  /** The first visit on the day on which a failure was found; a failed one before others. */
  private Origin foundBy(DeviceHistory device, Failure failure) {
    Origin any = null;
    for (Visit visit : cluster.history().records().visits()) {
      boolean then =
          visit.deviceId().equals(device.deviceId())
              && (2 * visit.visitedOn() == failure.foundOn()
                  || 2 * visit.visitedOn() == failure.foundOn() - 2
                      && failure.foundOn() - failure.knownGoodOn() == 2);
      if (then && visit.condition() == Condition.FAILED) {
        return visit.origin();
      }
      any = then && any == null ? visit.origin() : any;
    }
    return any == null ? device.install().origin() : any;
  }
}
