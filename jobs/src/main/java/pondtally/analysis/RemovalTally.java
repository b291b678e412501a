package pondtally.analysis;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.history.DeviceHistory;
import pondtally.history.SiteHistory;
import pondtally.record.Evidence;
import pondtally.record.Removal;
import pondtally.stats.ExactSum;

/**
 * Removals avoided, by group and calendar year: for each site and year, removals a year before the
 * first device times the verified functional share of the year, less the removals that still
 * happened times the share of the year after entry. What partners claim stands beside it by
 * evidence and is never added.
 */
public final class RemovalTally implements Serializable {

  private static final long serialVersionUID = 1;

  /** Evidence label of claims that name none. */
  public static final String NO_EVIDENCE = "none given";

  private final AnalysisSettings settings;
  private final Map<GroupKey, ByYear<Sums>> sums = new HashMap<>();

  public RemovalTally(AnalysisSettings settings) {
    this.settings = settings;
  }

  private static final class Sums implements Serializable {
    private static final long serialVersionUID = 1;
    private long sites;
    private long leftOut;
    private final ExactSum avoided = new ExactSum();
    private final ExactSum reported = new ExactSum();
    private final SortedMap<String, Claims> claims = new TreeMap<>();

    private void merge(Sums other) {
      sites += other.sites;
      leftOut += other.leftOut;
      avoided.merge(other.avoided);
      reported.merge(other.reported);
      other.claims.forEach((evidence, more) -> claim(evidence).merge(more));
    }

    private Claims claim(String evidence) {
      return claims.computeIfAbsent(evidence, e -> new Claims());
    }
  }

  private static final class Claims implements Serializable {
    private static final long serialVersionUID = 1;
    private long sites;
    private final ExactSum avoided = new ExactSum();

    private void merge(Claims other) {
      sites += other.sites;
      avoided.merge(other.avoided);
    }
  }

  /** Adds the site-years of a cluster. */
  public void add(ClusterView cluster) {
    Map<String, Map<Integer, Removal>> reports = reports(cluster);
    for (ClusterView.Subset subset : cluster.subsets()) {
      for (SiteHistory site : cluster.history().sites()) {
        List<DeviceHistory> here = ClusterView.at(subset.devices(), List.of(site.site().siteId()));
        if (!here.isEmpty()) {
          addSite(subset.keys(), site, here, reports.getOrDefault(site.site().siteId(), Map.of()));
        }
      }
    }
  }

  /**
   * What was reported for each site and year; several rows of one site-year are parts of it and are
   * added up.
   */
  static Map<String, Map<Integer, Removal>> reports(ClusterView cluster) {
    Map<String, Map<Integer, Removal>> reports = new HashMap<>();
    for (Removal removal : cluster.history().records().removals()) {
      reports
          .computeIfAbsent(removal.siteId(), s -> new HashMap<>())
          .merge(removal.year(), removal, RemovalTally::together);
    }
    return reports;
  }

  private static Removal together(Removal a, Removal b) {
    return new Removal(
        a.origin(),
        a.partner(),
        a.siteId(),
        a.year(),
        sum(a.removals(), b.removals()),
        sum(a.avoided(), b.avoided()),
        weaker(a.evidence(), b.evidence()));
  }

  private static Double sum(Double a, Double b) {
    return a == null ? b : b == null ? a : (Double) (a + b);
  }

  /** A sum rests on its weakest part. */
  private static Evidence weaker(Evidence a, Evidence b) {
    return a == null || b == null ? null : a.compareTo(b) > 0 ? a : b;
  }

