package pondtally.record;

/** What a protected property is. */
public enum PropertyType implements Code {
  ROAD("road"),
  CULVERT("culvert"),
  HOME("home"),
  SEPTIC("septic"),
  WELL("well"),
  CROPLAND("cropland"),
  PASTURE("pasture"),
  TIMBER("timber"),
  RAIL("rail"),
  TRAIL("trail"),
  UTILITY("utility"),
  OTHER("other");

  private final String code;

  PropertyType(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
