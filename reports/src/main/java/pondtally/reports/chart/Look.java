package pondtally.reports.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.GeneralPath;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Colors, lines and marks. The four hues are those of Okabe and Ito's color-blind-safe palette
 * (2008) that keep a contrast of 3 to 1 on white; every series differs by line and mark as well, so
 * that a gray print can be read.
 *
 * @param color of line and mark
 * @param line dash pattern
 * @param mark centered on 0, 0
 */
record Look(Color color, Stroke line, Shape mark) {

  static final Color BLUE = new Color(0x0072B2);
  static final Color VERMILLION = new Color(0xD55E00);
  static final Color GREEN = new Color(0x009E73);
  static final Color PURPLE = new Color(0xCC79A7);
  static final Color INK = new Color(0x222222);
  static final Color GRAY = new Color(0x595959);
  static final Color CONTEXT = new Color(0xB0B0B0);
  static final Color GRID = new Color(0xE3E3E3);

  static final Stroke THIN = new BasicStroke(0.6f);

  private static final List<Look> SERIES =
      List.of(
          new Look(BLUE, line(1.4f), circle(2.4)),
          new Look(VERMILLION, line(1.4f, 5, 2.5f), square(2.2)),
          new Look(GREEN, line(1.4f, 6, 2, 1.4f, 2), triangle(2.8)),
          new Look(PURPLE, line(1.6f, 1.6f, 1.8f), diamond(3)),
          new Look(INK, line(1.2f, 9, 3), cross(2.6)));

  /** The look of the series numbered from 0; there are five. */
  static Look series(int number) {
    return SERIES.get(number);
  }

  /** How many series can be told apart in one plot. */
  static int distinct() {
    return SERIES.size();
  }

  /** The hue mixed with white; {@code strength} from 0 (white) to 1. */
  static Color tint(Color hue, double strength) {
    return new Color(
        mix(hue.getRed(), strength), mix(hue.getGreen(), strength), mix(hue.getBlue(), strength));
  }

  private static int mix(int part, double strength) {
    return (int) Math.round(255 - (255 - part) * strength);
  }

  static BasicStroke line(float width, float... dashes) {
    return new BasicStroke(
        width,
        BasicStroke.CAP_BUTT,
        BasicStroke.JOIN_MITER,
        10,
        dashes.length == 0 ? null : dashes,
        0);
  }

  static Shape circle(double radius) {
    return new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius);
  }

  static Shape square(double half) {
    return new Rectangle2D.Double(-half, -half, 2 * half, 2 * half);
  }

  static Shape triangle(double size) {
    return polygon(0, -size, size, size * 0.8, -size, size * 0.8);
  }

  static Shape diamond(double size) {
    return polygon(0, -size, size, 0, 0, size, -size, 0);
  }

  /** Points right: the interval goes on beyond the axis. */
  static Shape arrow(double size) {
    return polygon(0, 0, -2 * size, -size, -2 * size, size);
  }

  private static Shape cross(double size) {
    double arm = size / 3;
    return polygon(
        -arm, -size, arm, -size, arm, -arm, size, -arm, size, arm, arm, arm, arm, size, -arm, size,
        -arm, arm, -size, arm, -size, -arm, -arm, -arm);
  }

  private static Shape polygon(double... xy) {
    GeneralPath path = new GeneralPath();
    path.moveTo(xy[0], xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      path.lineTo(xy[i], xy[i + 1]);
    }
    path.closePath();
    return path;
  }
}
