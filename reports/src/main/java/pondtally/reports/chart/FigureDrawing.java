package pondtally.reports.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import pondtally.reports.text.Messages;

/** Lays out a figure at print size and draws it on any canvas. Lengths are points. */
final class FigureDrawing {

  /** Six and a half inches: the text width of a letter page. */
  static final double WIDTH = 468;

  private static final double GAP = 14;
  private static final double BREATH = 5;
  private static final Font TITLE = Lettering.bold(Lettering.TITLE);
  private static final Font TEXT = Lettering.regular(Lettering.TEXT);
  private static final Font SMALL = Lettering.regular(Lettering.SMALL);

  private final Figure figure;
  private final double panelWidth;
  private final KeyRow key;

  FigureDrawing(Figure figure) {
    this.figure = figure;
    this.panelWidth = panelWidth(figure.columns());
    this.key = new KeyRow(figure.key(), WIDTH);
  }

  /** Width of a panel where so many stand side by side. */
  static double panelWidth(int columns) {
    return (WIDTH - GAP * (columns - 1)) / columns;
  }

  /** Height in whole steps of 6 points, so that every resolution used has whole pixels. */
  double height() {
    double panels = 0;
    for (int row = 0; row < rows(); row++) {
      panels += rowHeight(row) + GAP;
    }
    double words =
        Lettering.lineHeight(TITLE) * titleLines().size()
            + Lettering.lineHeight(TEXT) * subtitleLines().size()
            + Lettering.lineHeight(SMALL) * footLines().size();
    return 6 * Math.ceil((words + key.height() + panels + 4 * BREATH) / 6);
  }

  void draw(Graphics2D g) {
    hints(g);
    g.setPaint(Color.WHITE);
    g.fill(new Rectangle2D.Double(0, 0, WIDTH, height()));
    Words words = new Words(g, 0, BREATH);
    words.lines(titleLines(), TITLE, Look.INK);
    words.lines(subtitleLines(), TEXT, Look.GRAY);
    double y = words.bottom() + BREATH;
    key.draw(g, 0, y);
    y = drawPanels(g, y + key.height());
    Words foot = new Words(g, 0, y);
    foot.lines(footLines(), SMALL, Look.GRAY);
  }

  private double drawPanels(Graphics2D g, double top) {
    double y = top;
    for (int row = 0; row < rows(); row++) {
      for (int column = 0; column < figure.columns(); column++) {
        int number = row * figure.columns() + column;
        if (number < figure.panels().size()) {
          double x = column * (panelWidth + GAP);
          figure
              .panels()
              .get(number)
              .draw(g, new Rectangle2D.Double(x, y, panelWidth, rowHeight(row)));
        }
      }
      y += rowHeight(row) + GAP;
    }
    return y;
  }

  private int rows() {
    return (figure.panels().size() + figure.columns() - 1) / figure.columns();
  }

  private double rowHeight(int row) {
    return figure.panels().stream()
        .skip((long) row * figure.columns())
        .limit(figure.columns())
        .mapToDouble(panel -> panel.height(panelWidth))
        .max()
        .orElse(0);
  }

  private List<String> titleLines() {
    return Lettering.wrap(figure.title(), TITLE, WIDTH, 3);
  }

  private List<String> subtitleLines() {
    return paragraphs(figure.subtitles(), TEXT);
  }

  private List<String> footLines() {
    List<String> lines = paragraphs(figure.foot(), SMALL);
    if (!Lettering.isBundled()) {
      lines.addAll(
          paragraphs(
              List.of(Messages.of("chart.FigureDrawing.set-in-this-machine-s-sans")), SMALL));
    }
    return lines;
  }

  private static List<String> paragraphs(List<String> paragraphs, Font font) {
    List<String> lines = new ArrayList<>();
    paragraphs.forEach(text -> lines.addAll(Lettering.wrap(text, font, WIDTH, 8)));
    return lines;
  }

  private static void hints(Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setStroke(new BasicStroke(1));
  }
}
