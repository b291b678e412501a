package pondtally.check;

import pondtally.record.Code;

/** What a finding did to its row. */
public enum Severity implements Code {
  /** The row is not counted. */
  SET_ASIDE("set-aside"),
  /** The row is counted with a changed or dropped value. */
  CHANGED("changed"),
  /**
   * The row is counted as it stands; somebody should look. A duplicate row is not counted twice.
   */
  NOTICE("notice");

  private final String code;

  Severity(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
