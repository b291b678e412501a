package pondtally.analysis;

import java.util.Locale;

/** Draws how far curves are off by age, as a small SVG. */
final class BiasFigure {

  // Okabe and Ito 2008, told apart by dashes as well.
  private static final String[] COLORS = {"#D55E00", "#0072B2", "#009E73"};
  private static final String[] DASHES = {"", "7 4", "2 3"};
  private static final int WIDTH = 720;
  private static final int HEIGHT = 400;
  private static final int LEFT = 64;
  private static final int RIGHT = 700;
  private static final int TOP = 64;
  private static final int BOTTOM = 340;
  private static final double LOW = -2;
  private static final double HIGH = 6;

  private BiasFigure() {}

  /**
   * The figure.
   *
   * @param points by method and step of age: percentage points too high
   */
  static String svg(double[][] points, String[] names, double yearsAStep) {
    double years = points[0].length * yearsAStep;
    StringBuilder svg = new StringBuilder();
    add(
        svg,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %s %s\" font-family=\"sans-serif\""
            + " font-size=\"13\" role=\"img\">",
        WIDTH,
        HEIGHT);
    add(svg, "<title>Bias of survival by the dating of failures</title>");
    add(svg, "<rect width=\"100%%\" height=\"100%%\" fill=\"white\"/>");
    add(
        svg,
        "<text x=\"%s\" y=\"24\" font-size=\"15\">Dated by the visit that found them, failures seem"
            + " to come too late</text>",
        LEFT);
    add(
        svg,
        "<text x=\"%s\" y=\"44\">Estimate less true survival, percentage points; mean of simulated"
            + " programs of 150 devices</text>",
        LEFT);
    for (int tick = (int) LOW; tick <= HIGH; tick += 2) {
      double y = y(tick);
      add(
          svg,
          "<path d=\"M%s %.1fH%s\" stroke=\"%s\"/><text x=\"%s\" y=\"%.1f\""
              + " text-anchor=\"end\">%+d</text>",
          LEFT,
          y,
          RIGHT,
          tick == 0 ? "#333333" : "#DDDDDD",
          LEFT - 8,
          y + 4,
          tick);
    }
    for (int year = 0; year <= years; year++) {
      add(
          svg,
          "<text x=\"%.1f\" y=\"%s\" text-anchor=\"middle\">%s</text>",
          x(year, years),
          BOTTOM + 18,
          year);
    }
    add(
        svg,
        "<text x=\"%s\" y=\"%s\" text-anchor=\"middle\">Age, years</text>",
        (LEFT + RIGHT) / 2,
        BOTTOM + 40);
    for (int m = 0; m < points.length; m++) {
      addLine(svg, points[m], yearsAStep, years, m);
      int at = TOP + 18 * m + 8;
      add(
          svg,
          "<path d=\"M490 %sH530\" stroke=\"%s\" stroke-width=\"2.5\" stroke-dasharray=\"%s\"/>"
              + "<text x=\"538\" y=\"%s\">%s</text>",
          at,
          COLORS[m],
          DASHES[m],
          at + 4,
          names[m]);
    }
    return svg.append("</svg>\n").toString();
  }

  private static void addLine(
      StringBuilder svg, double[] points, double yearsAStep, double years, int m) {
    StringBuilder path = new StringBuilder("M");
    path.append(LEFT).append(' ').append(y(0));
    for (int i = 0; i < points.length; i++) {
      path.append(
          String.format(Locale.ROOT, "L%.1f %.1f", x((i + 1) * yearsAStep, years), y(points[i])));
    }
    add(
        svg,
        "<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"2.5\" stroke-dasharray=\"%s\"/>",
        path,
        COLORS[m],
        DASHES[m]);
  }

  private static double x(double year, double years) {
    return LEFT + (RIGHT - LEFT) * year / years;
  }

  private static double y(double points) {
    return BOTTOM - (BOTTOM - TOP) * (points - LOW) / (HIGH - LOW);
  }

  private static void add(StringBuilder svg, String format, Object... values) {
    svg.append(String.format(Locale.ROOT, format, values)).append('\n');
  }
}
