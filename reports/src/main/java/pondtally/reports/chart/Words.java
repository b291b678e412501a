package pondtally.reports.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.util.List;

/** Writes lines of text one below the other, and single words at a place. */
final class Words {

  private final Graphics2D g;
  private final double x;
  private double y;

  /** Starts with the upper left corner of the first line at x, y. */
  Words(Graphics2D g, double x, double y) {
    this.g = g;
    this.x = x;
    this.y = y;
  }

  void line(String text, Font font, Color color) {
    double height = Lettering.lineHeight(font);
    at(g, text, font, color, x, y + height * 0.77);
    y += height;
  }

  void lines(List<String> texts, Font font, Color color) {
    texts.forEach(text -> line(text, font, color));
  }

  double bottom() {
    return y;
  }

  /**
   * Text that starts at x on the base line y. A minus is drawn as the en dash that the font has.
   */
  static void at(Graphics2D g, String words, Font font, Color color, double x, double y) {
    String text = words.replace('\u2212', '\u2013');
    if (!text.isEmpty()) {
      g.setFont(Lettering.able(font, text));
      g.setPaint(color);
      g.drawString(text, (float) x, (float) y);
    }
  }

  /** Text that ends at x. */
  static void endingAt(Graphics2D g, String text, Font font, Color color, double x, double y) {
    at(g, text, font, color, x - Lettering.width(text, font), y);
  }

  /** Text centered on x. */
  static void centeredAt(Graphics2D g, String text, Font font, Color color, double x, double y) {
    at(g, text, font, color, x - Lettering.width(text, font) / 2, y);
  }
}
