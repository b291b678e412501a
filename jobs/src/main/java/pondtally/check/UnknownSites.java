package pondtally.check;

import java.util.Set;
import java.util.function.Function;
import pondtally.record.Area;
import pondtally.record.Install;
import pondtally.record.Property;
import pondtally.record.Removal;
import pondtally.record.Sourced;

/**
 * Rows about a site that no row of sites describes. Requests are left alone: a site that was asked
 * for need not have become one.
 */
final class UnknownSites {

  private UnknownSites() {}

  static void apply(OpenCluster cluster) {
    Set<String> known = cluster.siteIds();
    setAside(cluster.installs, Install::siteId, known, "The device has no site");
    setAside(cluster.removals, Removal::siteId, known, "The removals have no site");
    setAside(cluster.properties, Property::siteId, known, "The property has no site");
    setAside(cluster.areas, Area::siteId, known, "The area has no site");
  }

  private static <T extends Sourced> void setAside(
      Rows<T> rows, Function<T, String> siteId, Set<String> known, String lack) {
    for (T row : rows.list()) {
      String id = siteId.apply(row);
      if (id != null && !known.contains(id)) {
        String message =
            """
                %s: no sites row that counts has the id %s. The row was set \
                aside. Correct the id, or add the site (or correct its row, if that was \
                set aside)."""
                .formatted(lack, Words.quote(id));
        rows.setAside(row, Remark.cell(CheckRule.UNKNOWN_SITE, "site_id", id, message));
      }
    }
  }
}
