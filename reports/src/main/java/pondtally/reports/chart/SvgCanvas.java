package pondtally.reports.chart;

import java.awt.Font;
import java.awt.Graphics;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.apache.batik.svggen.DOMGroupManager;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Element;

/**
 * Draws text as text, not as outlines: it can be searched, copied, edited and read aloud, and a
 * viewer's own fonts fill in scripts that ours lacks. Each piece states the length that it was laid
 * out for, so that another font on the viewer's machine neither overlaps nor overflows.
 */
final class SvgCanvas extends SVGGraphics2D {

  private static final String SVG = "http://www.w3.org/2000/svg";

  SvgCanvas(SVGGeneratorContext context) {
    super(context, false);
  }

  private SvgCanvas(SvgCanvas other) {
    super(other);
  }

  @Override
  public Graphics create() {
    return new SvgCanvas(this);
  }

  @Override
  public void drawString(String text, float x, float y) {
    Element element = getDOMFactory().createElementNS(SVG, "text");
    element.setAttribute("x", number(x));
    element.setAttribute("y", number(y));
    Font font = getFont();
    if (!font.getFamily(Locale.ROOT).equals(Font.SANS_SERIF) && text.length() > 1) {
      element.setAttribute("textLength", number(Lettering.width(text, font)));
      element.setAttribute("lengthAdjust", "spacingAndGlyphs");
    }
    element.setTextContent(printable(text));
    domGroupManager.addElement(element, DOMGroupManager.FILL);
  }

  /** A coordinate with at most two decimals. */
  static String number(double value) {
    return BigDecimal.valueOf(value)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** The text without what XML 1.0 cannot hold; each such character becomes U+FFFD. */
  static String printable(String text) {
    StringBuilder clean = new StringBuilder();
    text.codePoints().forEach(point -> clean.appendCodePoint(isXml(point) ? point : 0xFFFD));
    return clean.toString();
  }

  private static boolean isXml(int point) {
    return point == '\t'
        || point == '\n'
        || (point >= 0x20 && point <= 0xD7FF)
        || (point >= 0xE000 && point <= 0xFFFD)
        || point >= 0x10000;
  }
}
