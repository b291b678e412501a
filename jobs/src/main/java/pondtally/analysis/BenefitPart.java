package pondtally.analysis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pondtally.history.DeviceHistory;

/**
 * What some devices of a cluster add to each group that they make up.
 *
 * @param draws their amounts, and their part in each resample
 * @param firstInstall of each of their sites, days since 1970-01-01
 */
record BenefitPart(
    BenefitCluster cluster, BenefitSums.Draws draws, Map<String, Integer> firstInstall) {

  static BenefitPart of(
      List<DeviceHistory> devices, BenefitCluster cluster, BenefitAmounts sum, byte[] weights) {
    Map<String, Integer> firstInstall = new HashMap<>();
    for (DeviceHistory device : devices) {
      firstInstall.merge(device.siteId(), device.install().installedOn(), Math::min);
    }
    return new BenefitPart(cluster, BenefitSums.draws(sum, weights), firstInstall);
  }

  void addTo(BenefitSums group) {
    boolean any = false;
    for (Map.Entry<String, Integer> site : firstInstall.entrySet()) {
      String id = site.getKey();
      group.addSite(cluster.damageKnown(id), cluster.costKnown(id), site.getValue());
      any |= cluster.counts(id);
    }
    group.add(draws, any);
  }
}
