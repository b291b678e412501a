package pondtally.reports.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class HtmlTest {

  @Test
  void textAndAttributesAreEscaped() {
    String page = new Html().element("p", "a < b & \"c\"", "title", "\"<&").page();
    assertEquals("<!DOCTYPE html>\n<p title=\"&quot;&lt;&amp;\">a &lt; b &amp; \"c\"</p>\n", page);
  }

  @Test
  void charactersThatNoPageMayHoldAreReplaced() {
    String page = new Html().element("p", "bell\u0007 half\ud800 whole\ud83e\uddab").page();
    assertEquals("<!DOCTYPE html>\n<p>bell\ufffd half\ufffd whole\ud83e\uddab</p>\n", page);
  }

  /** An element without an end would swallow what follows. */
  @Test
  void elementsThatNeedAnEndGetOne() {
    assertThrows(IllegalArgumentException.class, () -> new Html().single("p"));
    assertEquals("<!DOCTYPE html>\n<td></td>\n", new Html().element("td", "").page());
  }
}
