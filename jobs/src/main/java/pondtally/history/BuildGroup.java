package pondtally.history;

import pondtally.record.Code;

/** Whether a device was built to specification, as far as that was recorded. */
public enum BuildGroup implements Code {
  /** Every item judged is met. */
  MET("met"),
  /** At least one item judged is not met. */
  NOT_MET("not-met"),
  /** Too few items are recorded to say. */
  NOT_JUDGED("not-judged");

  private final String code;

  BuildGroup(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
