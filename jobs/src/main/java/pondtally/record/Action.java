package pondtally.record;

/** What was done to a device at a visit. */
public enum Action implements Code {
  NONE("none"),
  CLEANED("cleaned"),
  REPAIRED("repaired"),
  REPLACED("replaced"),
  REMOVED("removed");

  private final String code;

  Action(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
