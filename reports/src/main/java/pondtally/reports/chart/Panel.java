package pondtally.reports.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;

/**
 * One plot with what stands beside and below it.
 *
 * @param heading bold line above; empty where the figure's title is enough
 * @param rangeTitle what the vertical axis measures, set level above it so that no head is tilted
 * @param chart the plot, with margins fixed by {@link Plots}
 * @param frame where the data area lies within the panel
 * @param beside words and numbers placed by the data area
 */
record Panel(
    String heading, String rangeTitle, JFreeChart chart, Frame frame, List<Beside> beside) {

  private static final Font HEADING = Lettering.bold(Lettering.TEXT);
  private static final Font RANGE_TITLE = Lettering.regular(Lettering.SMALL);

  /**
   * Space around the data area, in points.
   *
   * @param left of it
   * @param right of it
   * @param bottom for the horizontal axis
   * @param height of the data area
   */
  record Frame(double left, double right, double bottom, double height) {}

  /** Words or numbers whose place follows the data area. */
  interface Beside {

    /** Height below the horizontal axis that it needs, in points. */
    double heightBelow();

    /** Draws it; {@code data} is the data area and {@code below} the space under the axis. */
    void draw(Graphics2D g, Rectangle2D data, Rectangle2D below);
  }

  XYPlot plot() {
    return chart.getXYPlot();
  }

  double height(double width) {
    double below = beside.stream().mapToDouble(Beside::heightBelow).sum();
    return headHeight(width) + frame.height + frame.bottom + below;
  }

  void draw(Graphics2D g, Rectangle2D area) {
    double top = area.getY() + drawHead(g, area);
    Rectangle2D data =
        new Rectangle2D.Double(
            area.getX() + frame.left,
            top,
            area.getWidth() - frame.left - frame.right,
            frame.height);
    Rectangle2D plotArea =
        new Rectangle2D.Double(
            area.getX(),
            top - Plots.TOP_INSET,
            area.getWidth(),
            Plots.TOP_INSET + frame.height + frame.bottom);
    chart.draw(g, plotArea);
    drawBeside(g, area, data);
  }

  private void drawBeside(Graphics2D g, Rectangle2D area, Rectangle2D data) {
    double y = data.getMaxY() + frame.bottom;
    for (Beside item : beside) {
      Rectangle2D below =
          new Rectangle2D.Double(area.getX(), y, area.getWidth(), item.heightBelow());
      item.draw(g, data, below);
      y += item.heightBelow();
    }
  }

  private double headHeight(double width) {
    double headings = headingLines(width).size() * Lettering.lineHeight(HEADING);
    return headings
        + (rangeTitle.isEmpty() ? 0 : Lettering.lineHeight(RANGE_TITLE))
        + Plots.TOP_INSET;
  }

  private List<String> headingLines(double width) {
    return Lettering.wrap(heading, HEADING, width, 2);
  }

  private double drawHead(Graphics2D g, Rectangle2D area) {
    Words words = new Words(g, area.getX(), area.getY());
    for (String line : headingLines(area.getWidth())) {
      words.line(line, HEADING, Look.INK);
    }
    if (!rangeTitle.isEmpty()) {
      words.line(
          Lettering.shorten(rangeTitle, RANGE_TITLE, area.getWidth()), RANGE_TITLE, Look.GRAY);
    }
    return headHeight(area.getWidth());
  }
}
