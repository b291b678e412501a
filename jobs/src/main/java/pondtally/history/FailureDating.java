package pondtally.history;

import pondtally.record.Code;

/**
 * Which day stands for a failure that happened somewhere after the last good visit and up to the
 * visit that found it.
 */
public enum FailureDating implements Code {
  /** Keeps both ends; where one day is needed, the midpoint. */
  INTERVAL("interval"),
  /** The middle between the two; may fall on a half day. */
  MIDPOINT("midpoint"),
  /** The day of the visit that found it. */
  DISCOVERY("discovery");

  private final String code;

  FailureDating(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
