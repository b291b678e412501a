package pondtally.stats;

import java.io.Serializable;

/**
 * Follow-up and events of devices that can fail again and again, counted by time: the first of two
 * passes for {@link MeanCumulative}. A device is at risk for t with entry &lt; t ≤ exit. Mergeable,
 * and the order of adding never matters. Times in any one unit, such as days from installation.
 */
public final class RepeatCounts implements Serializable {
  private static final long serialVersionUID = 1;

  private final CountedLives followUp = CountedLives.ofOneKind();
  private final CountedLives events = CountedLives.ofOneKind();

  /** No devices yet. */
  public RepeatCounts() {}

  /** Adds a device. Returns this. */
  public RepeatCounts add(RepeatHistory device) {
    followUp.add(device.entry(), device.exit(), CountedLives.CENSORED);
    for (double time : device.eventTimes()) {
      // Only the count of events at each time is read: as if each had been waited for from 0.
      events.add(0, time, 1);
    }
    return this;
  }

  /** Adds all that another has counted. Returns this. */
  public RepeatCounts merge(RepeatCounts other) {
    followUp.merge(other.followUp);
    events.merge(other.events);
    return this;
  }

  /** Devices with follow-up. */
  public long devices() {
    return followUp.lives();
  }

  /** Events of all devices. */
  public long events() {
    return events.lives();
  }

  /** Sum of exit − entry, in the unit of the times. */
  public double timeAtRisk() {
    return followUp.timeAtRisk();
  }

  RiskTable followUpTable() {
    return followUp.anyEvent();
  }

  RiskTable eventTable() {
    return events.anyEvent();
  }
}
