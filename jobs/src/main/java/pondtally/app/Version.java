package pondtally.app;

/** The version of this program, from its jar. */
public final class Version {

  private Version() {}

  /** For example {@code 0.1.0}; {@code development} when it runs from a folder of classes. */
  public static String text() {
    String version = Version.class.getPackage().getImplementationVersion();
    return version == null ? "development" : version;
  }
}
