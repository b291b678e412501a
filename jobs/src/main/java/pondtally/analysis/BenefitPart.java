package pondtally.analysis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pondtally.history.DeviceHistory;

/**
 * What some devices of a cluster add to each group that they make up.
 *
 * @param sum their amounts
 * @param weights how often the cluster is in each resample
 * @param firstInstall of each of their sites, days since 1970-01-01
 */
record BenefitPart(
    BenefitCluster cluster,
    BenefitAmounts sum,
    double[] weights,
    Map<String, Integer> firstInstall) {

  static BenefitPart of(
      List<DeviceHistory> devices, BenefitCluster cluster, BenefitAmounts sum, double[] weights) {
    Map<String, Integer> firstInstall = new HashMap<>();
    for (DeviceHistory device : devices) {
      firstInstall.merge(device.siteId(), device.install().installedOn(), Math::min);
    }
    return new BenefitPart(cluster, sum, weights, firstInstall);
  }

  void addTo(BenefitSums group) {
    boolean any = false;
    for (Map.Entry<String, Integer> site : firstInstall.entrySet()) {
      String id = site.getKey();
      group.addSite(cluster.damageKnown(id), cluster.costKnown(id), site.getValue());
      any |= cluster.counts(id);
    }
    group.add(sum, weights, any);
  }
}
