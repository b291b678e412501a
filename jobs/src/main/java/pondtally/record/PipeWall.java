package pondtally.record;

/** How the wall of a pipe is made; {@code none} for a device without a pipe. */
public enum PipeWall implements Code {
  SINGLE("single"),
  DUAL("dual"),
  SMOOTH("smooth"),
  NONE("none");

  private final String code;

  PipeWall(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
