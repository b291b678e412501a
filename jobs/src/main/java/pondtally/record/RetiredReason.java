package pondtally.record;

/** Why a device was taken out of service without having failed. */
public enum RetiredReason implements Code {
  DAM_ABANDONED("dam-abandoned"),
  OWNER_REMOVED("owner-removed"),
  SITE_WORKS("site-works"),
  REDESIGN("redesign"),
  OTHER("other");

  private final String code;

  RetiredReason(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
