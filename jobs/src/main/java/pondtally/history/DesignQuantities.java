package pondtally.history;

/** What a design takes and what comes of it. Common practice, no source. */
public final class DesignQuantities {

  private DesignQuantities() {}

  /**
   * Distance across a round fence bent from a straight panel whose ends lap, feet: (length −
   * lap)/π.
   */
  public static double fenceDiameterFt(double panelLengthFt, double lapFt) {
    return (panelLengthFt - lapFt) / Math.PI;
  }

  /** Sections that a pipe is laid in, the last perhaps shorter; lengths to a tenth of a foot. */
  public static int sections(double pipeLengthFt, double sectionLengthFt) {
    long tenths = Math.round(pipeLengthFt * 10);
    long sectionTenths = Math.round(sectionLengthFt * 10);
    return Math.toIntExact((tenths + sectionTenths - 1) / sectionTenths);
  }

  /** Couplers that join so many sections: one fewer. */
  public static int couplers(int sections) {
    return Math.max(0, sections - 1);
  }
}