  private void addSite(
      List<GroupKey> keys,
      SiteHistory site,
      List<DeviceHistory> devices,
      Map<Integer, Removal> reports) {
    int entry = ClusterView.firstEntry(devices);
    int end = settings.endHalfDay();
    int firstYear = LocalDate.ofEpochDay(Math.floorDiv(entry, 2)).getYear();
    int lastYear = LocalDate.ofEpochDay(Math.floorDiv(end - 1, 2)).getYear();
    List<ByYear<Sums>> groups = new ArrayList<>(keys.size());
    for (GroupKey key : keys) {
      groups.add(sums(key));
    }
    for (int year = firstYear; year <= lastYear; year++) {
      Removal report = reports.get(year);
      Double avoided = avoided(site, devices, entry, year, report, settings);
      for (ByYear<Sums> group : groups) {
        addYear(group.of(year, Sums::new), avoided, report);
      }
    }
  }

  private static void addYear(Sums s, Double avoided, Removal report) {
    if (avoided == null) {
      s.leftOut++;
    } else {
      s.sites++;
      s.avoided.add(avoided);
      s.reported.add(report.removals());
    }
    if (report != null && report.avoided() != null) {
      Claims claims = s.claim(evidence(report));
      claims.sites++;
      claims.avoided.add(report.avoided());
    }
  }

  /** The grade of evidence of a claim as tables name it. */
  static String evidence(Removal report) {
    return report.evidence() == null ? NO_EVIDENCE : report.evidence().code();
  }

  /**
   * Removals avoided at one site in one calendar year; null where removals before or in that year
   * are not known, and where the year ended before the devices came or begins after the period.
   */
  static Double avoided(
      SiteHistory site,
      List<DeviceHistory> devices,
      int entry,
      int year,
      Removal report,
      AnalysisSettings settings) {
    Double before = site.site().removalsPerYearBefore();
    if (before == null || report == null || report.removals() == null) {
      return null;
    }
    int from = 2 * (int) LocalDate.of(year, 1, 1).toEpochDay();
    int to = 2 * (int) LocalDate.of(year + 1, 1, 1).toEpochDay();
    int cut = Math.min(to, settings.endHalfDay());
    if (to <= entry || from >= cut) {
      return null;
    }
    double length = to - from;
    double functional = ClusterView.functional(devices).within(from, cut).halfDays();
    double afterEntry = to - Math.max(from, entry);
    return before * functional / length - report.removals() * afterEntry / length;
  }

  private ByYear<Sums> sums(GroupKey key) {
    return sums.computeIfAbsent(key, k -> new ByYear<>());
  }

  /** Adds what another tally summed. */
  public void merge(RemovalTally other) {
    other.sums.forEach(
        (key, byYear) -> {
          ByYear<Sums> own = sums(key);
          byYear.forEach((year, more) -> own.of(year, Sums::new).merge(more));
        });
  }

  /** Sum of removals avoided in a group over all years; null where none could be computed. */
  public Double avoidedInAll(GroupKey key) {
    Sums all = new Sums();
    sums.getOrDefault(key, new ByYear<>()).forEach((year, s) -> all.merge(s));
    return all.sites > 0 ? all.avoided.result() : null;
  }

  /** One row of the result table {@code removals_avoided}. */
  public record Row(
      String grouping,
      String group,
      Integer year,
      String evidence,
      Long sites,
      Long sitesLeftOut,
      Double avoidedComputed,
      Double avoidedClaimed,
      Double removalsReported) {}

  /**
   * The rows of the result table: one computed row a year, and one for each grade of evidence that
   * was claimed on.
   */
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    new TreeMap<>(sums)
        .forEach((key, byYear) -> byYear.forEach((year, s) -> addRows(rows, key, year, s)));
    return rows;
  }

  private static void addRows(List<Row> rows, GroupKey key, int year, Sums s) {
    boolean known = s.sites > 0;
    rows.add(
        new Row(
            key.grouping().code(),
            key.group(),
            year,
            null,
            s.sites,
            s.leftOut,
            known ? s.avoided.result() : null,
            null,
            known ? s.reported.result() : null));
    s.claims.forEach(
        (evidence, claims) ->
            rows.add(
                new Row(
                    key.grouping().code(),
                    key.group(),
                    year,
                    evidence,
                    claims.sites,
                    null,
                    null,
                    claims.avoided.result(),
                    null)));
  }
}
