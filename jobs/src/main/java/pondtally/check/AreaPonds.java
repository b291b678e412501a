package pondtally.check;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import pondtally.record.Area;

/** A measured area must belong to one pond: that of its site, or the one it names. */
final class AreaPonds {

  private static final String NO_PLACE =
      """
          Neither a site nor a pond is named, so it is not known what was \
          measured. The row was set aside. Add site_id or pond_id.""";

  private AreaPonds() {}

  static void apply(OpenCluster cluster) {
    Map<String, String> pondOfSite = cluster.pondOfSite();
    Set<String> ponds = new HashSet<>(pondOfSite.values());
    for (Area row : cluster.areas.list()) {
      if (row.siteId() != null) {
        checkSite(cluster, row, pondOfSite.get(row.siteId()));
      } else if (row.pondId() == null) {
        cluster.areas.setAside(row, Remark.row(CheckRule.AREA_WITHOUT_PLACE, NO_PLACE));
      } else if (!ponds.contains(row.pondId())) {
        setAside(cluster, row, CheckRule.UNKNOWN_POND, unknownPond(row));
      }
    }
  }

  private static void checkSite(OpenCluster cluster, Area row, String pond) {
    if (row.pondId() != null && !row.pondId().equals(pond)) {
      setAside(cluster, row, CheckRule.AREA_POND_DIFFERS, otherPond(row, pond));
    }
  }

  private static void setAside(OpenCluster cluster, Area row, CheckRule rule, String message) {
    cluster.areas.setAside(row, Remark.cell(rule, "pond_id", row.pondId(), message));
  }

  private static String unknownPond(Area row) {
    return """
        No row of sites that could be used names the pond %s. The row was set \
        aside. Correct the id, or write it as pond_id in the row of the site \
        that drains the pond."""
        .formatted(Words.quote(row.pondId()));
  }

  private static String otherPond(Area row, String pond) {
    return """
        Site %s drains the pond %s, not %s, so it is not clear which pond was \
        measured. The row was set aside. Correct one of the two ids, or leave \
        one empty."""
        .formatted(Words.quote(row.siteId()), Words.quote(pond), Words.quote(row.pondId()));
  }
}
