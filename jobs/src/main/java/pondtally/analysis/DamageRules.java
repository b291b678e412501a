package pondtally.analysis;

import java.util.HashMap;
import java.util.Map;
import pondtally.history.PropertyHistory;
import pondtally.history.SiteHistory;
import pondtally.record.Property;
import pondtally.record.Site;

/**
 * What the conflict at a site costs in a year without devices, dollars of the base year: the site's
 * own record, else the sum over its distinct properties, never both. A property at several sites is
 * shared equally among them. Damage without a price year is taken as dollars of the base year.
 * Common practice, no source.
 */
final class DamageRules {

  private DamageRules() {}

  /** Yearly damage by site id; a site for which none is known is not in the map. */
  static Map<String, Double> yearlyUsd(ClusterView cluster) {
    Map<String, Double> ofProperties = new HashMap<>();
    for (PropertyHistory property : cluster.history().properties()) {
      Property record = property.property();
      Double usd = real(cluster, record.damagePerYearUsd(), record.damageYear());
      if (usd != null) {
        for (String siteId : property.siteIds()) {
          ofProperties.merge(siteId, usd / property.siteIds().size(), Double::sum);
        }
      }
    }
    Map<String, Double> damage = new HashMap<>();
    for (SiteHistory history : cluster.history().sites()) {
      Site site = history.site();
      Double own = real(cluster, site.damageCostPerYearBeforeUsd(), site.damageCostYear());
      Double usd = own != null ? own : ofProperties.get(site.siteId());
      if (usd != null) {
        damage.put(site.siteId(), usd);
      }
    }
    return damage;
  }

  private static Double real(ClusterView cluster, Double usd, Integer year) {
    return usd == null || year == null ? usd : cluster.prices().real(usd, year);
  }
}
