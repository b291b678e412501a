package pondtally.record;

/** What a device is. */
public enum DeviceKind implements Code {
  POND_LEVELER("pond-leveler"),
  CULVERT_FENCE("culvert-fence"),
  FENCE_AND_PIPE("fence-and-pipe");

  private final String code;

  DeviceKind(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
