package pondtally.record;

/** What became of a landowner's request for a device. */
public enum RequestOutcome implements Code {
  INSTALLED("installed"),
  UNSUITABLE("unsuitable"),
  WAITING("waiting"),
  DECLINED("declined");

  private final String code;

  RequestOutcome(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
