package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import pondtally.history.DeviceHistory;
import pondtally.history.FailureDating;
import pondtally.history.Life;
import pondtally.history.SiteHistory;
import pondtally.record.Cause;
import pondtally.stats.CountedLives;
import pondtally.stats.IntervalCounts;
import pondtally.stats.RiskTable;

/**
 * Service lives counted by age at entry and exit, for each group: all that curves, incidence and
 * tests need, however many devices there are. Ages are days.
 */
public final class LifeTally implements Serializable {

  private static final long serialVersionUID = 1;

  /** Outcome of a life that was still not failed when its follow-up ended. */
  public static final int CENSORED = 0;

  /** Outcome of a life that ended by retirement. Outcomes in between are causes of failure. */
  public static final int RETIRED = Cause.values().length + 1;

  private final FailureDating dating;
  private final Map<GroupKey, CountedLives> lives = new HashMap<>();
  private final Map<GroupKey, CountedLives> pipesFromNew = new HashMap<>();
  private final Map<GroupKey, IntervalCounts> intervals = new HashMap<>();
  private final Map<GroupKey, IntervalCounts> days = new HashMap<>();
  private final Map<GroupKey, Long> devices = new HashMap<>();

  public LifeTally(FailureDating dating) {
    this.dating = dating;
  }

  /** Counts the lives of a cluster. */
  public void add(ClusterView cluster) {
    for (SiteHistory site : cluster.history().sites()) {
      for (DeviceHistory device : site.devices()) {
        add(cluster, device);
      }
    }
  }

  private void add(ClusterView cluster, DeviceHistory device) {
    boolean counted = false;
    for (Life life : device.lives()) {
      double entry = life.entryAge() / 2.0;
      double exit = life.exitAge(dating) / 2.0;
      if (!life.followed() || exit <= entry) {
        continue;
      }
      int outcome = outcome(life);
      FollowUp followUp = FollowUp.of(life);
      for (GroupKey key : cluster.groupsOf(device, life)) {
        lives.computeIfAbsent(key, k -> CountedLives.ofKinds(RETIRED)).add(entry, exit, outcome);
        addIntervals(key, life, followUp);
        if (entry == 0 && key.grouping() == GroupKey.Grouping.PIPE) {
          pipesFromNew
              .computeIfAbsent(key, k -> CountedLives.ofKinds(RETIRED))
              .add(0, exit, outcome);
        }
        if (!counted) {
          // In the groups of its first followed life alone, so that devices add up.
          devices.merge(key, 1L, Long::sum);
        }
      }
      counted = true;
    }
  }

  private void addIntervals(GroupKey key, Life life, FollowUp followUp) {
    if (GroupKey.MAIN.contains(key.grouping())) {
      IntervalCounts counts = intervals.computeIfAbsent(key, k -> IntervalCounts.empty());
      counts.add(followUp.entryDays(), followUp.leftDays(), followUp.rightDays(), 1);
      if (dating != FailureDating.INTERVAL) {
        double exit = life.exitAge(dating) / 2.0;
        days.computeIfAbsent(key, k -> IntervalCounts.empty())
            .add(followUp.entryDays(), exit, life.failed() ? exit : Double.POSITIVE_INFINITY, 1);
      }
    }
  }

  private static int outcome(Life life) {
    if (life.failed()) {
      return 1 + life.firstFailure().cause().ordinal();
    }
    return life.retired() != null ? RETIRED : CENSORED;
  }

  /** Adds what another tally counted. */
  public void merge(LifeTally other) {
    merge(lives, other.lives);
    merge(pipesFromNew, other.pipesFromNew);
    mergeIntervals(intervals, other.intervals);
    mergeIntervals(days, other.days);
    other.devices.forEach((key, count) -> devices.merge(key, count, Long::sum));
  }

  private static void merge(Map<GroupKey, CountedLives> into, Map<GroupKey, CountedLives> more) {
    more.forEach(
        (key, counts) ->
            into.computeIfAbsent(key, k -> CountedLives.ofKinds(RETIRED)).merge(counts));
  }

  private static void mergeIntervals(
      Map<GroupKey, IntervalCounts> into, Map<GroupKey, IntervalCounts> more) {
    more.forEach(
        (key, counts) -> into.computeIfAbsent(key, k -> IntervalCounts.empty()).merge(counts));
  }

  /**
   * Lives of the groups that have fits, with both ends of the interval in which each failed, ages
   * in days.
   */
  public SortedMap<GroupKey, IntervalCounts> intervals() {
    return new TreeMap<>(intervals);
  }

  /** The same lives with failures dated as the settings say. */
  public SortedMap<GroupKey, IntervalCounts> dated() {
    return new TreeMap<>(dating == FailureDating.INTERVAL ? intervals : days);
  }

  /** How failures are dated. */
  FailureDating dating() {
    return dating;
  }

  /** Groups of one grouping, in order. */
  public List<GroupKey> groups(GroupKey.Grouping grouping) {
    List<GroupKey> keys = new ArrayList<>();
    for (GroupKey key : new TreeSet<>(lives.keySet())) {
      if (key.grouping() == grouping) {
        keys.add(key);
      }
    }
    return keys;
  }

  /** Counted lives of each group that has any. */
  public Map<GroupKey, CountedLives> lives() {
    return new TreeMap<>(lives);
  }

  /** Whether a group has any lives. */
  boolean has(GroupKey key) {
    return lives.containsKey(key);
  }

  /**
   * At risk, first failures (of any cause) and censored or retired by age in days; the group must
   * have lives.
   */
  public RiskTable failures(GroupKey key) {
    return lives.get(key).eventsOf(IntStream.range(1, RETIRED).toArray());
  }

  /** Lives of a pipe type that were followed from their first day; none may be. */
  CountedLives fromNew(GroupKey pipe) {
    return pipesFromNew.getOrDefault(pipe, CountedLives.ofKinds(RETIRED));
  }

  /** Devices with follow-up in a group. */
  public long devices(GroupKey key) {
    return devices.getOrDefault(key, 0L);
  }
}
