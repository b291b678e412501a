package pondtally.history;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import pondtally.record.ClusterRecords;
import pondtally.record.Install;
import pondtally.record.Visit;

/**
 * Turns the checked rows of a cluster into the histories of its devices, sites, ponds and
 * properties.
 */
public final class Histories {

  private Histories() {}

  /** The histories of one cluster. The order of the rows does not matter. */
  public static ClusterHistory of(ClusterRecords records, HistoryRules rules) {
    Map<String, List<Visit>> visits = by(records.visits(), Visit::deviceId, new HashMap<>());
    List<DeviceHistory> devices = devices(records.installs(), visits, rules);
    List<SiteHistory> sites = SiteRule.histories(records.sites(), devices);
    return new ClusterHistory(
        records,
        sites,
        PondRule.histories(sites, visits, records.areas(), rules),
        PropertyRule.histories(records.properties(), sites));
  }

  private static List<DeviceHistory> devices(
      List<Install> installs, Map<String, List<Visit>> visits, HistoryRules rules) {
    SortedMap<String, List<Install>> byDevice = new TreeMap<>();
    by(installs, Install::deviceId, byDevice);
    List<DeviceHistory> devices = new ArrayList<>(byDevice.size());
    byDevice.forEach(
        (id, rows) ->
            devices.add(DeviceRule.history(rows, visits.getOrDefault(id, List.of()), rules)));
    return devices;
  }

  /** Adds each row to the list under its key. */
  static <K, T> Map<K, List<T>> by(List<T> rows, Function<T, K> key, Map<K, List<T>> into) {
    for (T row : rows) {
      into.computeIfAbsent(key.apply(row), k -> new ArrayList<>()).add(row);
    }
    return into;
  }
}
