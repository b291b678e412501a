package pondtally.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The devices put in within the last two weeks while a program's installs pass by in the order of
 * their days, found by place, site and id. What many devices share within two weeks tells nothing
 * and is not looked under, so that a thousand sites with one placeholder for their coordinates do
 * not make a million pairs.
 */
final class RecentInstalls {

  /** So many at one place within two weeks have a placeholder in common, and no place. */
  static final int CROWD = 20;

  private static final double EDGE = 2 * LikelyDuplicates.METERS_APART;

  private final ArrayDeque<Entry> window = new ArrayDeque<>();
  private final Map<Object, ArrayDeque<Entry>> byKey = new HashMap<>();

  /**
   * A device with what it is looked up by.
   *
   * @param point null: its site has no coordinates
   */
  record Entry(
      InstallPlace device, String plainId, String plainSite, EarthPoint point, List<Object> keys) {

    static Entry of(InstallPlace device) {
      String id = NearestIds.plain(device.deviceId());
      String site = NearestIds.plain(device.siteId());
      EarthPoint point =
          device.isLocated() ? EarthPoint.of(device.latitude(), device.longitude()) : null;
      List<Object> keys = new ArrayList<>(List.of("device " + id, "site " + site));
      if (point != null) {
        keys.add(point.cube(EDGE));
      }
      return new Entry(device, id, site, point, List.copyOf(keys));
    }

    /** NaN where one of them has no coordinates. */
    double metersTo(Entry other) {
      return point == null || other.point == null ? Double.NaN : point.metersTo(other.point);
    }
  }

  /** Candidates, each once: those of the same site or a like id, and those near by. */
  List<Entry> near(Entry entry) {
    forgetBefore(entry.device().installedOn() - LikelyDuplicates.DAYS_APART);
    List<Entry> found = new ArrayList<>();
    entry.keys().forEach(key -> addUnder(key, found));
    if (entry.point() != null) {
      entry
          .point()
          .cubesWithin(LikelyDuplicates.METERS_APART, EDGE)
          .forEach(cube -> addUnder(cube, found));
    }
    return found;
  }

  private void addUnder(Object key, List<Entry> found) {
    ArrayDeque<Entry> entries = byKey.get(key);
    if (entries != null && entries.size() < CROWD) {
      entries.stream().filter(entry -> !isIn(found, entry)).forEach(found::add);
    }
  }

  private static boolean isIn(List<Entry> found, Entry entry) {
    return found.stream().anyMatch(other -> other == entry);
  }

  void add(Entry entry) {
    window.add(entry);
    for (Object key : entry.keys()) {
      ArrayDeque<Entry> entries = byKey.computeIfAbsent(key, unused -> new ArrayDeque<>(2));
      if (entries.size() == CROWD) {
        entries.removeFirst();
      }
      entries.addLast(entry);
    }
  }

  private void forgetBefore(int day) {
    while (!window.isEmpty() && window.peekFirst().device().installedOn() < day) {
      Entry gone = window.removeFirst();
      gone.keys()
          .forEach(key -> byKey.computeIfPresent(key, (k, entries) -> without(entries, gone)));
    }
  }

  /** The oldest of a key is its first, or was pushed out before. */
  private static ArrayDeque<Entry> without(ArrayDeque<Entry> entries, Entry gone) {
    if (entries.peekFirst() == gone) {
      entries.removeFirst();
    }
    return entries.isEmpty() ? null : entries;
  }
}
