package pondtally.reports.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** A few words in the middle of a plot that has nothing else. */
record Note(String words) implements Panel.Beside {

  @Override
  public double heightBelow() {
    return 0;
  }

  @Override
  public void draw(Graphics2D g, Rectangle2D data, Rectangle2D below) {
    Words.centeredAt(
        g,
        words,
        Lettering.regular(Lettering.SMALL),
        Look.GRAY,
        data.getCenterX(),
        data.getMaxY() - 6);
  }
}
