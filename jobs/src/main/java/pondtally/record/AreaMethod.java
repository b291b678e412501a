package pondtally.record;

/** How a pond's wetland area was measured. */
public enum AreaMethod implements Code {
  WALKED("walked"),
  SURVEY("survey"),
  IMAGERY("imagery"),
  ESTIMATE("estimate");

  private final String code;

  AreaMethod(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
