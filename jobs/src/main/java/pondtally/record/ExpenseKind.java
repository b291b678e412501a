package pondtally.record;

/** What a program expense that belongs to no device was for. */
public enum ExpenseKind implements Code {
  ADMINISTRATION("administration"),
  TRAVEL("travel"),
  PERMIT("permit"),
  TRAINING("training"),
  EQUIPMENT("equipment");

  private final String code;

  ExpenseKind(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
