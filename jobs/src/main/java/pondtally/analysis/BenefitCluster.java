package pondtally.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pondtally.analysis.CostLine.Stage;
import pondtally.history.DeviceHistory;
import pondtally.history.Failure;
import pondtally.history.Life;
import pondtally.history.SiteHistory;
import pondtally.record.Install;
import pondtally.record.Visit;

/**
 * What each device of a cluster adds to benefit and cost. A site counts to date only where its
 * yearly damage and the cost of all its devices are known: benefit without cost, or cost without
 * benefit, would bend the ratio.
 */
final class BenefitCluster {

  private final AnalysisSettings settings;
  private final Map<String, Double> damage;
  private final Set<String> uncosted = new HashSet<>();
  private final Map<String, BenefitAmounts> byDevice = new HashMap<>();

  private BenefitCluster(ClusterView cluster, AnalysisSettings settings) {
    this.settings = settings;
    this.damage = DamageRules.yearlyUsd(cluster);
    Map<String, List<Visit>> visits = new HashMap<>();
    for (Visit visit : cluster.history().records().visits()) {
      visits.computeIfAbsent(visit.deviceId(), d -> new ArrayList<>()).add(visit);
    }
    for (SiteHistory site : cluster.history().sites()) {
      for (DeviceHistory device : site.devices()) {
        if (!costKnown(cluster.costOf(device))) {
          uncosted.add(site.site().siteId());
        }
      }
      Map<String, Double> years = DamageShare.functionalYears(site.devices());
      for (DeviceHistory device : site.devices()) {
        BenefitAmounts amounts = new BenefitAmounts();
        DeviceCost cost = cluster.costOf(device);
        addToDate(site.site().siteId(), cost, years.get(device.deviceId()), amounts);
        addBuild(device.install(), cost, amounts);
        addRestarts(device, amounts);
        addDamage(site, amounts);
        BenefitEvents.add(
            visits.getOrDefault(device.deviceId(), List.of()), cost, settings, amounts);
        byDevice.put(device.deviceId(), amounts);
      }
    }
  }

  static BenefitCluster of(ClusterView cluster, AnalysisSettings settings) {
    return new BenefitCluster(cluster, settings);
  }

  boolean damageKnown(String siteId) {
    return damage.containsKey(siteId);
  }

  boolean costKnown(String siteId) {
    return !uncosted.contains(siteId);
  }

  boolean counts(String siteId) {
    return damageKnown(siteId) && costKnown(siteId);
  }

  /** The sum over some of its devices. */
  BenefitAmounts sum(List<DeviceHistory> devices) {
    BenefitAmounts sum = new BenefitAmounts();
    for (DeviceHistory device : devices) {
      sum.add(byDevice.get(device.deviceId()));
    }
    return sum;
  }

  private static boolean costKnown(DeviceCost cost) {
    return cost.built() && known(cost.lines());
  }

  private static boolean known(List<CostLine> lines) {
    for (CostLine line : lines) {
      if (line.realUsd() == null) {
        return false;
      }
    }
    return true;
  }

  private void addToDate(String siteId, DeviceCost cost, double years, BenefitAmounts into) {
    if (counts(siteId)) {
      for (CostLine line : cost.lines()) {
        into.add(BenefitMeasure.COST_USD, line.realUsd());
      }
      into.add(BenefitMeasure.BENEFIT_USD, damage.get(siteId) * years);
      into.add(BenefitMeasure.SITE_YEARS, years);
    }
  }

  private void addBuild(Install install, DeviceCost cost, BenefitAmounts into) {
    List<CostLine> build = new ArrayList<>();
    for (CostLine line : cost.lines()) {
      if (line.stage() == Stage.BUILD) {
        build.add(line);
      }
    }
    if (build.isEmpty() || !known(build)) {
      return;
    }
    into.add(BenefitMeasure.BUILDS, 1);
    double hours = install.laborHours() == null ? 0 : install.laborHours();
    for (CostLine line : build) {
      into.add(BenefitMeasure.BUILD_USD, line.realUsd());
      boolean labor =
          line.origin().equals(install.origin())
              && line.nominalUsd() == hours * settings.laborRateUsd();
      into.add(BenefitMeasure.BUILD_LABOR_USD, labor ? line.realUsd() : 0);
    }
  }

  private static void addRestarts(DeviceHistory device, BenefitAmounts into) {
    for (Failure failure : device.failures()) {
      if (failure.restartedOn() != null) {
        boolean replaced = false;
        for (Life life : device.lives()) {
          replaced |= life.number() > 0 && life.openedOn() == failure.restartedOn();
        }
        into.add(replaced ? BenefitMeasure.REPLACED : BenefitMeasure.REPAIRED, 1);
      }
    }
  }

  private void addDamage(SiteHistory site, BenefitAmounts into) {
    Double yearly = damage.get(site.site().siteId());
    if (yearly != null) {
      into.add(BenefitMeasure.AT_DAMAGE, 1);
      into.add(BenefitMeasure.DAMAGE_USD, yearly / site.devices().size());
    }
  }
}
