package pondtally.analysis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Devices in service, counted by pipe type, cell and watershed. Ages and days are rounded so far
 * that the counts stay few: to days in most programs, to at most 91 in very large ones.
 */
final class SeasonDevices {

  private static final int[] WIDTHS = {1, 7, 14, 30, 91};
  private static final int MOST_COUNTS = 3_000;

  private final SortedMap<String, SortedMap<SeasonCell, SortedMap<String, Long>>> byPipe =
      new TreeMap<>();
  private final SortedSet<String> watersheds = new TreeSet<>();

  private SeasonDevices() {}

  /** Where a device is counted. */
  private record Place(String pipe, String watershed, SeasonCell cell) {}

  static SeasonDevices of(List<WorklistDevice> devices, AnalysisSettings settings) {
    Map<Place, Long> counts = Map.of();
    for (int i = 0; i < WIDTHS.length; i++) {
      boolean isLast = i == WIDTHS.length - 1;
      counts = counts(devices, settings, WIDTHS[i], isLast ? Integer.MAX_VALUE : MOST_COUNTS);
      if (isLast || counts.size() <= MOST_COUNTS) {
        break;
      }
    }
    SeasonDevices counted = new SeasonDevices();
    counts.forEach(counted::add);
    return counted;
  }

  /** Counts, or those of the first devices where there are more than {@code most}. */
  private static Map<Place, Long> counts(
      List<WorklistDevice> devices, AnalysisSettings settings, int width, int most) {
    Map<Place, Long> counts = new HashMap<>();
    for (WorklistDevice device : devices) {
      SeasonCell cell = SeasonCell.of(device, settings, width);
      counts.merge(new Place(device.pipe(), device.watershedGroup(), cell), 1L, Long::sum);
      if (counts.size() > most) {
        break;
      }
    }
    return counts;
  }

  private void add(Place place, long count) {
    watersheds.add(place.watershed());
    byPipe
        .computeIfAbsent(place.pipe(), p -> new TreeMap<>())
        .computeIfAbsent(place.cell(), c -> new TreeMap<>())
        .put(place.watershed(), count);
  }

  /** Pipe types of any device. */
  SortedSet<String> pipes() {
    return new TreeSet<>(byPipe.keySet());
  }

  /** Watersheds of any device. */
  SortedSet<String> watersheds() {
    return watersheds;
  }

  /** Devices of a pipe type: by cell, how many stand in each watershed. */
  SortedMap<SeasonCell, SortedMap<String, Long>> cells(String pipe) {
    return byPipe.get(pipe);
  }
}
