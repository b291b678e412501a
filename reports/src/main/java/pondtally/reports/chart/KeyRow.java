package pondtally.reports.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import pondtally.reports.chart.Figure.KeyEntry;
import pondtally.reports.chart.Figure.Sample;

/**
 * The key above the panels: a sample of line and mark before each name, in as many rows as needed.
 */
final class KeyRow {

  private static final Font FONT = Lettering.regular(Lettering.TEXT);
  private static final double SAMPLE = 24;
  private static final double BETWEEN = 14;
  private static final double ROW = 13;

  private record Placed(KeyEntry entry, String label, double x, int row) {}

  private final List<Placed> placed = new ArrayList<>();

  KeyRow(List<KeyEntry> entries, double width) {
    double x = 0;
    int row = 0;
    for (KeyEntry entry : entries) {
      String label = Lettering.shorten(entry.label(), FONT, width - SAMPLE - 4);
      double needed = SAMPLE + 4 + Lettering.width(label, FONT);
      if (x > 0 && x + needed > width) {
        x = 0;
        row++;
      }
      placed.add(new Placed(entry, label, x, row));
      x += needed + BETWEEN;
    }
  }

  double height() {
    return placed.isEmpty() ? 0 : (placed.get(placed.size() - 1).row + 1) * ROW + 4;
  }

  void draw(Graphics2D g, double left, double top) {
    for (Placed item : placed) {
      double middle = top + item.row * ROW + ROW / 2;
      sample(g, item.entry, left + item.x, middle);
      Words.at(g, item.label, FONT, Look.INK, left + item.x + SAMPLE + 4, middle + 3);
    }
  }

  /** A sample 24 points wide, centered on the line {@code middle}. */
  static void sample(Graphics2D g, KeyEntry entry, double x, double middle) {
    Look look = entry.look();
    g.setPaint(look.color());
    if (entry.sample() == Sample.BAND || entry.sample() == Sample.SOLID) {
      boolean solid = entry.sample() == Sample.SOLID;
      g.setPaint(solid ? look.color() : Look.tint(look.color(), 0.25));
      g.fill(new Rectangle2D.Double(x + 4, middle - 4, SAMPLE - 4, 8));
      return;
    }
    if (entry.sample() == Sample.LINE || entry.sample() == Sample.LINE_AND_MARK) {
      g.setStroke(look.line());
      g.draw(new Line2D.Double(x, middle, x + SAMPLE, middle));
    }
    if (entry.sample() != Sample.LINE) {
      mark(g, look, entry.sample() == Sample.HOLLOW_MARK, x + SAMPLE / 2, middle);
    }
  }

  private static void mark(Graphics2D g, Look look, boolean hollow, double x, double y) {
    Shape mark = AffineTransform.getTranslateInstance(x, y).createTransformedShape(look.mark());
    g.setPaint(hollow ? Color.WHITE : look.color());
    g.fill(mark);
    g.setPaint(look.color());
    g.setStroke(Look.line(1));
    g.draw(mark);
  }
}
