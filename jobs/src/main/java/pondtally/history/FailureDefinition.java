package pondtally.history;

import pondtally.record.Code;
import pondtally.record.Condition;

/** Which conditions count as failure. */
public enum FailureDefinition implements Code {
  FAILED("failed"),
  FAILED_OR_REDUCED("failed-or-reduced");

  private final String code;

  FailureDefinition(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  /** Whether a device found in {@code condition} has failed. */
  public boolean isFailure(Condition condition) {
    return condition == Condition.FAILED
        || (this == FAILED_OR_REDUCED && condition == Condition.REDUCED);
  }
}
