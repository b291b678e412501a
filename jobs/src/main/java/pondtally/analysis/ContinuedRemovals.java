package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pondtally.history.CalendarYear;
import pondtally.history.HalfDays;
import pondtally.history.SiteHistory;
import pondtally.record.Removal;

/**
 * The result table {@code continued_removals}: sites with devices at which animals were still
 * removed. Where trapping goes on, a device that works and a pond without beaver cannot be told
 * apart, so its success may not be the device's.
 */
public final class ContinuedRemovals {

  private ContinuedRemovals() {}

  /**
   * One row of the result table.
   *
   * @param workingShare share of the calendar year, up to the period's end, in which a device at
   *     the site was verified working
   */
  public record Row(
      String siteId,
      Integer year,
      String watershed,
      String setting,
      Double removalsPerYearBefore,
      Double removals,
      Double workingShare,
      String evidence) {}

  /** The rows of a cluster's sites: years after the first device came, up to the period's end. */
  public static List<Row> of(ClusterView cluster, AnalysisSettings settings) {
    List<Row> rows = new ArrayList<>();
    Map<String, Map<Integer, Removal>> reports = RemovalTally.reports(cluster);
    for (SiteHistory site : cluster.history().sites()) {
      if (site.firstEntryOn() != null) {
        new TreeMap<>(reports.getOrDefault(site.site().siteId(), Map.of()))
            .forEach((year, report) -> add(rows, cluster, site, report, settings));
      }
    }
    return rows;
  }

  private static void add(
      List<Row> rows,
      ClusterView cluster,
      SiteHistory site,
      Removal report,
      AnalysisSettings settings) {
    CalendarYear year = new CalendarYear(report.year());
    boolean after = year.from() >= site.firstEntryOn() && year.from() < settings.endHalfDay();
    if (!after || report.removals() == null || report.removals() <= 0) {
      return;
    }
    int to = Math.min(year.to(), settings.endHalfDay());
    double working = site.functional().within(year.from(), to).halfDays();
    rows.add(
        new Row(
            site.site().siteId(),
            report.year(),
            cluster.groups().watershed(site.site()),
            Groups.setting(site.site()),
            site.site().removalsPerYearBefore(),
            report.removals(),
            working / (HalfDays.DAY * (double) year.days()),
            RemovalTally.evidence(report)));
  }
}
