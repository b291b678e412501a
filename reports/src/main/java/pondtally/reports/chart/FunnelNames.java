package pondtally.reports.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Names beside the points of the funnel: first those outside, then the others as long as they cover
 * neither a point nor another name. Where no place is clear of the limits a white ground parts the
 * line behind the name.
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
    double one = y(data, 1);
    taken.add(new Rectangle2D.Double(data.getX(), one - 0.5, data.getWidth(), 1));
    List<Line2D> limits = limits(data);
    place(g, data, true, taken, limits);
    if (all) {
      place(g, data, false, taken, limits);
    }
  }

  private void place(
      Graphics2D g,
      Rectangle2D data,
      boolean outside,
      List<Rectangle2D> taken,
      List<Line2D> limits) {
    for (FunnelPoint point : points) {
      if (outside == (point.place() == FunnelPoint.Place.OUTSIDE)) {
        place(g, data, point, taken, limits);
      }
    }
  }

  private void place(
      Graphics2D g,
      Rectangle2D data,
      FunnelPoint point,
      List<Rectangle2D> taken,
      List<Line2D> limits) {
    String name = Lettering.shorten(point.label(), SMALL, MOST);
    List<Rectangle2D> free =
        boxes(x(data, point), y(data, point.ratio()), Lettering.width(name, SMALL)).stream()
            .filter(data::contains)
            .filter(box -> taken.stream().noneMatch(box::intersects))
            .toList();
    Optional<Rectangle2D> clear =
        free.stream().filter(box -> limits.stream().noneMatch(box::intersectsLine)).findFirst();
    clear
        .or(() -> free.stream().findFirst())
        .ifPresent(
            box -> {
              if (clear.isEmpty()) {
                g.setColor(Color.WHITE);
                g.fill(box);
              }
              Words.at(g, name, SMALL, Look.INK, box.getX(), box.getY() + 7.5);
              taken.add(box);
            });
  }

  /** Where a name may stand: close to the point first, then farther away. */
  private static List<Rectangle2D> boxes(double x, double y, double width) {
    List<Rectangle2D> boxes = new ArrayList<>();
    for (double down : new double[] {0, 9, 14}) {
      for (int side : down == 0 ? new int[] {1} : new int[] {-1, 1}) {
        double middle = y + side * down;
        double beside = down == 0 ? AWAY : AWAY / 2;
        if (down > 0) {
          boxes.add(box(x - width / 2, middle, width));
        }
        boxes.add(box(x + beside, middle, width));
        boxes.add(box(x - beside - width, middle, width));
      }
    }
    return boxes;
  }

  private static Rectangle2D box(double x, double middle, double width) {
    return new Rectangle2D.Double(x, middle - 4.5, width, 9);
  }

  /** The limits as they are drawn, from watershed to watershed. */
  private List<Line2D> limits(Rectangle2D data) {
    List<Line2D> lines = new ArrayList<>();
    List<Function<FunnelPoint, OptionalDouble>> all =
        List.of(
            point -> OptionalDouble.of(point.lower()),
            point -> OptionalDouble.of(point.upper()),
            FunnelPoint::lower95,
            FunnelPoint::upper95);
    for (Function<FunnelPoint, OptionalDouble> limit : all) {
      List<FunnelPoint> known = points.stream().filter(p -> limit.apply(p).isPresent()).toList();
      for (int i = 1; i < known.size(); i++) {
        FunnelPoint from = known.get(i - 1);
        FunnelPoint to = known.get(i);
        lines.add(
            new Line2D.Double(
                x(data, from),
                y(data, limit.apply(from).getAsDouble()),
                x(data, to),
                y(data, limit.apply(to).getAsDouble())));
      }
    }
    return lines;
  }

  private Rectangle2D around(Rectangle2D data, FunnelPoint point) {
    return new Rectangle2D.Double(x(data, point) - 4, y(data, point.ratio()) - 4, 8, 8);
  }

  private double x(Rectangle2D data, FunnelPoint point) {
    return data.getX() + data.getWidth() * share(across, point.expected());
  }

  private double y(Rectangle2D data, double ratio) {
    return data.getMaxY() - data.getHeight() * share(up, ratio);
  }

  private static double share(Scale scale, double value) {
    return (value - scale.lower()) / (scale.upper() - scale.lower());
  }
}
