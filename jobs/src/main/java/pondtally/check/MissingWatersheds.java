package pondtally.check;

import pondtally.record.Site;

/** A site without a watershed is missing from every comparison of watersheds. */
final class MissingWatersheds {

  private MissingWatersheds() {}

  static void apply(OpenCluster cluster) {
    for (Site row : cluster.sites.list()) {
      if (row.watershed() == null) {
        String message =
            """
                Site %s has no watershed. It counts in the totals, but in no watershed's \
                figures. Add the hydrologic unit code."""
                .formatted(Words.quote(row.siteId()));
        cluster.sites.notice(
            row, Remark.cell(CheckRule.WATERSHED_MISSING, "watershed", "", message));
      }
    }
  }
}
