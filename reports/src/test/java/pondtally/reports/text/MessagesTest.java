package pondtally.reports.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import org.junit.jupiter.api.Test;

/** The bundle: plural forms, and no influence of the machine's language. */
class MessagesTest {

  private static String devices(int added) {
    return Messages.english()
        .text("compare.why.devices", Map.of("new", added, "gone", 0, "changed", 2));
  }

  @Test
  void pluralForms() {
    assertEquals("1 device new, 0 gone, 2 with other records in this group", devices(1));
    assertEquals("0 devices new, 0 gone, 2 with other records in this group", devices(0));
    assertEquals("1,200 devices new, 0 gone, 2 with other records in this group", devices(1200));
  }

  @Test
  void sameInEveryDefaultLanguage() {
    Locale before = Locale.getDefault();
    try {
      for (String tag : new String[] {"de-DE", "tr-TR", "ar-EG"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertEquals(
            "1,200 devices new, 0 gone, 2 with other records in this group", devices(1200));
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  /** A language without a file of its own is told in English, never in the machine's language. */
  @Test
  void whatALanguageLacksIsEnglish() {
    assertEquals("not set", Messages.in(Locale.FRENCH).text("compare.notSet"));
    assertThrows(MissingResourceException.class, () -> Messages.english().text("no.such.key"));
  }
}
