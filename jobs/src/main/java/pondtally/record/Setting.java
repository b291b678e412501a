package pondtally.record;

/** What a site lies beside. */
public enum Setting implements Code {
  ROAD_CROSSING("road-crossing"),
  FARMLAND("farmland"),
  RESIDENCE("residence"),
  FORESTRY("forestry"),
  RAIL("rail"),
  TRAIL("trail"),
  UTILITY("utility"),
  OTHER("other");

  private final String code;

  Setting(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
