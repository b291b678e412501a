package pondtally.history;

import pondtally.record.Code;

/** State of a device at the data cut, after whatever its last visit did. */
public enum DeviceState implements Code {
  WORKING("working"),
  REDUCED("reduced"),
  FAILED("failed"),
  RETIRED("retired"),
  /**
   * Not known to have failed, and nobody has looked for more than twice the planned interval, or
   * ever.
   */
  UNVERIFIED("unverified");

  private final String code;

  DeviceState(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
