package pondtally.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pondtally.history.PropertyHistory;
import pondtally.history.SiteHistory;
import pondtally.record.Origin;
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

  /** What one row says of the yearly damage at a site, dollars of the base year. */
  record Part(Origin origin, double yearlyUsd) {}

  /** Yearly damage by site id; a site for which none is known is not in the map. */
  static Map<String, Double> yearlyUsd(ClusterView cluster) {
    Map<String, Double> damage = new HashMap<>();
    parts(cluster)
        .forEach(
            (site, parts) ->
                damage.put(
                    site, parts.stream().mapToDouble(Part::yearlyUsd).reduce(0, Double::sum)));
    return damage;
  }

  /** The rows that yearly damage comes from, by site id; a site without any is not in the map. */
  static Map<String, List<Part>> parts(ClusterView cluster) {
    Map<String, List<Part>> ofProperties = new HashMap<>();
    for (PropertyHistory property : cluster.history().properties()) {
      Property record = property.property();
      Double usd = real(cluster, record.damagePerYearUsd(), record.damageYear());
      if (usd != null) {
        for (String siteId : property.siteIds()) {
          ofProperties
              .computeIfAbsent(siteId, s -> new ArrayList<>())
              .add(new Part(record.origin(), usd / property.siteIds().size()));
        }
      }
    }
    Map<String, List<Part>> damage = new HashMap<>();
    for (SiteHistory history : cluster.history().sites()) {
      Site site = history.site();
      Double own = real(cluster, site.damageCostPerYearBeforeUsd(), site.damageCostYear());
      List<Part> parts =
          own != null ? List.of(new Part(site.origin(), own)) : ofProperties.get(site.siteId());
      if (parts != null) {
        damage.put(site.siteId(), parts);
      }
    }
    return damage;
  }

  private static Double real(ClusterView cluster, Double usd, Integer year) {
    return usd == null || year == null ? usd : cluster.prices().real(usd, year);
  }
}
