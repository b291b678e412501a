package pondtally.record;

/** How fence material is sold. */
public enum FenceForm implements Code {
  PANEL("panel"),
  ROLL("roll");

  private final String code;

  FenceForm(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
