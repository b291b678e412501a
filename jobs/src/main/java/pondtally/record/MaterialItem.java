package pondtally.record;

/** What a material line paid for. */
public enum MaterialItem implements Code {
  PIPE("pipe"),
  COUPLER("coupler"),
  FENCE_PANEL("fence-panel"),
  FASTENER("fastener"),
  WIRE("wire"),
  WEIGHT("weight"),
  POST("post"),
  RENTAL("rental"),
  OTHER("other");

  private final String code;

  MaterialItem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
