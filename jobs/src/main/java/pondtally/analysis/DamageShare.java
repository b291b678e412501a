package pondtally.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import pondtally.history.DeviceHistory;
import pondtally.history.HalfDays;
import pondtally.history.Stretch;

/**
 * Shares the verified functional time of a site among its devices: each moment counts once, in
 * equal parts for the devices that are functional then. So benefit adds up over groups of devices.
 */
final class DamageShare {

  private DamageShare() {}

  /** Years of each device's share, by device id; together the time of the union. */
  static Map<String, Double> functionalYears(List<DeviceHistory> devices) {
    TreeSet<Integer> moments = new TreeSet<>();
    for (DeviceHistory device : devices) {
      for (Stretch stretch : device.functional().list()) {
        moments.add(stretch.from());
        moments.add(stretch.to());
      }
    }
    Map<String, Double> years = new HashMap<>();
    devices.forEach(device -> years.put(device.deviceId(), 0.0));
    Integer from = null;
    for (int to : moments) {
      if (from != null) {
        share(devices, from, to, years);
      }
      from = to;
    }
    return years;
  }

  private static void share(
      List<DeviceHistory> devices, int from, int to, Map<String, Double> years) {
    List<DeviceHistory> working = new ArrayList<>(devices.size());
    for (DeviceHistory device : devices) {
      if (covers(device, from)) {
        working.add(device);
      }
    }
    for (DeviceHistory device : working) {
      years.merge(device.deviceId(), (to - from) / (HalfDays.YEAR * working.size()), Double::sum);
    }
  }

  private static boolean covers(DeviceHistory device, int at) {
    for (Stretch stretch : device.functional().list()) {
      if (stretch.from() <= at && at < stretch.to()) {
        return true;
      }
    }
    return false;
  }
}
