package pondtally.record;

/** What a count of removals rests on, strongest first. */
public enum Evidence implements Code {
  PERMIT("permit"),
  INVOICE("invoice"),
  LOG("log"),
  ESTIMATE("estimate");

  private final String code;

  Evidence(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
