package pondtally.record;

/** State in which a visit found a device. */
public enum Condition implements Code {
  WORKING("working"),
  REDUCED("reduced"),
  FAILED("failed"),
  RETIRED("retired");

  private final String code;

  Condition(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
