package pondtally.analysis;

import java.io.Serializable;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.history.SiteHistory;
import pondtally.record.Request;
import pondtally.record.RequestOutcome;
import pondtally.record.Site;
import pondtally.stats.Limits;
import pondtally.stats.Wilson;

/**
 * The result table {@code requests}: what became of requests for a device, by watershed, setting
 * and fiscal year of asking. What was turned down is the denominator that success among installed
 * devices does not show.
 */
public final class RequestTally implements Serializable {

  private static final long serialVersionUID = 1;
  private static final double LEVEL = 0.95;

  private final AnalysisSettings settings;
  private final SortedMap<GroupKey, SortedMap<String, Counts>> counts = new TreeMap<>();

  public RequestTally(AnalysisSettings settings) {
    this.settings = settings;
  }

  private static final class Counts implements Serializable {
    private static final long serialVersionUID = 1;
    private long asked;
    private final long[] outcomes = new long[RequestOutcome.values().length];
    private long working;

    private void merge(Counts other) {
      asked += other.asked;
      working += other.working;
      for (int i = 0; i < outcomes.length; i++) {
        outcomes[i] += other.outcomes[i];
      }
    }
  }

  /** Counts the requests of a cluster, those up to the data cut. */
  public void add(ClusterView cluster) {
    for (Request request : cluster.history().records().requests()) {
      if (request.askedOn() <= settings.rules().asOf()) {
        add(cluster, request);
      }
    }
  }

  private void add(ClusterView cluster, Request request) {
    SiteHistory site = cluster.site(request.siteId());
    String year = Integer.toString(settings.fiscalYears().of(request.askedOn()));
    boolean works =
        request.outcome() == RequestOutcome.INSTALLED
            && site != null
            && Standing.of(
                    site.devices(), settings.endHalfDay() - 1, settings.rules().revisitEveryDays())
                != Standing.NOT_FUNCTIONAL;
    for (GroupKey key : keys(cluster, site)) {
      for (String label : List.of(Years.ALL, year)) {
        Counts own = counts(key, label);
        own.asked++;
        own.working += works ? 1 : 0;
        if (request.outcome() != null) {
          own.outcomes[request.outcome().ordinal()]++;
        }
      }
    }
  }

  private static List<GroupKey> keys(ClusterView cluster, SiteHistory site) {
    Site record = site == null ? null : site.site();
    return List.of(
        GroupKey.ALL,
        new GroupKey(
            Grouping.WATERSHED,
            record == null ? GroupKey.UNKNOWN : cluster.groups().watershed(record)),
        new GroupKey(Grouping.SETTING, record == null ? GroupKey.UNKNOWN : Groups.setting(record)));
  }

  private Counts counts(GroupKey key, String year) {
    return counts
        .computeIfAbsent(key, k -> new TreeMap<>())
        .computeIfAbsent(year, y -> new Counts());
  }

  /** Adds what another tally counted. */
  public void merge(RequestTally other) {
    other.counts.forEach(
        (key, byYear) -> byYear.forEach((year, more) -> counts(key, year).merge(more)));
  }

  /** One row of the result table. */
  public record Row(
      String grouping,
      String group,
      String year,
      Long asked,
      Long installed,
      Long unsuitable,
      Long waiting,
      Long declined,
      Long notRecorded,
      Double installedShare,
      Double lower,
      Double upper,
      Long installedWorking) {}

  /** The rows of the result table. */
  public List<Row> rows() {
    return counts.entrySet().stream()
        .flatMap(
            group ->
                group.getValue().entrySet().stream()
                    .map(year -> row(group.getKey(), year.getKey(), year.getValue())))
        .toList();
  }

  /** The share is of requests that were decided: those that wait are not yet among them. */
  private static Row row(GroupKey key, String year, Counts c) {
    long installed = c.outcomes[RequestOutcome.INSTALLED.ordinal()];
    long unsuitable = c.outcomes[RequestOutcome.UNSUITABLE.ordinal()];
    long waiting = c.outcomes[RequestOutcome.WAITING.ordinal()];
    long declined = c.outcomes[RequestOutcome.DECLINED.ordinal()];
    long decided = installed + unsuitable + declined;
    Limits limits = decided == 0 ? Limits.none() : Wilson.limits(installed, decided, LEVEL);
    return new Row(
        key.grouping().code(),
        key.group(),
        year,
        c.asked,
        installed,
        unsuitable,
        waiting,
        declined,
        c.asked - decided - waiting,
        decided == 0 ? null : (Double) ((double) installed / decided),
        Cells.of(limits.lower()),
        Cells.of(limits.upper()),
        c.working);
  }
}
