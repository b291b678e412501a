package pondtally.check;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import pondtally.record.Area;
import pondtally.record.Install;
import pondtally.record.Property;
import pondtally.record.Removal;
import pondtally.record.Site;
import pondtally.record.Sourced;

/**
 * Rows about a site or pond that no row of sites describes. Requests are left alone: a site that
 * was asked for need not have become one.
 */
final class UnknownSites {

  private UnknownSites() {}

  static void apply(OpenCluster cluster) {
    Set<String> known = cluster.siteIds();
    setAside(cluster.installs, Install::siteId, known, "The device has no site");
    setAside(cluster.removals, Removal::siteId, known, "The removals have no site");
    setAside(cluster.properties, Property::siteId, known, "The property has no site");
    setAside(cluster.areas, Area::siteId, known, "The area has no site");
    checkPonds(cluster);
  }

  private static <T extends Sourced> void setAside(
      Rows<T> rows, Function<T, String> siteId, Set<String> known, String lack) {
    for (T row : rows.list()) {
      String id = siteId.apply(row);
      if (id != null && !known.contains(id)) {
        String message =
            "%s: no row of sites that could be used has the id %s. The row was set aside. Correct the id, or add the site (or correct its row, if that was set aside)."
                .formatted(lack, Words.quote(id));
        rows.setAside(row, Remark.cell(CheckRule.UNKNOWN_SITE, "site_id", id, message));
      }
    }
  }

  private static void checkPonds(OpenCluster cluster) {
    Map<String, String> pondOfSite = new HashMap<>();
    cluster.sites.list().forEach(site -> pondOfSite.put(site.siteId(), pondOf(site)));
    Set<String> ponds = pondOfSite.values().stream().collect(Collectors.toSet());
    for (Area row : cluster.areas.list()) {
      if (row.pondId() == null) {
        continue;
      }
      if (row.siteId() == null && !ponds.contains(row.pondId())) {
        setAside(cluster, row, CheckRule.UNKNOWN_POND, unknownPond(row));
      } else if (row.siteId() != null && !pondOfSite.get(row.siteId()).equals(row.pondId())) {
        setAside(
            cluster,
            row,
            CheckRule.AREA_POND_DIFFERS,
            otherPond(row, pondOfSite.get(row.siteId())));
      }
    }
  }

  static String pondOf(Site site) {
    return site.pondId() == null ? site.siteId() : site.pondId();
  }

  private static void setAside(OpenCluster cluster, Area row, CheckRule rule, String message) {
    cluster.areas.setAside(row, Remark.cell(rule, "pond_id", row.pondId(), message));
  }

  private static String unknownPond(Area row) {
    return "No row of sites that could be used names the pond %s. The row was set aside. Correct the id, or write it as pond_id in the row of the site that drains the pond."
        .formatted(Words.quote(row.pondId()));
  }

  private static String otherPond(Area row, String pond) {
    return "Site %s drains the pond %s, not %s, so it is not clear which pond was measured. The row was set aside. Correct one of the two ids, or leave one empty."
        .formatted(Words.quote(row.siteId()), Words.quote(pond), Words.quote(row.pondId()));
  }
}
