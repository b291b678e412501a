package pondtally.history;

import java.util.List;
import pondtally.record.RetiredReason;

/**
 * A dam is abandoned on the day a device at its pond was retired for that reason; from then on the
 * pond has no area. It does not count as abandoned where a device of the pond was visited after
 * that day, or put in on it or later: there was a dam to see to. Common practice, no source.
 */
final class AbandonmentRule {

  /** The pond's dam stands, as far as anybody knows. */
  static final int NEVER = Integer.MAX_VALUE;

  private AbandonmentRule() {}

  /** Half day from which the pond of {@code devices} has no area, or {@link #NEVER}. */
  static int abandonedOn(List<DeviceHistory> devices) {
    int first = NEVER;
    for (DeviceHistory device : devices) {
      if (device.endReason() == RetiredReason.DAM_ABANDONED
          && device.endedOn() < first
          && !seenLater(devices, device)) {
        first = device.endedOn();
      }
    }
    return first;
  }

  private static boolean seenLater(List<DeviceHistory> devices, DeviceHistory retired) {
    for (DeviceHistory device : devices) {
      boolean visited = device.lastVisitOn() != null && device.lastVisitOn() > retired.endedOn();
      boolean putIn =
          !device.deviceId().equals(retired.deviceId())
              && device.lives().get(device.lives().size() - 1).openedOn() >= retired.endedOn();
      if (visited || putIn) {
        return true;
      }
    }
    return false;
  }
}
