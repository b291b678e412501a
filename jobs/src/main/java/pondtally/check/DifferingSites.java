package pondtally.check;

import java.util.List;
import pondtally.record.Site;

/** Of rows that describe one site differently, the first in file order counts. */
final class DifferingSites {

  private DifferingSites() {}

  static void apply(OpenCluster cluster) {
    for (List<Site> rows : cluster.sites.by(Site::siteId).values()) {
      Site first = rows.get(0);
      for (Site row : rows.subList(1, rows.size())) {
        cluster.sites.setAside(
            row, Remark.cell(CheckRule.SITE_DIFFERS, "site_id", row.siteId(), message(first, row)));
      }
    }
  }

  private static String message(Site first, Site row) {
    return """
        Site %s is described differently in another row (%s): %s. That row comes \
        first and is used; this one was set aside. Make the two agree, or delete \
        one; if they are two places, give each an id of its own."""
        .formatted(
            Words.quote(row.siteId()), Words.row(first.origin()), Differences.between(first, row));
  }
}
