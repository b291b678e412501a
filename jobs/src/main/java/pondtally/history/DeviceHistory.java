package pondtally.history;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import pondtally.record.Install;
import pondtally.record.RetiredReason;

/**
 * Everything known about one device up to the data cut. Times are half days since 1970-01-01.
 *
 * @param install its first install record
 * @param entryOn from when the program followed it
 * @param lastVisitOn null where it was never visited by the data cut
 * @param endedOn when it was retired or removed; null where it was not
 * @param endReason why, where that was recorded; else null
 * @param failedAtEnd whether it stood failed when it ended: then there is no competing end
 * @param lives its service lives, in order; at least one
 * @param failures all failures after entry, in order
 * @param state at the data cut
 * @param verified from entry to last visit, over its lives; empty where never visited. A {@code
 *     retired_on} after the last visit ends a life's follow-up, but verifies nothing
 * @param functional the verified stretches less the time from each failure's midpoint to its
 *     restart
 * @param lastKnownGoodOn last day it was known not failed, after the last visit's action: a visit,
 *     a restart or entry, and not after the data cut; null where it stands failed or ended
 */
public record DeviceHistory(
    Install install,
    int entryOn,
    Integer lastVisitOn,
    Integer endedOn,
    RetiredReason endReason,
    boolean failedAtEnd,
    List<Life> lives,
    List<Failure> failures,
    DeviceState state,
    Stretches verified,
    Stretches functional,
    Integer lastKnownGoodOn)
    implements Serializable {

  public String deviceId() {
    return install.deviceId();
  }

  public String siteId() {
    return install.siteId();
  }

  /**
   * To when repeated failures were observed: the last visit, or the end of the day where the
   * failure it found takes that day; entry where nobody came after it.
   */
  public int observedTo() {
    int to = lastVisitOn == null ? entryOn : Math.max(entryOn, lastVisitOn);
    return failures.isEmpty() ? to : Math.max(to, failures.get(failures.size() - 1).foundOn());
  }

  /**
   * Time at risk of failure in one of its lives, the exposure of failure rates: follow-up less the
   * time from each failure's midpoint to its restart. Unlike {@link #functional} it runs to the day
   * of retirement, and every failure has some.
   */
  public Stretches exposure(Life life) {
    return FunctionRule.functional(life.followUp(), failures(life));
  }

  /** Failures in one of its lives, in order. */
  public List<Failure> failures(Life life) {
    List<Failure> own = new ArrayList<>();
    for (Failure failure : failures) {
      if (failure.life() == life.number()) {
        own.add(failure);
      }
    }
    return own;
  }

  /** Time at risk of failure over all its lives. */
  public Stretches exposure() {
    return lives.size() == 1
        ? exposure(lives.get(0))
        : Stretches.union(lives.stream().map(this::exposure).toList());
  }
}
