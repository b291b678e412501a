package pondtally.history;

/** What a design takes and what comes of it. Common practice, no source. */
public final class DesignQuantities {

  private static final double STOCK_LENGTH_FT = 20;
  private static final double PANEL_FT = 16;
  private static final double LAP_FT = 1 / 3.0;
  private static final double NOMINAL = 1.02;

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

  /** Lengths in which corrugated pipe comes, 20 ft each, that a pipe takes. */
  public static int stockLengths(double pipeLengthFt) {
    return sections(pipeLengthFt, STOCK_LENGTH_FT);
  }

  /**
   * Panels of 16 ft, each lapped by one square of 4 in, that go round a fence: one makes it 4.99 ft
   * across. Diameters are nominal, so that 2 per cent more do not ask for another panel.
   */
  public static int panels(double fenceDiameterFt) {
    double around = Math.PI * fenceDiameterFt / NOMINAL;
    return Math.max(1, (int) Math.ceil(around / (PANEL_FT - LAP_FT)));
  }

  /** Feet of panel that a fence takes: its circumference and a lap of 1/3 ft for each panel. */
  public static double panelFt(double fenceDiameterFt) {
    return Math.PI * fenceDiameterFt + LAP_FT * panels(fenceDiameterFt);
  }
}
