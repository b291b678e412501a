package pondtally.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import pondtally.record.Site;

class WordsTest {

  @Test
  void valuesInOurTextForm() {
    assertEquals("2024-02-29", Words.date(TestRow.day("2024-02-29")));
    assertEquals("1200", Words.number(1200.0));
    assertEquals("0.1", Words.number(0.1));
    assertEquals("0", Words.number(-0.0));
    assertEquals("12000000000", Words.number(1.2e10));
    assertEquals("2024-02-29", Words.value("retired_on", TestRow.day("2024-02-29")));
    assertEquals("2024", Words.value("damage_year", 2024));
    assertEquals("yes", Words.value("gas_holes", true));
    assertEquals("nothing", Words.value("crew", null));
  }

  @Test
  void numbersThatDifferAreShownSoThatTheyDiffer() {
    Site there = TestRow.of(Site.class, 2, "siteId", "S1", "latitude", 45.1);
    Site here = TestRow.of(Site.class, 3, "siteId", "S1", "latitude", 45.10010);
    assertEquals("latitude (45.1 there, 45.1001 here)", Differences.between(there, here));
  }

  @Test
  void quotesAreShortAndOnOneLine() {
    assertEquals("\"a\\u000ab\"", Words.quote("a\nb"));
    assertEquals("\"a\\u202eb\"", Words.quote("a\u202eb"));
    assertEquals("\"" + "x".repeat(40) + "…\"", Words.quote("x".repeat(41)));
    assertEquals(
        "\"" + "x".repeat(39) + "…\"", Words.quote("x".repeat(39) + "\ud83e\uddab and more"));
  }

  @Test
  void listsReadAsSentences() {
    assertEquals("", Words.list(List.of()));
    assertEquals("a", Words.list(List.of("a")));
    assertEquals("a, b and c", Words.list(List.of("a", "b", "c")));
    assertEquals("1 row", Words.count(1, "row"));
    assertEquals("12,345 rows", Words.count(12345, "row"));
  }

  @Test
  void theSameInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals("$1,234.50", Words.usd(1234.5));
      assertEquals("1,234 rows", Words.count(1234, "row"));
      TestCluster.sound().finds().judges();
    } finally {
      Locale.setDefault(before);
    }
  }
}
