package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import pondtally.history.SiteHistory;

/**
 * The result table {@code lapses}: water-level agreements and permits of sites whose devices are
 * still in service, with the day until which each holds.
 */
public final class Lapses {

  private static final int SOON_DAYS = 90;
  private static final int YEAR_DAYS = 365;

  private Lapses() {}

  /**
   * One row of the result table; dates are days since 1970-01-01.
   *
   * @param what {@code agreement} or {@code permit}
   * @param standing {@code lapsed}, {@code within-90-days}, {@code within-a-year} or {@code later}
   */
  public record Row(
      Integer until,
      String siteId,
      String what,
      String standing,
      Integer daysLeft,
      String watershed,
      String partner,
      String county,
      String roadId,
      Long devices)
      implements Serializable {}

  /** The rows of a cluster's sites. */
  public static List<Row> of(ClusterView cluster, AnalysisSettings settings) {
    List<Row> rows = new ArrayList<>();
    for (SiteHistory site : cluster.history().sites()) {
      long inService = site.devices().stream().filter(d -> d.endedOn() == null).count();
      if (inService > 0) {
        add(rows, cluster, site, "agreement", site.site().agreedLevelUntil(), inService, settings);
        add(rows, cluster, site, "permit", site.site().permitUntil(), inService, settings);
      }
    }
    return rows;
  }

  private static void add(
      List<Row> rows,
      ClusterView cluster,
      SiteHistory site,
      String what,
      Integer until,
      long devices,
      AnalysisSettings settings) {
    if (until == null) {
      return;
    }
    int left = until - settings.rules().asOf();
    rows.add(
        new Row(
            until,
            site.site().siteId(),
            what,
            standing(left),
            left,
            cluster.groups().watershed(site.site()),
            site.site().partner(),
            site.site().county(),
            site.site().roadId(),
            devices));
  }

  /** An agreement holds through its last day. */
  private static String standing(int daysLeft) {
    if (daysLeft < 0) {
      return "lapsed";
    }
    if (daysLeft <= SOON_DAYS) {
      return "within-90-days";
    }
    return daysLeft <= YEAR_DAYS ? "within-a-year" : "later";
  }
}
