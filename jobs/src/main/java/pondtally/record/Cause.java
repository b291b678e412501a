package pondtally.record;

/** Why a device had failed, or was reduced. */
public enum Cause implements Code {
  FENCE_DAMMED("fence-dammed"),
  PIPE_PLUGGED("pipe-plugged"),
  PIPE_CHEWED("pipe-chewed"),
  PIPE_FLOATED("pipe-floated"),
  PIPE_EXPOSED("pipe-exposed"),
  PIPE_SEPARATED("pipe-separated"),
  FENCE_DAMAGED("fence-damaged"),
  DEVICE_TIPPED("device-tipped"),
  NEW_DAM_DOWNSTREAM("new-dam-downstream"),
  OVER_CAPACITY("over-capacity"),
  WASHED_OUT("washed-out"),
  VANDALISM("vandalism"),
  ICE("ice"),
  UNKNOWN("unknown");

  private final String code;

  Cause(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
