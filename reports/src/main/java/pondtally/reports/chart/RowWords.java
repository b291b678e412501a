package pondtally.reports.chart;

import java.awt.Color;
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
 * @param room width of names and columns, the same for all panels of a chart
 */
record RowWords(
    List<String> names,
    List<String> heads,
    List<List<String>> columns,
    List<String> instead,
    Room room)
    implements Panel.Beside {

  /**
   * Widths in points.
   *
   * @param names of the names
   * @param columns of each column
   * @param isBroken whether a name needs two lines
   */
  record Room(double names, List<Double> columns, boolean isBroken) {

    /** Room for all of these names and cells. */
    static Room of(List<String> names, List<String> heads, List<List<String>> cells) {
      double widest =
          names.stream().mapToDouble(name -> Lettering.width(name, SMALL)).max().orElse(0);
      List<Double> columns = new ArrayList<>();
      for (int i = 0; i < heads.size(); i++) {
        int column = i;
        double head = Lettering.width(heads.get(i), BOLD);
        columns.add(
            cells.stream()
                .mapToDouble(row -> Lettering.width(row.get(column), SMALL))
                .reduce(head, Math::max));
      }
      return new Room(Math.min(MOST_NAME, widest), columns, widest > MOST_NAME);
    }

    /** Height of one row. */
    double rowHeight() {
      return isBroken ? 2 * LINE + 3 : LINE + 5;
    }

    /** Left of the data area. */
    double left() {
      return names + GAP;
    }

    /** Right of the data area. */
    double right() {
      return Math.max(GAP, columns.stream().mapToDouble(width -> GAP + width).sum());
    }

    /** Width of the data area. */
    double data() {
      return FigureDrawing.WIDTH - left() - right();
    }

    /** How many rows a page holds. */
    int rowsOnPage() {
      return (int) (MOST_HEIGHT / rowHeight());
    }
  }

  private static final Font SMALL = Lettering.regular(Lettering.SMALL);
  private static final Font BOLD = Lettering.bold(Lettering.SMALL);
  private static final double MOST_NAME = 150;
  private static final double GAP = 8;
  private static final double INSET = 6;
  private static final double LINE = 10;
  private static final double MOST_HEIGHT = 490;

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
      drawInstead(g, row, data, middle);
    }
  }

  /** Words in the plot, and over the empty figures beside it, on as many lines as names have. */
  List<String> insteadLines(int row) {
    double width = room.data() - INSET + leadingBlank(columns.get(row));
    return Lettering.wrap(instead.get(row), SMALL, width, room.isBroken ? 2 : 1);
  }

  private void drawInstead(Graphics2D g, int row, Rectangle2D data, double middle) {
    List<String> lines = insteadLines(row);
    double x = data.getX() + INSET;
    double y = middle - (lines.size() - 1) * LINE / 2;
    for (String line : lines) {
      g.setPaint(Color.WHITE);
      double width = Lettering.width(line, SMALL) + 4;
      g.fill(new Rectangle2D.Double(x - 2, y - LINE / 2, width, LINE));
      Words.at(g, line, SMALL, Look.GRAY, x, y + 3);
      y += LINE;
    }
  }

  /** Width of the columns before the first figure of a row. */
  private double leadingBlank(List<String> cells) {
    double width = 0;
    for (int i = 0; i < cells.size() && cells.get(i).isEmpty(); i++) {
      width += GAP + room.columns.get(i);
    }
    return width;
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
      x += GAP + room.columns.get(column);
      Words.endingAt(g, heads.get(column), BOLD, Look.GRAY, x, data.getY() - 4);
    }
  }

  private void drawCells(Graphics2D g, List<String> cells, double left, double baseline) {
    double x = left;
    for (int column = 0; column < cells.size(); column++) {
      x += GAP + room.columns.get(column);
      Words.endingAt(g, cells.get(column), SMALL, Look.INK, x, baseline);
    }
  }

  private static List<String> lines(String name) {
    return Lettering.wrap(name, SMALL, MOST_NAME, 2);
  }
}
