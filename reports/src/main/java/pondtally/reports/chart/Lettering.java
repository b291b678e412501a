package pondtally.reports.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The letters of all charts: a bundled open font, so that widths and line breaks are the same on
 * every machine. Names in a script that it lacks are set in the machine's own sans-serif.
 */
final class Lettering {

  /** Sizes in points at print size. */
  static final float TITLE = 11;

  static final float TEXT = 8.5f;
  static final float SMALL = 8;

  /** Families that a viewer of an SVG tries, in this order. */
  static final String FAMILIES =
      "'Noto Sans', 'DejaVu Sans Condensed', 'Segoe UI', 'Helvetica Neue', Arial, sans-serif";

  private static final FontRenderContext PRINT = new FontRenderContext(null, true, true);
  private static final String ELLIPSIS = "\u2026";
  private static final Font REGULAR = load("NotoSans-Regular.ttf", Font.PLAIN);
  private static final Font BOLD = load("NotoSans-Bold.ttf", Font.BOLD);

  private Lettering() {}

  static Font regular(float size) {
    return REGULAR.deriveFont(size);
  }

  static Font bold(float size) {
    return BOLD.deriveFont(size);
  }

  /**
   * {@code font}; where it lacks a letter, the machine's sans-serif of that size and weight; where
   * that lacks it too, the first installed font, by name, that has all letters of the text.
   */
  static Font able(Font font, String text) {
    if (font.canDisplayUpTo(text) < 0) {
      return font;
    }
    Font sansSerif = new Font(Font.SANS_SERIF, font.getStyle(), 1).deriveFont(font.getSize2D());
    if (sansSerif.canDisplayUpTo(text) < 0) {
      return sansSerif;
    }
    return Installed.FONTS.stream()
        .filter(installed -> installed.canDisplayUpTo(text) < 0)
        .findFirst()
        .map(installed -> installed.deriveFont(font.getStyle(), font.getSize2D()))
        .orElse(sansSerif);
  }

  /** Whether any font of this machine has all letters of the text. */
  static boolean isThere(String text) {
    return able(regular(1), text).canDisplayUpTo(text) < 0;
  }

  /** Looked up only when a text needs it: that takes time. */
  private static final class Installed {
    static final List<Font> FONTS =
        Stream.of(GraphicsEnvironment.getLocalGraphicsEnvironment().getAllFonts())
            .sorted(Comparator.comparing(installed -> installed.getFontName(Locale.ROOT)))
            .toList();
  }

  /** Whether the bundled font was loaded. */
  static boolean isBundled() {
    return !REGULAR.getFamily(Locale.ROOT).equals(Font.SANS_SERIF)
        && !BOLD.getFamily(Locale.ROOT).equals(Font.SANS_SERIF);
  }

  /** Width in points. */
  static double width(String text, Font font) {
    String drawn = text.replace('\u2212', '\u2013');
    return drawn.isEmpty() ? 0 : able(font, drawn).getStringBounds(drawn, PRINT).getWidth();
  }

  /** Height of a line in points. */
  static double lineHeight(Font font) {
    return Math.ceil(font.getSize2D() * 1.3);
  }

  /**
   * Lines no wider than {@code width}, broken between words where that can be; what does not fit in
   * {@code most} lines ends visibly in an ellipsis.
   */
  static List<String> wrap(String text, Font font, double width, int most) {
    List<String> lines = new ArrayList<>();
    String rest = text.strip();
    while (!rest.isEmpty()) {
      if (lines.size() == most - 1) {
        lines.add(shorten(rest, font, width));
        break;
      }
      int end = lineEnd(rest, font, width);
      lines.add(rest.substring(0, end).strip());
      rest = rest.substring(end).strip();
    }
    return lines;
  }

  /** The text, or as much of it as fits before an ellipsis. */
  static String shorten(String text, Font font, double width) {
    if (width(text, font) <= width) {
      return text;
    }
    double room = width - width(ELLIPSIS, font);
    return text.substring(
                0, fitting(text, BreakIterator.getCharacterInstance(Locale.ROOT), font, room))
            .strip()
        + ELLIPSIS;
  }

  private static int lineEnd(String text, Font font, double width) {
    int end = fitting(text, BreakIterator.getLineInstance(Locale.ROOT), font, width);
    if (end == 0) {
      end = fitting(text, BreakIterator.getCharacterInstance(Locale.ROOT), font, width);
    }
    return Math.max(end, Character.charCount(text.codePointAt(0)));
  }

  private static int fitting(String text, BreakIterator breaks, Font font, double width) {
    breaks.setText(text);
    int fits = 0;
    for (int end = breaks.next(); end != BreakIterator.DONE; end = breaks.next()) {
      if (width(text.substring(0, end).strip(), font) > width) {
        break;
      }
      if (text.charAt(end - 1) != '-') {
        fits = end;
      }
    }
    return fits;
  }

  private static Font load(String resource, int style) {
    try (InputStream in = Lettering.class.getResourceAsStream(resource)) {
      return Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(style, 1f);
    } catch (IOException | FontFormatException | NullPointerException e) {
      return new Font(Font.SANS_SERIF, style, 1);
    }
  }
}
