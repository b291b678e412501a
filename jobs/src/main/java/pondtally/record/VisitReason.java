package pondtally.record;

/** Why a visit was made. */
public enum VisitReason implements Code {
  SCHEDULED("scheduled"),
  COMPLAINT("complaint"),
  OTHER("other");

  private final String code;

  VisitReason(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
