package pondtally.reports.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Names beside the points of the funnel: first those outside, then the others as long as they cover
 * neither a point nor another name.
 *
 * @param all whether points within the limits are named too
 */
record FunnelNames(List<FunnelPoint> points, boolean all, Scale across, Scale up)
    implements Panel.Beside {

  private static final Font SMALL = Lettering.regular(Lettering.SMALL);
  private static final double MOST = 130;
  private static final double AWAY = 6;

  @Override
  public double heightBelow() {
    return 0;
  }

  @Override
  public void draw(Graphics2D g, Rectangle2D data, Rectangle2D below) {
    List<Rectangle2D> taken = new ArrayList<>();
    points.forEach(point -> taken.add(around(data, point)));
    double one = data.getMaxY() - data.getHeight() * share(up, 1);
    taken.add(new Rectangle2D.Double(data.getX(), one - 0.5, data.getWidth(), 1));
    place(g, data, true, taken);
    if (all) {
      place(g, data, false, taken);
    }
  }

  private void place(Graphics2D g, Rectangle2D data, boolean outside, List<Rectangle2D> taken) {
    for (FunnelPoint point : points) {
      if (outside == (point.place() == FunnelPoint.Place.OUTSIDE)) {
        place(g, data, point, taken);
      }
    }
  }

  private void place(Graphics2D g, Rectangle2D data, FunnelPoint point, List<Rectangle2D> taken) {
    String name = Lettering.shorten(point.label(), SMALL, MOST);
    double width = Lettering.width(name, SMALL);
    double x = x(data, point);
    double y = y(data, point);
    double[][] tries = {
      {x + AWAY, y},
      {x - AWAY - width, y},
      {x - width / 2, y - 9},
      {x - width / 2, y + 9},
      {x + AWAY / 2, y - 9},
      {x + AWAY / 2, y + 9},
      {x - AWAY / 2 - width, y - 9},
      {x - AWAY / 2 - width, y + 9}
    };
    for (double[] at : tries) {
      Rectangle2D box = new Rectangle2D.Double(at[0], at[1] - 4.5, width, 9);
      if (data.contains(box) && taken.stream().noneMatch(other -> other.intersects(box))) {
        Words.at(g, name, SMALL, Look.INK, at[0], at[1] + 3);
        taken.add(box);
        return;
      }
    }
  }

  private Rectangle2D around(Rectangle2D data, FunnelPoint point) {
    return new Rectangle2D.Double(x(data, point) - 4, y(data, point) - 4, 8, 8);
  }

  private double x(Rectangle2D data, FunnelPoint point) {
    return data.getX() + data.getWidth() * share(across, point.expected());
  }

  private double y(Rectangle2D data, FunnelPoint point) {
    return data.getMaxY() - data.getHeight() * share(up, point.ratio());
  }

  private static double share(Scale scale, double value) {
    return (value - scale.lower()) / (scale.upper() - scale.lower());
  }
}
