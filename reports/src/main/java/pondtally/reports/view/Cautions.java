package pondtally.reports.view;

import java.util.List;

/** The cautions that stand in every report. */
public final class Cautions {

  /** Heading above them. */
  public static final String HEADING = "Cautions";

  private static final List<String> ALL =
      List.of(
          "Breaching a dam and working in a pond can kill. Water let go at once can drown people and wash out roads downstream: never release water without knowing where it goes.",
          "Permits are needed in most regions, and the landowner's leave. Ask the local authority before any work on a dam, a culvert or an animal.",
          "Nothing here sizes a pipe, rates a culvert or certifies a road. That is for a licensed engineer and the local authority, and local codes come first.",
          "Small groups say little: read the limits before the rates.",
          "Device comparisons are observational: crews, sites and years differ between pipe types, so a difference need not come from the pipe.",
          "Verified figures rest on what visitors saw. What was not visited is not known, and is never counted as working.");

  private Cautions() {}

  /** One sentence or two each, in the order in which they are shown. */
  public static List<String> all() {
    return ALL;
  }
}
