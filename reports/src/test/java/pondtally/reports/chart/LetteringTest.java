package pondtally.reports.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class LetteringTest {

  private static final Font SMALL = Lettering.regular(Lettering.SMALL);

  @Test
  void theFontComesWithTheProgram() {
    assertTrue(Lettering.isBundled());
    assertEquals("Noto Sans", SMALL.getFamily(Locale.ROOT));
    assertTrue(Lettering.bold(8).isBold());
  }

  @Test
  void longNamesAreBrokenBetweenWordsAndThenShortenedVisibly() {
    String name = "Upper North Fork of Ninebark Creek above the Old Stone Bridge";
    List<String> two = Lettering.wrap(name, SMALL, 150, 2);
    assertEquals(name, String.join(" ", two));
    List<String> tight = Lettering.wrap(name, SMALL, 80, 2);
    assertEquals(2, tight.size());
    assertTrue(tight.get(1).endsWith("\u2026"));
    for (String line : tight) {
      assertTrue(Lettering.width(line, SMALL) <= 80, line);
    }
  }

  @Test
  void aNameWithoutSpacesIsBrokenAnywhere() {
    List<String> lines = Lettering.wrap("Unbroken".repeat(8), SMALL, 100, 4);
    assertEquals("Unbroken".repeat(8), String.join("", lines));
    assertTrue(lines.size() > 1);
  }

  @Test
  void aPairOfSurrogatesIsNeverCut() {
    String herd = "\uD83E\uDDAB".repeat(30);
    String shortened = Lettering.shorten(herd, SMALL, 60);
    assertTrue(shortened.endsWith("\u2026"));
    assertEquals(
        0, shortened.codePoints().filter(point -> point >= 0xD800 && point <= 0xDFFF).count());
  }

  @Test
  void otherScriptsAreSetInTheMachinesOwnLetters() {
    assertSame(SMALL, Lettering.able(SMALL, "Рябиновая река"));
    Font other = Lettering.able(SMALL, "花楸川");
    assertEquals(Font.SANS_SERIF, other.getFamily(Locale.ROOT));
    assertEquals(SMALL.getSize2D(), other.getSize2D());
  }

  @Test
  void whatXmlCannotHoldIsReplaced() {
    assertEquals("a\uFFFDb\uFFFD", SvgCanvas.printable("a\u0007b\uD83E"));
  }
}
