package pondtally.analysis;

import java.util.List;
import pondtally.history.DeviceHistory;
import pondtally.history.DeviceState;
import pondtally.history.Stretch;

/** Whether devices were functional at a moment, as known at the data cut. */
enum Standing {
  /** Functional, and a later visit or one not too long before says so. */
  VERIFIED,
  /**
   * Functional when last seen, but nobody has looked for more than twice the planned interval, or
   * ever.
   */
  UNVERIFIED,
  /** Failed, ended or not yet installed. */
  NOT_FUNCTIONAL;

  /** Standing of the best of {@code devices} at a half day since 1970-01-01. */
  static Standing of(List<DeviceHistory> devices, int at, int revisitEveryDays) {
    Standing best = NOT_FUNCTIONAL;
    for (DeviceHistory device : devices) {
      Standing one = of(device, at, revisitEveryDays);
      if (one.compareTo(best) < 0) {
        best = one;
      }
    }
    return best;
  }

  /** Standing of one device at a half day since 1970-01-01. */
  static Standing of(DeviceHistory device, int at, int revisitEveryDays) {
    if (device.entryOn() > at || (device.endedOn() != null && device.endedOn() <= at)) {
      return NOT_FUNCTIONAL;
    }
    if (device.lastVisitOn() == null) {
      return UNVERIFIED;
    }
    if (at < device.lastVisitOn()) {
      return contains(device, at) ? VERIFIED : NOT_FUNCTIONAL;
    }
    if (device.state() == DeviceState.FAILED || device.failedAtEnd()) {
      return NOT_FUNCTIONAL;
    }
    return at - device.lastVisitOn() > 4 * revisitEveryDays ? UNVERIFIED : VERIFIED;
  }

  private static boolean contains(DeviceHistory device, int at) {
    for (Stretch stretch : device.functional().list()) {
      if (stretch.from() <= at && at < stretch.to()) {
        return true;
      }
    }
    return false;
  }
}
