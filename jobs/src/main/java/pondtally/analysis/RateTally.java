package pondtally.analysis;

import java.io.Serializable;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.history.DeviceHistory;
import pondtally.history.Failure;
import pondtally.history.Life;
import pondtally.history.SiteHistory;
import pondtally.history.Stretch;
import pondtally.history.Stretches;
import pondtally.record.Cause;
import pondtally.stats.CountedLives;

/**
 * All failures, repeated ones too, and the time during which a failure could happen, by group and
 * fiscal year; and for each pipe type in each watershed the ages at which that time was spent.
 * Failures are dated by their midpoint.
 */
public final class RateTally implements Serializable {

  private static final long serialVersionUID = 1;

  private final FiscalYears years;
  private final Map<GroupKey, ByYear<Counts>> counts = new HashMap<>();
  private final Map<GroupKey, SortedMap<Cause, Long>> causes = new HashMap<>();
  private final Map<String, Map<String, CountedLives>> agesByWatershedAndPipe = new HashMap<>();

  public RateTally(FiscalYears years) {
    this.years = years;
  }

  /** Devices, failures and exposure of one group in one year. */
  public static final class Counts implements Serializable {
    private static final long serialVersionUID = 1;
    private long devices;
    private long failures;
    private long exposureHalfDays;

    public long devices() {
      return devices;
    }

    public long failures() {
      return failures;
    }

    /** Time while not failed, device-years of 365.25 days. */
    public double deviceYears() {
      return exposureHalfDays / (2 * Years.DAYS);
    }

    private void merge(Counts other) {
      devices += other.devices;
      failures += other.failures;
      exposureHalfDays += other.exposureHalfDays;
    }
  }

  /** Counts the devices of a cluster. */
  public void add(ClusterView cluster) {
    for (SiteHistory site : cluster.history().sites()) {
      for (DeviceHistory device : site.devices()) {
        addDevice(cluster, device);
      }
    }
  }

  private void addDevice(ClusterView cluster, DeviceHistory device) {
    Set<Integer> yearsSeen = new HashSet<>();
    for (Life life : device.lives()) {
      Stretches exposed = device.exposure(life);
      List<Failure> failures = device.failures(life);
      if (exposed.isEmpty() && failures.isEmpty()) {
        continue;
      }
      List<GroupKey> keys = cluster.groupsOf(device, life);
      ByYear<Counts> own = byYear(exposed, failures);
      // A device is one device in each year, in the groups of its first life there, so that devices
      // add up.
      own.forEach((year, counts) -> counts.devices = yearsSeen.add(year) ? 1 : 0);
      for (GroupKey key : keys) {
        merge(key, own);
        for (Failure failure : failures) {
          causes.computeIfAbsent(key, k -> new TreeMap<>()).merge(failure.cause(), 1L, Long::sum);
        }
      }
      addAges(keys, life, exposed, failures);
    }
  }

  /** Time and failures of one life, in all and by fiscal year. */
  ByYear<Counts> byYear(Stretches exposed, List<Failure> failures) {
    ByYear<Counts> byYear = new ByYear<>();
    Counts whole = byYear.of(Years.WHOLE, Counts::new);
    whole.exposureHalfDays = exposed.halfDays();
    whole.failures = failures.size();
    for (Stretch stretch : exposed.list()) {
      int from = stretch.from();
      while (from < stretch.to()) {
        int year = years.of(from / 2);
        int to = Math.min(stretch.to(), 2 * years.firstDay(year + 1));
        byYear.of(year, Counts::new).exposureHalfDays += (long) to - from;
        from = to;
      }
    }
    for (Failure failure : failures) {
      byYear.of(yearOf(failure), Counts::new).failures++;
    }
    return byYear;
  }

  /** The fiscal year that a failure counts in. */
  int yearOf(Failure failure) {
    return years.of(failure.midpoint() / 2);
  }

  private void addAges(List<GroupKey> keys, Life life, Stretches exposed, List<Failure> failures) {
    CountedLives ages =
        agesByWatershedAndPipe
            .computeIfAbsent(group(keys, Grouping.WATERSHED), k -> new HashMap<>())
            .computeIfAbsent(group(keys, Grouping.PIPE), k -> CountedLives.ofOneKind());
    for (Stretch stretch : exposed.list()) {
      boolean failed = false;
      for (Failure failure : failures) {
        failed |= failure.midpoint() == stretch.to();
      }
      ages.add(
          (stretch.from() - life.openedOn()) / 2.0,
          (stretch.to() - life.openedOn()) / 2.0,
          failed ? 1 : 0);
    }
  }

  private static String group(List<GroupKey> keys, Grouping grouping) {
    for (GroupKey key : keys) {
      if (key.grouping() == grouping) {
        return key.group();
      }
    }
    throw new IllegalStateException("no group by " + grouping);
  }

  private void merge(GroupKey key, ByYear<Counts> more) {
    ByYear<Counts> own = counts.computeIfAbsent(key, k -> new ByYear<>());
    more.forEach((year, counted) -> own.of(year, Counts::new).merge(counted));
  }

  /** Adds what another tally counted. */
  public void merge(RateTally other) {
    other.counts.forEach(this::merge);
    other.causes.forEach(
        (key, byCause) ->
            byCause.forEach(
                (cause, n) ->
                    causes.computeIfAbsent(key, k -> new TreeMap<>()).merge(cause, n, Long::sum)));
    other.agesByWatershedAndPipe.forEach(
        (watershed, byPipe) ->
            byPipe.forEach(
                (pipe, ages) ->
                    agesByWatershedAndPipe
                        .computeIfAbsent(watershed, k -> new HashMap<>())
                        .computeIfAbsent(pipe, k -> CountedLives.ofOneKind())
                        .merge(ages)));
  }

  /** Counts by group and year. */
  SortedMap<GroupKey, ByYear<Counts>> counts() {
    return new TreeMap<>(counts);
  }

  /** Counts of a group that has any, over the whole record. */
  Counts whole(GroupKey key) {
    return counts.get(key).get(Years.WHOLE);
  }

  /** Failures by group and cause. */
  public SortedMap<GroupKey, SortedMap<Cause, Long>> causes() {
    return new TreeMap<>(causes);
  }

  /**
   * Stretches at risk by age (days), by watershed and pipe type; outcome 1 where the stretch ended
   * by a failure.
   */
  public SortedMap<String, SortedMap<String, CountedLives>> agesByWatershedAndPipe() {
    return sorted(agesByWatershedAndPipe);
  }

  private static <A, B, V> SortedMap<A, SortedMap<B, V>> sorted(Map<A, Map<B, V>> map) {
    SortedMap<A, SortedMap<B, V>> sorted = new TreeMap<>();
    map.forEach((key, inner) -> sorted.put(key, new TreeMap<>(inner)));
    return sorted;
  }
}
