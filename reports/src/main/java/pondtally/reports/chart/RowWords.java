package pondtally.reports.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Words beside the rows of a plot: names to the left, broken into two lines where they are long,
 * and columns of figures to the right under their headings.
 *
 * @param names one a row
 * @param heads heading of each column
 * @param columns cells by row, then column
 * @param instead what stands in the plot where there is no mark; empty where there is one
 */
record RowWords(
    List<String> names, List<String> heads, List<List<String>> columns, List<String> instead)
    implements Panel.Beside {

  private static final Font SMALL = Lettering.regular(Lettering.SMALL);
  private static final Font BOLD = Lettering.bold(Lettering.SMALL);
  private static final double MOST_NAME = 150;
  private static final double GAP = 8;
  private static final double LINE = 10;

  /** Room needed to the left of the data area. */
  double left() {
    double widest =
        names.stream().mapToDouble(name -> Lettering.width(name, SMALL)).max().orElse(0);
    return Math.min(MOST_NAME, widest) + GAP;
  }

  /** Room needed to the right of the data area. */
  double right() {
    double sum = 0;
    for (int column = 0; column < heads.size(); column++) {
      sum += GAP + columnWidth(column);
    }
    return Math.max(sum, GAP);
  }

  /** Height of one row, the same for all. */
  double rowHeight() {
    boolean isBroken = names.stream().anyMatch(name -> lines(name).size() > 1);
    return isBroken ? 2 * LINE + 3 : LINE + 5;
  }

  @Override
  public double heightBelow() {
    return 0;
  }

  @Override
  public void draw(Graphics2D g, Rectangle2D data, Rectangle2D below) {
    double rowHeight = data.getHeight() / names.size();
    drawHeads(g, data);
    for (int row = 0; row < names.size(); row++) {
      double middle = data.getY() + (row + 0.5) * rowHeight;
      drawName(g, names.get(row), data.getX() - GAP, middle);
      drawCells(g, columns.get(row), data.getMaxX(), middle + 3);
      Words.at(g, instead.get(row), SMALL, Look.GRAY, data.getX() + 6, middle + 3);
    }
  }

  private void drawName(Graphics2D g, String name, double right, double middle) {
    List<String> lines = lines(name);
    double y = middle + 3 - (lines.size() - 1) * LINE / 2;
    for (String line : lines) {
      Words.endingAt(g, line, SMALL, Look.INK, right, y);
      y += LINE;
    }
  }

  private void drawHeads(Graphics2D g, Rectangle2D data) {
    double x = data.getMaxX();
    for (int column = 0; column < heads.size(); column++) {
      x += GAP + columnWidth(column);
      Words.endingAt(g, heads.get(column), BOLD, Look.GRAY, x, data.getY() - 4);
    }
  }

  private void drawCells(Graphics2D g, List<String> cells, double left, double baseline) {
    double x = left;
    for (int column = 0; column < cells.size(); column++) {
      x += GAP + columnWidth(column);
      Words.endingAt(g, cells.get(column), SMALL, Look.INK, x, baseline);
    }
  }

  private double columnWidth(int column) {
    List<Double> widths = new ArrayList<>();
    widths.add(Lettering.width(heads.get(column), BOLD));
    columns.forEach(row -> widths.add(Lettering.width(row.get(column), SMALL)));
    return widths.stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }

  private static List<String> lines(String name) {
    return Lettering.wrap(name, SMALL, MOST_NAME, 2);
  }
}
